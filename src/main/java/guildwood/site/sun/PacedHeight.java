package guildwood.site.sun;

/**
 * A height measured in the field.
 *
 * @param distanceM from the eye to the foot, on level ground
 * @param angleDegrees at which the top is seen over level
 */
public record PacedHeight(double distanceM, double angleDegrees, double eyeHeightM) {
  public PacedHeight {
    Pacing.heightM(distanceM, angleDegrees, eyeHeightM);
  }

  public double metres() {
    return Pacing.heightM(distanceM, angleDegrees, eyeHeightM);
  }
}
