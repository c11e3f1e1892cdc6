package guildwood.guild.web;

import guildwood.fit.Fit;
import guildwood.guild.Change;
import guildwood.guild.Evaluation;
import guildwood.guild.Gap;
import guildwood.guild.Guild;
import guildwood.guild.GuildRule;
import guildwood.guild.Provision;
import guildwood.guild.RuleBreach;
import guildwood.guild.Wish;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.LengthReader;
import guildwood.site.NamedClasses;
import guildwood.species.Axis;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Puts what the engine says into sentences: names for ids, the visitor's units for numbers. */
public final class GuildWords {
  private final Messages messages;
  private final SpeciesLibrary library;
  private final Units units;

  public GuildWords(Messages messages, SpeciesLibrary library, Units units) {
    this.messages = messages;
    this.library = library;
    this.units = units;
  }

  public String name(String speciesId) {
    return library.find(speciesId).map(Species::name).orElse(speciesId);
  }

  String names(List<String> speciesIds) {
    return String.join(", ", speciesIds.stream().map(this::name).toList());
  }

  /** What is wished for, as a noun or short clause. */
  public String wish(Wish wish) {
    return switch (wish.kind()) {
      case FUNCTION -> messages.say("wish.function", messages.say("term.function." + wish.item()));
      case LAYER -> messages.say("wish.layer", messages.say("term.layer." + wish.item()));
      case BLOOM_MONTH -> messages.say("wish.bloom-month", messages.say("term.month." + wish.item()));
      case HARVEST_PART -> messages.say("wish.harvest-part", messages.say("term.part." + wish.item()));
      case GROUND -> messages.say("wish.ground", wish.item());
      case HARVEST_MONTH -> messages.say("wish.harvest-month", messages.say("term.month." + wish.item()));
    };
  }

  /** The rules a guild breaks. Too much shade shows in every layer below it; the worst of them says it all. */
  List<String> breaches(Evaluation evaluation) {
    Optional<RuleBreach> darkest = evaluation.breaches().stream().filter(b -> b.rule() == GuildRule.NO_LIGHT_LEFT)
        .max(Comparator.comparingDouble(b -> Double.parseDouble(b.args().get(1))));
    return evaluation.breaches().stream().filter(b -> b.rule() != GuildRule.NO_LIGHT_LEFT || b.equals(darkest.orElseThrow()))
        .map(this::breach).toList();
  }

  /** A rule that is broken, with the species it is about in front where there are any. */
  public String breach(RuleBreach breach) {
    String sentence = messages.say("rule." + breach.rule().key(), breachArgs(breach).toArray());
    return breach.species().isEmpty() ? sentence
        : messages.say("rule.about", names(breach.species()), sentence);
  }

  private List<String> breachArgs(RuleBreach breach) {
    List<String> args = breach.args();
    return switch (breach.rule()) {
      case DOES_NOT_FIT, BORDERLINE -> List.of(axis(args.get(0)), miss(Axis.ofKey(args.get(0)), Double.parseDouble(args.get(2))));
      case CAUTION -> List.of(messages.say("term.caution." + args.get(0)));
      case NOT_NATIVE -> List.of(messages.say("term.region." + args.get(0)));
      case LARGER_THAN_BED -> List.of(area(args.get(0)), area(args.get(1)));
      case OVER_BUDGET -> List.of(money(Long.parseLong(args.get(0))), money(Long.parseLong(args.get(1))));
      case LAYER_FULL, NO_LIGHT_LEFT ->
          List.of(messages.say("term.layer." + args.get(0)), area(args.get(1)), area(args.get(2)));
      case ENEMIES -> List.of(messages.say("term.conflict." + args.get(0)));
      default -> args;
    };
  }

  /** What is worth knowing, a sentence for each matter: a plant that runs is named once with all it may swamp. */
  public List<String> remarks(List<Finding> remarks) {
    Map<String, List<String>> swamped = new LinkedHashMap<>();
    remarks.stream().filter(r -> r.code().equals("guild.spreader"))
        .forEach(r -> swamped.computeIfAbsent(r.field(), id -> new ArrayList<>()).add(r.args().get(0)));
    Stream<String> spreaders = swamped.entrySet().stream()
        .map(e -> messages.say("finding.guild.spreader", name(e.getKey()), names(e.getValue())));
    Stream<String> others = remarks.stream().filter(r -> !r.code().equals("guild.spreader")).map(this::remark);
    return Stream.concat(spreaders, others).distinct().toList();
  }

