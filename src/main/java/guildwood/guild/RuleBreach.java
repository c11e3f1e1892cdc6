package guildwood.guild;

import java.util.Arrays;
import java.util.List;

/**
 * A rule a guild breaks, or would.
 *
 * @param species the ones involved, in the order of their ids; empty where it is the whole guild
 * @param args values for the sentence, as {@link GuildRule} lists them
 */
public record RuleBreach(GuildRule rule, List<String> species, List<String> args) {
  public RuleBreach {
    species = List.copyOf(species);
    args = List.copyOf(args);
  }

  static RuleBreach of(GuildRule rule, List<String> species, Object... args) {
    return new RuleBreach(rule, species, Arrays.stream(args).map(RuleBreach::plain).toList());
  }

  private static String plain(Object value) {
    return value instanceof Double number
        ? java.math.BigDecimal.valueOf(number).setScale(2, java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString()
        : String.valueOf(value);
  }
}
