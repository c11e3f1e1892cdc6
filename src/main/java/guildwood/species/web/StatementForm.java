package guildwood.species.web;

import guildwood.kernel.Finding;
import guildwood.kernel.Source;
import guildwood.species.CautionKind;
import guildwood.species.Evidence;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import guildwood.species.TraitValue;
import guildwood.species.Unit;
import guildwood.species.WrittenStatement;
import guildwood.web.Form;
import guildwood.web.Messages;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.HashMap;
import java.util.Optional;
import java.util.stream.Stream;

/** The fields of one statement: what it is about, its value, its source, evidence and a note. */
final class StatementForm {
  /** Stands in the list of sources for one that is typed in below it. */
  static final String NEW_SOURCE = "new";

  private StatementForm() {}

  /** What the template needs to know about a trait. */
  static Map<String, Object> model(Trait trait, SpeciesLibrary library, Messages messages) {
    Map<String, Object> model = new HashMap<>();
    model.put("trait", trait.key());
    model.put("shape", switch (trait.shape()) {
      case WORD, YES_NO -> "one";
      case WORDS, SEASONS -> "several";
      default -> "text";
    });
    model.put("words", trait.words());
    model.put("choices", Stream.concat(Stream.of(""), trait.words().stream()).toList());
    model.put("items", trait.items().isEmpty() ? List.of() : Stream.concat(Stream.of(""), trait.items().stream()).toList());
    model.put("cautionKinds", trait == Trait.CAUTION ? Stream.concat(Stream.of(""), CautionKind.keys().stream()).toList() : List.of());
    model.put("grades", trait.carriesEvidence()
        ? Stream.concat(Stream.of(""), Arrays.stream(Evidence.values()).map(Evidence::key)).toList() : List.of());
    model.put("help", helpKey(trait));
    model.put("sources", sources(library, messages));
    model.put("kinds", SourceForm.kinds());
    return model;
  }

  private static String helpKey(Trait trait) {
    return switch (trait.shape()) {
      case SPAN -> "value.help." + trait.unit().name().toLowerCase(Locale.ROOT);
      case MONTHS -> trait == Trait.HARVEST ? "value.help.harvest" : "value.help.months";
      case SEASONS -> "value.help.seasons";
      case TEXT -> "value.help.caution";
      default -> "";
    };
  }

  /** Own experience first, the others by author and title. */
  private static List<SourceLine> sources(SpeciesLibrary library, Messages messages) {
    return library.sources().values().stream().map(s -> SourceLine.of(s, messages))
        .sorted(Comparator.comparing((SourceLine s) -> !s.id().equals(Source.OWN_EXPERIENCE))
            .thenComparing(SourceLine::citation, String.CASE_INSENSITIVE_ORDER))
        .toList();
  }

  /** The fields filled in as a statement stands. */
  static Form filled(WrittenStatement written, Trait trait, Messages messages) {
    Map<String, List<String>> typed = new HashMap<>();
    typed.put("item", List.of(written.item()));
    typed.put("caution_kind", List.of(CautionKind.of(written.item()).map(CautionKind::key).orElse("")));
    typed.put("caution_detail", List.of(CautionKind.detail(written.item())));
    typed.put("value", values(written, trait));
    typed.put("source", List.of(written.sourceId()));
    typed.put("evidence", List.of(written.evidence()));
    typed.put("note", List.of(written.note()));
    return Form.filled(typed, messages);
  }

  private static List<String> values(WrittenStatement written, Trait trait) {
    Optional<TraitValue> value = TraitReader.read(trait, written.entered(), "value").value();
    if (value.isEmpty()) {
      return List.of(written.entered());
    } else if (value.get() instanceof TraitValue.Word word) {
      return List.of(word.word());
    } else if (value.get() instanceof TraitValue.Words words) {
      return words.words();
    } else if (value.get() instanceof TraitValue.InSeasons seasons) {
      return seasons.seasons();
    } else if (value.get() instanceof TraitValue.YesNo yesNo) {
      return List.of(yesNo.yes() ? "yes" : "no");
    }
    return List.of(written.entered());
  }

  /** What was typed, read; the statement is empty where the form is refused. */
  static Read read(Form form, Trait trait, WrittenStatement before, SpeciesLibrary library) {
    String item = trait == Trait.CAUTION ? cautionItem(form) : trait.hasItems() ? form.value("item") : "";
    if (trait.hasItems() && trait != Trait.CAUTION && item.isEmpty()) {
      form.refuse(Finding.of("value.missing", "item"));
    }
    if (trait.carriesEvidence() && form.value("evidence").isEmpty()) {
      form.refuse(Finding.of("evidence.missing", "evidence"));
    }
    Optional<Source> newSource = Optional.empty();
    String sourceId = form.value("source");
    if (typesNewSource(form)) {
      Optional<Source> typed = SourceForm.read(form, Optional.empty(), library);
      Optional<Source> kept = typed.flatMap(s -> SourceForm.kept(s, library));
      newSource = kept.isPresent() ? Optional.empty() : typed;
      sourceId = kept.or(() -> typed).map(Source::id).orElse("");
    } else if (!library.sources().containsKey(sourceId)) {
      form.refuse(Finding.of("source.unknown", "source"));
    }
    WrittenStatement written = new WrittenStatement(before.id(), before.speciesId(), trait.key(), item, entered(form, trait),
        sourceId, trait.carriesEvidence() ? form.value("evidence") : "", before.chosen(), form.value("note").strip());
    boolean itemRefused = !form.messageOf("item").isEmpty() || !form.messageOf("caution_kind").isEmpty()
        || !form.messageOf("caution_detail").isEmpty();
    List<Finding> findings = new ArrayList<>(written.read().findings());
    findings.removeIf(f -> f.field().equals("item") && itemRefused);
    findings.forEach(form::refuse);
    return new Read(form.isRefused() ? Optional.empty() : Optional.of(written.read().orThrow()), newSource);
  }

  /** A new source is chosen, or typed without choosing anything. */
  static boolean typesNewSource(Form form) {
    return form.value("source").equals(NEW_SOURCE)
        || (form.value("source").isEmpty() && !form.value("source_title").isBlank());
  }

  /** @param newSource the statement's source, where it is not kept yet */
  record Read(Optional<Statement> statement, Optional<Source> newSource) {}

  private static String entered(Form form, Trait trait) {
    return switch (trait.shape()) {
      case WORDS -> String.join("; ", form.values("value"));
      case SEASONS -> form.values("value").isEmpty() ? "yes" : String.join("; ", form.values("value"));
      default -> form.value("value").strip();
    };
  }

  private static String cautionItem(Form form) {
    Optional<CautionKind> kind = CautionKind.of(form.value("caution_kind"));
    if (kind.isEmpty()) {
      form.refuse(Finding.of("value.missing", "caution_kind"));
      return "";
    }
    String detail = form.value("caution_detail").strip();
    CautionKind.Detail wanted = kind.get().detail();
    if (wanted == CautionKind.Detail.NONE) {
      return kind.get().key();
    }
    if (!wanted.accepts(detail)) {
      form.refuse(Finding.of("caution." + wanted.name().toLowerCase(Locale.ROOT) + "-missing", "caution_detail"));
    }
    return kind.get().key() + ":" + detail;
  }
}