  private String remark(Finding remark) {
    String about = name(remark.field());
    List<String> args = remark.args();
    return switch (remark.code()) {
      case "guild.assumed" -> messages.say("finding.guild.assumed." + args.get(0), about);
      case "guild.doubtful-conflict", "guild.standing-enemies" -> {
        String ofItem = "finding." + remark.code() + "." + args.get(1);
        yield messages.say(messages.has(ofItem) ? ofItem : "finding." + remark.code(), about, name(args.get(0)),
            messages.say("term.conflict." + args.get(1)));
      }
      case "guild.partner-far" -> messages.say("finding.guild.partner-far", about, name(args.get(0)),
          units.length(Double.parseDouble(args.get(1))), feet(Integer.parseInt(args.get(2))));
      default -> messages.say("finding." + remark.code(), about);
    };
  }

  /** A limit as its source gives it, in feet, with the metres behind it. */
  private static String feet(int feet) {
    double metres = feet * LengthReader.FOOT_M;
    return Units.US.length(metres) + " (" + Units.METRIC.length(metres) + ")";
  }

  public String reason(Gap.Reason reason) {
    if (reason instanceof Gap.Reason.FailsOnSite fails) {
      return messages.say("gap.fails-on-site", fails.species(), fails.misses().isEmpty() ? "" : misses(fails));
    }
    if (reason instanceof Gap.Reason.ExcludedByRules excluded) {
      return messages.say("gap.excluded-by-rules", excluded.species(), breaches(excluded.rules()));
    }
    if (reason instanceof Gap.Reason.NoRoom noRoom) {
      return messages.say("gap.no-room", name(noRoom.speciesId()), breaches(noRoom.obstacles()));
    }
    if (reason instanceof Gap.Reason.CouldComeIn could) {
      return messages.say(could.changeMilli() >= 0 ? "gap.could-come-in" : "gap.outweighed", name(could.speciesId()),
          points(Math.abs(could.changeMilli())));
    }
    if (reason instanceof Gap.Reason.GroundShort ground) {
      return messages.say(ground.obstacles().isEmpty() ? "gap.ground-open" : "gap.ground-short",
          Units.number(ground.coveredPermille() / 10.0, 1), name(ground.speciesId()), breaches(ground.obstacles()));
    }
    return messages.say("gap.nobody-in-library");
  }

  private String misses(Gap.Reason.FailsOnSite fails) {
    return String.join("; ", fails.misses().stream().limit(3)
        .map(m -> messages.say("gap.miss", name(m.speciesId()), axis(m.axis().key()), miss(m.axis(), m.shortfall())))
        .toList());
  }

  private String breaches(List<RuleBreach> breaches) {
    return String.join(" ", breaches.stream().limit(3).map(this::breach).toList());
  }

  /** A change that would close a gap. */
  public String change(Change change) {
    if (change instanceof Change.MoveCondition move) {
      return messages.say("change.move." + move.axis().key(), moved(move.axis(), move.from()), moved(move.axis(), move.to()));
    }
    if (change instanceof Change.EaseRule ease) {
      String key = "change.ease." + ease.rule().key();
      return messages.say(messages.has(key + "." + ease.detail()) ? key + "." + ease.detail() : key, easeDetail(ease));
    }
    if (change instanceof Change.Enlarge enlarge) {
      return messages.say("change.enlarge", exactly(enlarge.fromM2()), exactly(enlarge.toM2()));
    }
    if (change instanceof Change.Insist insist) {
      return messages.say("change.insist", wish(insist.wish()));
    }
    Change.PutIn putIn = (Change.PutIn) change;
    return messages.say("change.put-in", name(putIn.speciesId()), putIn.count());
  }

  /** Where the plants of a species come from, what there is none of left out. */
  String provision(Provision provision) {
    List<String> parts = new ArrayList<>();
    provided("standing", provision.standing(), parts);
    provided("have", provision.have(), parts);
    provided("propagate", provision.propagate(), parts);
    provided("buy", provision.buy(), parts);
    return parts.isEmpty() ? messages.say("provision.none") : String.join(", ", parts);
  }

  private void provided(String key, int plants, List<String> parts) {
    if (plants > 0) {
      parts.add(messages.say("provision." + key, plants));
    }
  }

  /** What sets one guild's plants apart from another's: who joins, who leaves, whose count changes. */
  List<String> changes(Guild before, Guild now) {
    List<String> joining = new ArrayList<>();
    List<String> leaving = new ArrayList<>();
    List<String> counts = new ArrayList<>();
    now.counts().forEach((id, count) -> {
      int then = before.count(id);
      if (then == 0) {
        joining.add(messages.say("guild.change.some", count, name(id)));
      } else if (then != count) {
        counts.add(messages.say("guild.change.count", name(id), count, then));
      }
    });
    before.counts().forEach((id, count) -> {
      if (!now.has(id)) {
        leaving.add(messages.say("guild.change.some", count, name(id)));
      }
    });
    List<String> sentences = new ArrayList<>();
    say("guild.change.in", joining, sentences);
    say("guild.change.out", leaving, sentences);
    say("guild.change.counts", counts, sentences);
    return sentences;
  }

