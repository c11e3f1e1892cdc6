package guildwood.site.survey;

import guildwood.kernel.Range;
import guildwood.kernel.Source;
import guildwood.species.WetlandRegion;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Common wild plants and what is published about the ground they grow on: the values of the app itself, on the axes
 * of the beds. Wetland ratings hold for one region only.
 *
 * @param plants in the order of the picking list
 * @param sources by id
 */
public record IndicatorLibrary(List<Plant> plants, List<Fact> facts, Map<String, Source> sources) {

  /** A part of the world a plant is common in. */
  public enum Region {
    EASTERN_NORTH_AMERICA,
    NORTH_WEST_EUROPE
  }

  /** What kind of plant to look for. */
  public enum Form {
    TREE,
    SHRUB,
    CLIMBER,
    HERB,
    GRASS,
    FERN
  }

  /**
   * A plant to pick.
   *
   * @param synonyms other scientific names that the sources use for it
   * @param description how to know it, in a sentence or two
   */
  public record Plant(
      String species, String commonName, Form form, List<Region> regions, List<String> synonyms, String description) {
    public Plant {
      regions = List.copyOf(regions);
      synonyms = List.copyOf(synonyms);
    }
  }

  /**
   * One published fact about a plant.
   *
   * @param region of a wetland rating; absent on the other axes
   * @param note what the source says, where the range is a reading of its words
   */
  public record Fact(
      String species, SurveyAxis axis, Optional<WetlandRegion> region, Range range, Optional<Range> preferred,
      String sourceId, String note) {
    public Fact {
      if (region.isPresent() != (axis == SurveyAxis.WETNESS)) {
        throw new IllegalArgumentException(species + ": a rating needs a region, and nothing else has one");
      }
    }
  }

  public IndicatorLibrary {
    plants = List.copyOf(plants);
    facts = List.copyOf(facts);
    sources = Map.copyOf(sources);
  }

  /** The facts about a plant, in the order of the axes. */
  public List<Fact> about(String species) {
    return facts.stream().filter(f -> f.species().equals(species)).toList();
  }

  /** Tables to read surveys with; wetness only where the region is told. */
  public List<IndicatorTable> tables(Optional<WetlandRegion> region) {
    List<IndicatorTable> tables = new ArrayList<>();
    for (SurveyAxis axis : SurveyAxis.values()) {
      Map<String, IndicatorValue> values = new LinkedHashMap<>();
      facts.stream().filter(f -> f.axis() == axis && (f.region().isEmpty() || f.region().equals(region)))
          .forEach(f -> values.put(f.species(), value(f)));
      if (!values.isEmpty()) {
        String system = axis == SurveyAxis.WETNESS ? SurveyAxis.WETLAND_RATING : SurveyAxis.OWN_AXES;
        IndicatorTable table = new IndicatorTable(axis, system, values);
        plants.stream().filter(p -> values.containsKey(p.species()))
            .forEach(p -> p.synonyms().forEach(s -> table.addSynonym(s, p.species())));
        tables.add(table);
      }
    }
    return List.copyOf(tables);
  }

  private static IndicatorValue value(Fact fact) {
    return fact.axis() == SurveyAxis.WETNESS
        ? new IndicatorValue.Point(fact.range().min(), OptionalDouble.empty())
        : new IndicatorValue.Tolerated(fact.range(), fact.preferred());
  }
}
