package guildwood.bed;

import guildwood.site.Site;
import guildwood.site.survey.AxisReading;
import guildwood.site.survey.IndicatorLibrary;
import guildwood.site.survey.PlantNames;
import guildwood.site.survey.PlotReading;
import guildwood.site.survey.SurveyAxis;
import guildwood.site.survey.SurveyReader;
import guildwood.site.survey.SurveySheet;
import guildwood.site.survey.SurveyStore;
import guildwood.species.WetlandRegion;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The kept surveys, read with the values of the indicator plants. */
public final class SurveyReadings {
  private final SurveyStore surveys;
  private final IndicatorLibrary library;
  private final PlantNames names;
  private final Map<Optional<WetlandRegion>, SurveyReader> readers = new ConcurrentHashMap<>();

  public SurveyReadings(SurveyStore surveys, IndicatorLibrary library) {
    this.surveys = surveys;
    this.library = library;
    this.names = new PlantNames(library.plants());
  }

  public SurveyStore surveys() {
    return surveys;
  }

  public IndicatorLibrary library() {
    return library;
  }

  public PlantNames names() {
    return names;
  }

  /** Regions for which the library has wetland ratings. */
  public List<WetlandRegion> regions() {
    return library.facts().stream().flatMap(f -> f.region().stream()).distinct().sorted().toList();
  }

  /** What the plants of a survey say. */
  public PlotReading read(SurveySheet sheet) {
    return readers.computeIfAbsent(sheet.region(), region -> new SurveyReader(library.tables(region))).read(sheet.survey(names));
  }

  /** Where the surveys of a bed speak against what was found out on the spot. */
  public List<Evidence> contradictions(Bed bed, Site site) {
    return surveys.ofBed(bed.id()).stream()
        .flatMap(sheet -> read(sheet).readings().values().stream().map(reading -> Evidence.of(sheet, reading, bed, site)))
        .filter(Evidence::isContradiction).toList();
  }

  /** The reading of one axis; empty where no plant speaks about it. */
  public Optional<AxisReading> read(SurveySheet sheet, SurveyAxis axis) {
    return Optional.ofNullable(read(sheet).readings().get(axis));
  }
}
