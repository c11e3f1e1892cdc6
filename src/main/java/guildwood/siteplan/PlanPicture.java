package guildwood.siteplan;

/**
 * A picture to trace over, written anew from the pixels of the one that was sent: nothing else of that is in it.
 *
 * @param content the bytes of the file; not to be changed
 */
public record PlanPicture(Kind kind, int widthPx, int heightPx, byte[] content) {
  public PlanPicture {
    if (widthPx < 1 || heightPx < 1 || content.length == 0) {
      throw new IllegalArgumentException("no picture of " + widthPx + " x " + heightPx + " pixels in " + content.length + " bytes");
    }
  }

  /** How the picture is written. */
  public enum Kind {
    PNG("image/png"),
    JPEG("image/jpeg");

    private final String mediaType;

    Kind(String mediaType) {
      this.mediaType = mediaType;
    }

    public String mediaType() {
      return mediaType;
    }
  }
}
