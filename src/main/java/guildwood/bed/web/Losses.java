package guildwood.bed.web;

import guildwood.bed.Beds.Belongings;
import guildwood.web.Messages;
import java.util.ArrayList;
import java.util.List;

/** What is lost with a bed or a site, in words. */
final class Losses {
  private Losses() {}

  /**
   * @param plants standing in the beds, whose record goes
   * @param nearby trees and buildings around the beds, whose record goes
   * @param surveys of what grows wild there
   */
  static List<String> inWords(Belongings belongings, int plants, int nearby, int surveys, Messages messages) {
    List<String> losses = new ArrayList<>();
    add(losses, "bed.loss.plants", plants, messages);
    add(losses, "bed.loss.nearby", nearby, messages);
    add(losses, "bed.loss.near", belongings.near(), messages);
    add(losses, "bed.loss.surveys", surveys, messages);
    add(losses, "bed.loss.wishes", belongings.wishes(), messages);
    add(losses, "bed.loss.guilds", belongings.guilds(), messages);
    add(losses, "bed.loss.links", belongings.links(), messages);
    return losses;
  }

  private static void add(List<String> losses, String key, int count, Messages messages) {
    if (count > 0) {
      losses.add(messages.say(key, count));
    }
  }
}
