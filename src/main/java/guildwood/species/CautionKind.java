package guildwood.species;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a caution is about. An item is the kind alone, or the kind with a part or place after a colon. */
public enum CautionKind {
  /** Poisonous when eaten; the part follows. */
  TOXIC(true),
  /** Only cooked. */
  COOK_FIRST(false),
  /** Taken for something dangerous, or the other way round. */
  LOOK_ALIKE(false),
  THORNS(false),
  SKIN_IRRITANT(false),
  /** On a legal list of the place (ISO 3166 code). */
  LISTED(true),
  /** Spreads into wild places there, without a legal listing. */
  WEEDY(true),
  /** Needs a permit in the place. */
  PERMIT(true),
  OTHER(false);

  private static final Pattern DETAIL = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 -]{0,30}");
  private final boolean takesDetail;

  CautionKind(boolean takesDetail) {
    this.takesDetail = takesDetail;
  }

  /** Stable name in files and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The kind of a caution's item, for example of {@code toxic:leaves}. */
  public static Optional<CautionKind> of(String item) {
    String kind = item.contains(":") ? item.substring(0, item.indexOf(':')) : item;
    for (CautionKind known : values()) {
      if (known.key().equals(kind)) {
        return Optional.of(known);
      }
    }
    return Optional.empty();
  }

  /** The part or place of a caution's item; empty where it names none. */
  public static String detail(String item) {
    return item.contains(":") ? item.substring(item.indexOf(':') + 1) : "";
  }

  static boolean isItem(String item) {
    String detail = detail(item);
    return of(item).isPresent()
        && (item.contains(":") ? of(item).get().takesDetail && DETAIL.matcher(detail).matches() : true);
  }
}
