package guildwood.guild;

import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import guildwood.species.Trait;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** What a wish can ask for, with the items it can name. */
public enum WishKind {
  /** A job done for the guild; the item is a {@link GuildFunction} key. */
  FUNCTION(Arrays.stream(GuildFunction.values()).map(GuildFunction::key).toList()),
  /** Somebody who fills a layer; the item is a {@link Layer} key. */
  LAYER(Arrays.stream(Layer.values()).map(Layer::key).toList()),
  /** Something in bloom; the item is a month, 1 to 12. */
  BLOOM_MONTH(months()),
  /** Something of this part to harvest; the item is one of the harvest trait's items, such as fruit. */
  HARVEST_PART(Trait.HARVEST.items()),
  /** Anything to harvest; the item is a month, 1 to 12. */
  HARVEST_MONTH(months()),
  /** Ground covered by plants; the item is a share of the bed in whole percent, 1 to 100. A bed wishes for one share. */
  GROUND(IntStream.rangeClosed(1, 100).mapToObj(Integer::toString).toList());

  private final List<String> items;

  WishKind(List<String> items) {
    this.items = items;
  }

  /** Every item a wish of this kind can name, in the order people should see them. */
  public List<String> items() {
    return items;
  }

  /** Stable name in files, addresses and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static WishKind ofKey(String key) {
    return valueOf(key.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  private static List<String> months() {
    return IntStream.rangeClosed(1, 12).mapToObj(Integer::toString).toList();
  }
}
