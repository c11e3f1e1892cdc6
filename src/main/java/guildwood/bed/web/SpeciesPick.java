package guildwood.bed.web;

import guildwood.bed.web.BedPages.Named;
import guildwood.kernel.Finding;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.web.Form;
import java.util.List;
import java.util.Optional;

/**
 * What was read of a field that names a species.
 *
 * @param species absent where none or several bear the name; the form knows why
 * @param suggested what may have been meant, to choose from
 */
record SpeciesPick(Optional<Species> species, List<Named> suggested) {
  private static final int LONGEST_NAME_TYPED = 200;

  /**
   * Reads the species of the library that is meant.
   *
   * @param field where the name is typed
   * @param pick where a suggestion is chosen
   */
  static SpeciesPick read(Form form, String field, String pick, SpeciesLibrary library) {
    // A suggestion that was chosen counts for more than what had been typed.
    String typed = form.ticked(pick) ? form.optionalText(pick, LONGEST_NAME_TYPED) : form.text(field, LONGEST_NAME_TYPED);
    List<Species> named = typed.isEmpty() ? List.of() : SpeciesFinder.named(library, typed);
    if (named.size() == 1 || typed.isEmpty()) {
      return new SpeciesPick(named.stream().findFirst(), form.ticked(pick) ? named.stream().map(Named::of).toList() : List.of());
    }
    List<Named> suggested = (named.isEmpty() ? SpeciesFinder.like(library, typed) : named).stream().map(Named::of).toList();
    form.refuse(Finding.of(suggested.isEmpty() ? "species.not-in-library" : "species.which", field, typed));
    return new SpeciesPick(Optional.empty(), suggested);
  }
}
