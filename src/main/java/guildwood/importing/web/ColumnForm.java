package guildwood.importing.web;

import guildwood.importing.ColumnMapping;
import guildwood.importing.ColumnUnit;
import guildwood.importing.Mapping;
import guildwood.importing.Meaning;
import guildwood.kernel.Finding;
import guildwood.web.Form;
import java.util.List;
import java.util.Optional;

/** Reads what a person says about columns over what was said before. */
final class ColumnForm {
  private static final String ABOUT = "about-";

  private final Form form;

  ColumnForm(Form form) {
    this.form = form;
  }

  /** The mapping with the columns of the form as it says; where something is no answer, the form is refused. */
  Mapping over(Mapping before) {
    Mapping after = before;
    for (String number : form.names(ABOUT)) {
      Optional<ColumnMapping> column = number.matches("\\d{1,4}") ? before.column(Integer.parseInt(number)) : Optional.empty();
      if (column.isEmpty()) {
        form.refuse(Finding.of("import.no-column", ""));
        return before;
      }
      after = after.with(changed(column.get()));
    }
    return after;
  }

  private ColumnMapping changed(ColumnMapping column) {
    Meaning meaning = meaning(column);
    ColumnMapping meant = meaning.equals(column.meaning()) ? column : column.with(meaning);
    String separator = form.value("separator-" + column.column()).strip();
    if (separator.length() > ColumnMapping.LONGEST_SEPARATOR) {
      form.refuse(Finding.of("text.too-long", "separator-" + column.column(), ColumnMapping.LONGEST_SEPARATOR));
      separator = column.separator();
    }
    return new ColumnMapping(column.column(), column.header(), meaning, unit(meant), separator);
  }

  /** Where the topic was changed, what it usually says; otherwise what was chosen of it. */
  private Meaning meaning(ColumnMapping column) {
    String about = form.value(ABOUT + column.column());
    Optional<Meaning> detail = Meaning.ofKey(form.value("detail-" + column.column())).filter(m -> Topics.about(m).equals(about));
    List<Meaning> choices = Topics.meanings(about);
    if (detail.isPresent()) {
      return detail.get();
    }
    if (Topics.about(column.meaning()).equals(about)) {
      return column.meaning();
    }
    if (choices.isEmpty()) {
      form.refuse(Finding.of("item.unknown", "column-" + column.column(), about));
      return column.meaning();
    }
    return choices.get(0);
  }

  private ColumnUnit unit(ColumnMapping meant) {
    List<ColumnUnit> choices = ColumnUnit.choices(meant.meaning());
    String sent = form.value("unit-" + meant.column());
    Optional<ColumnUnit> chosen = ColumnUnit.ofKey(sent);
    if (!sent.isEmpty() && chosen.isEmpty()) {
      form.refuse(Finding.of("item.unknown", "column-" + meant.column(), sent));
    }
    // The unit of what the column was taken for before means nothing now.
    return chosen.filter(choices::contains).orElse(choices.contains(meant.unit()) ? meant.unit() : ColumnUnit.AS_WRITTEN);
  }
}
