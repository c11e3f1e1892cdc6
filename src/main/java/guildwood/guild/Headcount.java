package guildwood.guild;

/**
 * How many species of a library would meet a wish in a bed.
 *
 * @param providers who provide it at all
 * @param suited of those, who do not fail on the site
 * @param oneConditionAway of those, who fail on exactly one axis
 * @param allowed of the suited, whom the owner's rules let in
 */
public record Headcount(int providers, int suited, int oneConditionAway, int allowed) {
  public Headcount {
    if (allowed > suited || suited + oneConditionAway > providers || allowed < 0 || oneConditionAway < 0) {
      throw new IllegalArgumentException(
          providers + " provide, " + suited + " suited, " + oneConditionAway + " nearly, " + allowed + " allowed");
    }
  }
}
