package guildwood.site.climate;

/** Daily minima at or below which a day counts, degrees F: US National Weather Service, Jackson. */
public enum FrostThreshold {
  FROST("frost", 36),
  FREEZE("freeze", 32),
  HARD_FREEZE("hard freeze", 28);

  private final String word;
  private final double fahrenheit;

  FrostThreshold(String word, double fahrenheit) {
    this.word = word;
    this.fahrenheit = fahrenheit;
  }

  public String word() {
    return word;
  }

  public double fahrenheit() {
    return fahrenheit;
  }
}
