package guildwood.species;

import guildwood.kernel.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;

/**
 * One species beside its row of the table: what rules in the library against what the table says.
 *
 * <p>Tolerances: pH limits 0.05; the table's height within the library's range widened by a tenth at either
 * end; the coldest temperature within one half hardiness zone, 5 degrees F; shade tolerance the same class,
 * where the library has other words 'full sun' without shade for intolerant, part shade in them for
 * intermediate, any shade in them for tolerant; nitrogen fixation yes for any grade but none.
 */
final class UsdaComparison {
  private static final double PH_TOLERANCE = 0.05;
  private static final double HEIGHT_TOLERANCE = 0.1;
  private static final double HALF_ZONE_CELSIUS = 5 / 1.8;

  /** One value on both sides. */
  record Compared(String speciesId, String trait, String table, String library, String sourceId, boolean agrees) {}

  private final Species species;
  private final CSVRecord row;
  private final List<Compared> compared = new ArrayList<>();

  private UsdaComparison(Species species, CSVRecord row) {
    this.species = species;
    this.row = row;
  }

  static List<Compared> of(Species species, CSVRecord row) {
    UsdaComparison comparison = new UsdaComparison(species, row);
    comparison.acidity();
    comparison.height();
    comparison.shade();
    comparison.cold();
    comparison.nitrogen();
    return comparison.compared;
  }

  private void acidity() {
    OptionalDouble low = UsdaTable.number(row, "ph_minimum");
    OptionalDouble high = UsdaTable.number(row, "ph_maximum");
    Optional<Statement> said = species.ruling(Trait.PH);
    if (low.isPresent() && high.isPresent() && said.isPresent()) {
      Range ph = range(said.get());
      add("pH, lowest", "" + low.getAsDouble(), said.get(), Math.abs(ph.min() - low.getAsDouble()) <= PH_TOLERANCE);
      add("pH, highest", "" + high.getAsDouble(), said.get(), Math.abs(ph.max() - high.getAsDouble()) <= PH_TOLERANCE);
    }
  }

  private void height() {
    OptionalDouble feet = UsdaTable.number(row, "height_mature_feet");
    Optional<Statement> said = species.ruling(Trait.HEIGHT);
    if (feet.isPresent() && said.isPresent()) {
      Range height = range(said.get());
      Range allowed = new Range(height.min() * (1 - HEIGHT_TOLERANCE), height.max() * (1 + HEIGHT_TOLERANCE));
      add("height", feet.getAsDouble() + " ft", said.get(), allowed.contains(UsdaTable.metres(feet.getAsDouble())));
    }
  }

  private void shade() {
    Optional<String> tolerance = UsdaTable.word(row, "shade_tolerance");
    Optional<Statement> said = species.ruling(Trait.LIGHT);
    if (tolerance.isPresent() && said.isPresent()) {
      String words = said.get().entered();
      boolean agrees = words.startsWith("shade-")
          ? words.equals("shade-" + tolerance.get().toLowerCase(Locale.ROOT))
          : switch (tolerance.get()) {
            case "Intolerant" -> !words.contains("shade");
            case "Intermediate" -> words.contains("part shade");
            default -> words.contains("shade");
          };
      add("shade tolerance", tolerance.get(), said.get(), agrees);
    }
  }

  private void cold() {
    OptionalDouble fahrenheit = UsdaTable.number(row, "temperature_minimum_f");
    Optional<Statement> said = species.ruling(Trait.COLDEST_WINTER);
    if (fahrenheit.isPresent() && said.isPresent()) {
      double difference = range(said.get()).min() - UsdaTable.celsius(fahrenheit.getAsDouble());
      add("coldest temperature", fahrenheit.getAsDouble() + " F", said.get(), Math.abs(difference) <= HALF_ZONE_CELSIUS + 0.01);
    }
  }

  private void nitrogen() {
    Optional<String> grade = UsdaTable.word(row, "nitrogen_fixation");
    Optional<Statement> said = species.ruling(Trait.FUNCTION, GuildFunction.NITROGEN_FIXER.key());
    if (grade.isPresent() && said.isPresent()) {
      boolean fixes = ((TraitValue.YesNo) said.get().value()).yes();
      add("nitrogen fixation", grade.get(), said.get(), fixes != grade.get().equals("None"));
    }
  }

  private void add(String trait, String table, Statement said, boolean agrees) {
    compared.add(new Compared(species.id(), trait, table, said.entered(), said.sourceId(), agrees));
  }

  private static Range range(Statement said) {
    return ((TraitValue.Span) said.value()).range();
  }
}
