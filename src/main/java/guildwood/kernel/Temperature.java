package guildwood.kernel;

/** Degrees Fahrenheit and Celsius. */
public final class Temperature {
  private Temperature() {}

  public static double toCelsius(double fahrenheit) {
    return (fahrenheit - 32) * 5 / 9;
  }

  public static double toFahrenheit(double celsius) {
    return celsius * 9 / 5 + 32;
  }
}
