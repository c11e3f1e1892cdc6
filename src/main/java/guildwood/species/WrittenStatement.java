package guildwood.species;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A statement as forms, files and the database carry it: text only, not yet read. All of them are read
 * here, so that the same rules hold wherever a value comes from. One that cannot be read stays as it is.
 *
 * @param trait key of a {@link Trait}
 * @param evidence key of an {@link Evidence}; empty where none is named
 */
public record WrittenStatement(
    long id,
    String speciesId,
    String trait,
    String item,
    String entered,
    String sourceId,
    String evidence,
    boolean chosen,
    String note) {
  public static final int LONGEST_TRAIT = 30;
  public static final int LONGEST_ITEM = 60;
  public static final int LONGEST_EVIDENCE = 10;

  /** A statement as it would be written. */
  public static WrittenStatement of(String speciesId, Statement s) {
    return new WrittenStatement(s.id(), speciesId, s.trait().key(), s.item(), s.entered(), s.sourceId(),
        s.evidence().map(Evidence::key).orElse(""), s.chosen(), s.note());
  }

  /** What it says, or every reason why it cannot be read; fields trait, item, value, evidence, note. */
  public Checked<Statement> read() {
    Optional<Trait> known = Trait.ofKey(trait);
    if (known.isEmpty()) {
      return Checked.refused(Finding.of("trait.unknown", "trait", trait));
    }
    Checked<String> about = TraitReader.readItem(known.get(), item, "item");
    Checked<TraitValue> value = TraitReader.read(known.get(), entered, "value");
    Checked<Optional<Evidence>> support = readEvidence(known.get());
    List<Finding> findings = new ArrayList<>(about.findings());
    findings.addAll(value.findings());
    findings.addAll(support.findings());
    findings.addAll(noteFindings());
    if (!findings.isEmpty()) {
      return Checked.refused(findings);
    }
    return Checked.of(new Statement(id, known.get(), about.orThrow(), entered.strip(), value.orThrow(), sourceId,
        support.orThrow(), chosen, note.strip()));
  }

  private Checked<Optional<Evidence>> readEvidence(Trait known) {
    if (evidence.isEmpty()) {
      return Checked.of(Optional.empty());
    }
    if (!known.carriesEvidence()) {
      return Checked.refused(Finding.of("evidence.not-here", "evidence"));
    }
    Optional<Evidence> support = Evidence.ofKey(evidence);
    return support.isPresent() ? Checked.of(support) : Checked.refused(Finding.of("evidence.unknown", "evidence", evidence));
  }

  private List<Finding> noteFindings() {
    if (note.length() > Statement.MOST_NOTE) {
      return List.of(Finding.of("text.too-long", "note", Statement.MOST_NOTE));
    }
    return note.chars().anyMatch(Character::isISOControl)
        ? List.of(Finding.of("text.control-characters", "note"))
        : List.of();
  }
}
