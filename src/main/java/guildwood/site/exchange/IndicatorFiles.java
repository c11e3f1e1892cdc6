package guildwood.site.exchange;

import guildwood.kernel.Range;
import guildwood.kernel.Source;
import guildwood.site.survey.IndicatorLibrary;
import guildwood.site.survey.IndicatorLibrary.Fact;
import guildwood.site.survey.IndicatorLibrary.Form;
import guildwood.site.survey.IndicatorLibrary.Plant;
import guildwood.site.survey.IndicatorLibrary.Region;
import guildwood.site.survey.SurveyAxis;
import guildwood.species.WetlandRegion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The indicator plants that come with the program: {@code indicator-plants.csv}, {@code indicators.csv} and
 * {@code indicator-sources.csv} on the class path. They are part of the program, so anything wrong in them is a bug.
 */
public final class IndicatorFiles {
  private static final String FOLDER = "/seed-data/";

  private IndicatorFiles() {}

  /** Reads all three files. */
  public static IndicatorLibrary read() {
    Map<String, Source> sources = new LinkedHashMap<>();
    rows("indicator-sources.csv", "id", "kind", "title").forEach(r -> sources.put(r.text("id"), source(r)));
    List<Plant> plants = rows("indicator-plants.csv", "species", "common_name", "form", "regions", "description")
        .stream().map(IndicatorFiles::plant).toList();
    List<Fact> facts = rows("indicators.csv", "species", "axis", "min", "max", "source")
        .stream().map(IndicatorFiles::fact).toList();
    for (Fact fact : facts) {
      if (!sources.containsKey(fact.sourceId()) || plants.stream().noneMatch(p -> p.species().equals(fact.species()))) {
        throw new IllegalStateException("no source or no plant for " + fact);
      }
    }
    return new IndicatorLibrary(plants, facts, sources);
  }

  private static Source source(InputTable.Row row) {
    Source.Kind kind = Source.Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT).replace('-', '_'));
    OptionalInt year = row.text("year").isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(row.text("year")));
    return new Source(row.text("id"), kind, row.text("author"), row.text("title"), year, row.text("locator"));
  }

  private static Plant plant(InputTable.Row row) {
    List<Region> regions = list(row.text("regions")).stream()
        .map(r -> Region.valueOf(r.toUpperCase(Locale.ROOT).replace('-', '_'))).toList();
    return new Plant(row.text("species"), row.text("common_name"), Form.valueOf(row.text("form").toUpperCase(Locale.ROOT)),
        regions, list(row.text("synonyms")), row.text("description"));
  }

  private static Fact fact(InputTable.Row row) {
    SurveyAxis axis = SurveyAxis.ofKey(row.text("axis")).orElseThrow(() -> new IllegalStateException(row.text("axis")));
    Optional<WetlandRegion> region = Arrays.stream(WetlandRegion.values())
        .filter(r -> r.key().equals(row.text("region"))).findFirst();
    Optional<Range> preferred = range(row.number("preferred_min"), row.number("preferred_max"));
    return new Fact(row.text("species"), axis, region, range(row.number("min"), row.number("max")).orElseThrow(), preferred,
        row.text("source"), row.text("note"));
  }

  private static Optional<Range> range(OptionalDouble min, OptionalDouble max) {
    return min.isPresent() && max.isPresent()
        ? Optional.of(new Range(min.getAsDouble(), max.getAsDouble()))
        : Optional.empty();
  }

  private static List<String> list(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(";"));
  }

  private static List<InputTable.Row> rows(String file, String... columns) {
    try (InputStream in = IndicatorFiles.class.getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IllegalStateException("no file " + FOLDER + file);
      }
      InputTable table = InputTable.parse(file, new String(in.readAllBytes(), StandardCharsets.UTF_8), List.of(columns));
      if (!table.findings().isEmpty()) {
        throw new IllegalStateException("cannot be read: " + table.findings());
      }
      return table.rows();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
