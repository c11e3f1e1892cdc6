package guildwood.site.survey;

import guildwood.species.WetlandRegion;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * A survey as it is kept: every name as it was typed, with what it is taken for beside it.
 *
 * @param bedId absent where the survey is of the whole site
 * @param scale how the covers of all rows are written
 * @param region whose wetland ratings are used; absent where none are wanted
 */
public record SurveySheet(
    long id, long siteId, OptionalLong bedId, String name, Optional<LocalDate> date, OptionalDouble plotSizeM2, CoverScale scale,
    Optional<WetlandRegion> region, String note, List<Row> rows) {
  public static final int LONGEST_NAME = 100;
  public static final int LONGEST_NOTE = 2000;
  public static final int MOST_ROWS = 300;

  public SurveySheet {
    rows = List.copyOf(rows);
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException("a survey needs a name of at most " + LONGEST_NAME + " characters: " + name);
    }
    if (plotSizeM2.isPresent() && !(plotSizeM2.getAsDouble() > 0)) {
      throw new IllegalArgumentException("a plot of " + plotSizeM2.getAsDouble() + " m2");
    }
    if (rows.size() > MOST_ROWS) {
      throw new IllegalArgumentException(rows.size() + " rows");
    }
    for (Row row : rows) {
      if (!row.cover().isEmpty() && scale.percent(row.cover()).isEmpty()) {
        throw new IllegalArgumentException(row.cover() + " is no cover on the scale " + scale);
      }
    }
  }

  /**
   * One plant of a survey.
   *
   * @param written the name as it was typed
   * @param taken the plant it is taken for; absent where for none
   * @param cover percent or class as written; empty where none was noted
   */
  public record Row(String written, Optional<String> taken, String cover, Occurrence.Origin origin, Occurrence.Stage stage) {
    public static final int LONGEST_NAME = 200;

    public Row {
      if (written.isBlank() || written.length() > LONGEST_NAME) {
        throw new IllegalArgumentException("not a name of at most " + LONGEST_NAME + " characters: " + written);
      }
    }

    /** A wild plant that was ticked in the picking list. */
    public static Row picked(String species) {
      return new Row(species, Optional.of(species), "", Occurrence.Origin.WILD, Occurrence.Stage.NOT_SAID);
    }

    public Row takenFor(Optional<String> species) {
      return new Row(written, species, cover, origin, stage);
    }
  }

  public SurveySheet withRows(List<Row> changed) {
    return new SurveySheet(id, siteId, bedId, name, date, plotSizeM2, scale, region, note, changed);
  }

  /** The same with ticked plants added that it does not have yet, as many as there is room for. */
  public SurveySheet withPicked(List<String> species) {
    List<Row> all = new ArrayList<>(rows);
    for (String plant : species) {
      if (all.size() < MOST_ROWS && all.stream().noneMatch(r -> r.taken().equals(Optional.of(plant)))) {
        all.add(Row.picked(plant));
      }
    }
    return withRows(all);
  }

  /** The same with what people accepted before kept for names that are still written the same and have no match. */
  public SurveySheet keepingAccepted(List<Row> before) {
    Map<String, Optional<String>> taken = new HashMap<>();
    before.forEach(r -> taken.putIfAbsent(r.written(), r.taken()));
    return withRows(rows.stream()
        .map(r -> r.taken().isPresent() ? r : r.takenFor(taken.getOrDefault(r.written(), Optional.empty()))).toList());
  }

  /** The wild ones, which are meant to speak; a planted one needs no match. */
  public List<Row> wildRows() {
    return rows.stream().filter(r -> r.origin() == Occurrence.Origin.WILD).toList();
  }

  /** How many wild rows are taken for a plant. */
  public long matchedRows() {
    return wildRows().stream().filter(r -> r.taken().isPresent()).count();
  }

  /** The survey to read: plants by the names they are taken for, in the strata of the library's plants. */
  public Survey survey(PlantNames plants) {
    return new Survey(name, date, plotSizeM2, rows.stream().map(r -> occurrence(r, plants)).toList());
  }

  private Occurrence occurrence(Row row, PlantNames plants) {
    OptionalDouble percent = row.cover().isEmpty() ? OptionalDouble.empty() : scale.percent(row.cover());
    return new Occurrence(row.taken().orElse(row.written()), percent, row.origin(), row.stage(),
        plants.stratum(row.taken(), row.stage()));
  }
}
