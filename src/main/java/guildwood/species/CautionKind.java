package guildwood.species;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a caution is about, the law first. A caution's item is the kind, and for some kinds a part or a
 * place after a colon: {@code toxic:leaves}, {@code listed:US-IL}.
 */
public enum CautionKind {
  /** On a legal list of the place. */
  LISTED(Detail.PLACE),
  /** Needs a permit in the place. */
  PERMIT(Detail.PLACE),
  /** Poisonous when eaten; the part follows. */
  TOXIC(Detail.PART),
  /** Only cooked. */
  COOK_FIRST(Detail.NONE),
  /** Taken for something dangerous, or the other way round. */
  LOOK_ALIKE(Detail.NONE),
  SKIN_IRRITANT(Detail.NONE),
  THORNS(Detail.NONE),
  /** Spreads into wild places there, without a legal listing. */
  WEEDY(Detail.REGION),
  OTHER(Detail.NONE);

  /** What follows the kind. */
  public enum Detail {
    NONE(""),
    /** A part of the plant in plain words. */
    PART("[A-Za-z][A-Za-z -]{0,40}"),
    /** A country or state by its ISO 3166 code, or a wider region in plain words. */
    REGION("[A-Za-z][A-Za-z0-9 -]{0,40}"),
    /** A country or state by its ISO 3166 code. */
    PLACE("[A-Z]{2}(-[A-Z0-9]{1,3})?");

    private final Pattern written;

    Detail(String written) {
      this.written = Pattern.compile(written);
    }

    public boolean accepts(String detail) {
      return written.matcher(detail).matches();
    }
  }

  private final Detail detail;

  CautionKind(Detail detail) {
    this.detail = detail;
  }

  public Detail detail() {
    return detail;
  }

  /** A rule of law rather than a danger of the plant. */
  public boolean isLegal() {
    return this == LISTED || this == PERMIT;
  }

  /** Stable name in files and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static List<String> keys() {
    return Arrays.stream(values()).map(CautionKind::key).toList();
  }

  /** The kind of a caution's item, for example of {@code toxic:leaves}. */
  public static Optional<CautionKind> of(String item) {
    String kind = item.contains(":") ? item.substring(0, item.indexOf(':')) : item;
    return Arrays.stream(values()).filter(known -> known.key().equals(kind)).findFirst();
  }

  /** The part or place of a caution's item; empty where it names none. */
  public static String detail(String item) {
    return item.contains(":") ? item.substring(item.indexOf(':') + 1) : "";
  }

  static boolean isItem(String item) {
    return of(item)
        .filter(kind -> kind.detail.accepts(detail(item)) && item.contains(":") == (kind.detail != Detail.NONE))
        .isPresent();
  }
}
