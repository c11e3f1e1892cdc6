package guildwood.species.web;

import guildwood.kernel.Source;
import guildwood.species.CautionKind;
import guildwood.species.Evidence;
import guildwood.species.Species;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.web.Messages;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One statement as the pages show it, in words.
 *
 * @param entered as written, empty where that is the same as the value
 * @param evidence in words; empty where none is stated
 * @param authority for a rule of law: when it was checked, and whom to ask; otherwise empty
 */
record StatementLine(
    long id,
    String topic,
    String value,
    String entered,
    String evidence,
    String note,
    String authority,
    SourceLine source,
    Standing standing) {

  /** How it stands among the others about its topic. */
  enum Standing {
    /** Nothing about its topic says otherwise. */
    ALONE,
    /** It counts, others that say otherwise do not. */
    RULES,
    /** It says the same as the one that rules. */
    AGREES,
    /** It counts beside others, which it completes. */
    TOGETHER,
    /** Another one rules that says otherwise. */
    OVERRULED
  }

  /** It counts about its topic. */
  public boolean counts() {
    return standing != Standing.OVERRULED;
  }

  /** Others about its topic could be set aside for it. */
  public boolean canRule() {
    return standing == Standing.OVERRULED || standing == Standing.TOGETHER;
  }

  /** Key of the mark that tells how it stands; empty where nothing needs to be told. */
  public String mark() {
    return switch (standing) {
      case RULES -> "statement.rules";
      case AGREES -> "statement.agrees";
      case TOGETHER -> "statement.together";
      case OVERRULED -> "statement.overruled";
      case ALONE -> "";
    };
  }

  /** Makes lines for one visitor. */
  record Writer(Messages messages, ValueWords words, Map<String, Source> sources) {
    private static final Pattern CHECKED = Pattern.compile("checked (?:on )?(\\d{4}-\\d{2}-\\d{2})");

    StatementLine line(Species species, Statement s) {
      Source source = sources.get(s.sourceId());
      String value = words.value(s);
      String entered = s.entered().equalsIgnoreCase(value) ? "" : s.entered();
      return new StatementLine(s.id(), words.topic(s.trait(), s.item()), value, entered, evidence(s), s.note(),
          authority(s, source), SourceLine.of(source, messages), standing(species, s));
    }

    private static Standing standing(Species species, Statement s) {
      List<Statement> others = species.statements().stream()
          .filter(other -> other != s && other.topic().equals(s.topic()) && !other.value().equals(s.value())).toList();
      boolean alone = others.isEmpty() || s.trait() == Trait.CAUTION;
      if (species.rules(s)) {
        return alone ? Standing.ALONE : others.stream().anyMatch(species::rules) ? Standing.TOGETHER : Standing.RULES;
      }
      return species.ruling(s.trait(), s.item()).orElseThrow().value().equals(s.value()) ? Standing.AGREES : Standing.OVERRULED;
    }

    private String evidence(Statement s) {
      return s.evidence().map(Evidence::key).map(key -> messages.say("evidence." + key)).orElse("");
    }

    private String authority(Statement s, Source source) {
      boolean legal = CautionKind.of(s.item()).filter(CautionKind::isLegal).isPresent();
      if (!legal) {
        return "";
      }
      Matcher checked = CHECKED.matcher(s.note() + " " + source.locator());
      String whom = source.author().isEmpty() ? source.title() : source.author();
      return checked.find()
          ? messages.say("caution.checked", checked.group(1), whom)
          : messages.say("caution.not-checked", whom);
    }
  }
}
