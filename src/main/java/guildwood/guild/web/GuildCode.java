package guildwood.guild.web;

import guildwood.bed.Bed;
import guildwood.guild.Guild;
import io.javalin.http.BadRequestResponse;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A guild as one line, {@code allium-schoenoprasum:5,rubus-idaeus:3}, to travel in a form or an address. */
final class GuildCode {
  private static final int LONGEST = 12_000;
  private static final Pattern ENTRY = Pattern.compile("([a-z0-9-]{1,120}):(\\d{1,5})");

  private GuildCode() {}

  static String of(Guild guild) {
    return guild.counts().entrySet().stream().map(e -> e.getKey() + ":" + e.getValue()).collect(Collectors.joining(","));
  }

  /** The guild again; our own pages write it, so anything else is a bad request. */
  static Guild read(String code) {
    SortedMap<String, Integer> counts = new TreeMap<>();
    if (code.length() > LONGEST) {
      throw new BadRequestResponse();
    }
    for (String entry : code.isEmpty() ? new String[0] : code.split(",", -1)) {
      var read = ENTRY.matcher(entry);
      int count = read.matches() ? Integer.parseInt(read.group(2)) : 0;
      if (count < 1 || count > Bed.Standing.MOST) {
        throw new BadRequestResponse();
      }
      counts.put(read.group(1), count);
    }
    return new Guild(counts);
  }
}
