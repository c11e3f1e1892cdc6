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
 * @param rules it counts about its topic
 * @param contested others about its topic do not count
 * @param canRule others about its topic could be set aside for it
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
    boolean rules,
    boolean contested,
    boolean canRule) {

  /** Makes lines for one visitor. */
  record Writer(Messages messages, ValueWords words, Map<String, Source> sources) {
    private static final Pattern CHECKED = Pattern.compile("checked (?:on )?(\\d{4}-\\d{2}-\\d{2})");

    StatementLine line(Species species, Statement s) {
      List<Statement> about = species.statements().stream().filter(other -> other.topic().equals(s.topic())).toList();
      boolean contested = about.size() > 1 && s.trait() != Trait.CAUTION;
      boolean allRule = about.stream().allMatch(species::rules);
      Source source = sources.get(s.sourceId());
      String value = words.value(s);
      String entered = s.entered().equalsIgnoreCase(value) ? "" : s.entered();
      return new StatementLine(s.id(), words.topic(s.trait(), s.item()), value, entered, evidence(s), s.note(),
          authority(s, source), SourceLine.of(source, messages), species.rules(s), contested && !allRule,
          contested && !s.chosen() && !(species.rules(s) && !allRule));
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