  private void say(String key, List<String> parts, List<String> sentences) {
    if (!parts.isEmpty()) {
      sentences.add(messages.say(key, String.join(", ", parts)));
    }
  }

  private String easeDetail(Change.EaseRule ease) {
    return switch (ease.rule()) {
      case CAUTION -> messages.say("term.caution." + ease.detail());
      case NOT_NATIVE -> messages.has("term.region." + ease.detail()) ? messages.say("term.region." + ease.detail()) : ease.detail();
      case OVER_BUDGET -> ease.detail().matches("\\d+") ? money(Long.parseLong(ease.detail())) : ease.detail();
      case BANNED, PIN_IGNORED, LAYER_NOT_KNOWN -> name(ease.detail());
      default -> ease.detail();
    };
  }

  String axis(String axisKey) {
    return messages.say("term.axis." + axisKey);
  }

  /** How far a bed would have to move to suit, with the direction in words; what rounds to nothing has none. */
  String miss(Axis axis, double shortfall) {
    if (amount(axis, Math.abs(shortfall)).matches("0( .*)?")) {
      return messages.say("miss.edge");
    }
    String key = "miss." + axis.key() + (shortfall >= 0 ? ".more" : ".less");
    return messages.say(key, amount(axis, Math.abs(shortfall)));
  }

  private String amount(Axis axis, double size) {
    return switch (axis) {
      case WINTER_COLD -> units == Units.US ? Units.number(size * 9 / 5, 0) + " °F" : Units.number(size, 1) + " °C";
      case SEASON -> Units.number(size, 0);
      default -> Units.number(size, 1);
    };
  }

  String range(Axis axis, Range range) {
    String low = axis == Axis.WINTER_COLD ? units.temperature(range.min()) : Units.number(range.min(), 1);
    String high = axis == Axis.WINTER_COLD ? units.temperature(range.max()) : Units.number(range.max(), 1);
    return low.equals(high) ? low : low + " – " + high;
  }

  /** A range with its unit, or by the names of its classes where the axis counts them. */
  String measured(Axis axis, Range range) {
    return switch (axis) {
      case LIGHT -> messages.say("axis.hours", range(axis, range));
      case SEASON -> messages.say("axis.days", range(axis, range));
      case MOISTURE, FERTILITY, TEXTURE -> classes(axis, range);
      case REACTION, WINTER_COLD -> range(axis, range);
    };
  }

  /** As {@link #measured}, but without a unit: the sentences about moves have it themselves. */
  private String moved(Axis axis, Range range) {
    return NamedClasses.countsClasses(axis) ? classes(axis, range) : range(axis, range);
  }

  /** By name; between two classes, which only a survey can say, by number. */
  private String classes(Axis axis, Range range) {
    if (range.min() != Math.rint(range.min()) || range.max() != Math.rint(range.max())) {
      return messages.say("axis." + axis.key() + ".number", range(axis, range));
    }
    String low = messages.say("axis." + axis.key() + "." + (int) range.min());
    String high = messages.say("axis." + axis.key() + "." + (int) range.max());
    return low.equals(high) ? low : messages.say("axis.to", low, high);
  }

  /** What limits a species in a bed and what nobody knows of it; empty where it suits and all is known. */
  String limit(Fit fit) {
    Optional<String> limit = fit.limiting().filter(a -> a.value() < 1)
        .map(a -> a.shortfall() == 0 ? axis(a.axis().key())
            : messages.say("fit.limit", axis(a.axis().key()), miss(a.axis(), a.shortfall())));
    String unsaid = String.join(", ", fit.unsaid().stream().map(a -> axis(a.key())).toList());
    Optional<String> silence = unsaid.isEmpty() ? Optional.empty() : Optional.of(messages.say("fit.unsaid", unsaid));
    return String.join("; ", Stream.of(limit, silence).flatMap(Optional::stream).toList());
  }

  /** An area as it has to be typed to get what is promised for it. */
  private String exactly(double areaM2) {
    return units == Units.METRIC ? Units.number(areaM2, 1) + " m²" : units.area(areaM2);
  }

  private String area(String squareMetres) {
    return units.area(Double.parseDouble(squareMetres));
  }

  /** As the beginning of a sentence or heading. */
  static String capital(String words) {
    return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(java.util.Locale.ENGLISH) + words.substring(1);
  }

  /** Thousandths of a point, exact. */
  static String points(int milli) {
    return Units.number(milli / 1000.0, 3);
  }

  static String money(long cents) {
    return String.format(java.util.Locale.ROOT, "%d.%02d", cents / 100, cents % 100);
  }
}
