package guildwood.site.survey;

import guildwood.kernel.Finding;
import guildwood.site.survey.Indication.Witness;
import guildwood.site.survey.PlotReading.TakenName;
import guildwood.site.survey.WetlandRules.Dominance;
import guildwood.site.survey.WetlandRules.Rated;
import guildwood.species.names.NameIndex;
import guildwood.species.names.NameMatch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads surveys against tables of indicator values. */
public final class SurveyReader {
  private final List<IndicatorTable> tables;
  private final NameIndex allNames;

  public SurveyReader(List<IndicatorTable> tables) {
    this.tables = List.copyOf(tables);
    Set<String> names = new LinkedHashSet<>();
    tables.forEach(t -> names.addAll(t.species()));
    this.allNames = NameIndex.of(names);
  }

  /** What the plants of a survey say about every axis that has a table. */
  public PlotReading read(Survey survey) {
    Map<SurveyAxis, AxisReading> best = new EnumMap<>(SurveyAxis.class);
    List<AxisReading> others = new ArrayList<>();
    List<SurveyAxis> unheard = new ArrayList<>();
    for (IndicatorTable table : tables) {
      Optional<AxisReading> reading = read(table, survey);
      if (reading.isEmpty()) {
        continue;
      }
      AxisReading before = best.get(table.axis());
      boolean better = before == null || reading.get().matchedCoverPercent() > before.matchedCoverPercent();
      if (better) {
        best.put(table.axis(), reading.get());
        Optional.ofNullable(before).ifPresent(others::add);
      } else {
        others.add(reading.get());
      }
    }
    tables.stream().map(IndicatorTable::axis).distinct().filter(a -> !best.containsKey(a)).forEach(unheard::add);
    List<Rated> rated = rated(survey);
    boolean judged = !rated.isEmpty() && !survey.isList();
    List<Finding> notes = notes(survey);
    if (judged && WetlandRules.prevalenceIndex(rated).isEmpty()) {
      notes.add(Finding.of("survey.too-little-rated", "wetness", Math.round(WetlandRules.ratedPercent(rated))));
    }
    return new PlotReading(survey.plot(), best, others, unheard,
        judged ? WetlandRules.prevalenceIndex(rated) : OptionalDouble.empty(),
        judged ? Optional.of(WetlandRules.dominance(rated)) : Optional.empty(), names(survey), notes);
  }

  /** The reading by one table; empty where it knows none of the wild plants. */
  private static Optional<AxisReading> read(IndicatorTable table, Survey survey) {
    Map<String, Witness> witnesses = new LinkedHashMap<>();
    double all = 0;
    double matched = 0;
    for (Occurrence plant : survey.speaking()) {
      double amount = survey.amount(plant);
      all += amount;
      Optional<String> name = table.match(plant.species()).flatMap(NameMatch::name);
      if (name.isPresent()) {
        matched += amount;
        boolean seedling = plant.stage() == Occurrence.Stage.SEEDLING;
        witnesses.merge(name.get(), new Witness(name.get(), amount, seedling), (a, b) ->
            new Witness(a.species(), survey.isList() ? 1 : a.amount() + b.amount(), a.seedling() && b.seedling()));
      }
    }
    return witnesses.isEmpty()
        ? Optional.empty()
        : Optional.of(new Indication(table, List.copyOf(witnesses.values()), survey.isList()).read(100 * matched / all));
  }

  /** Wild plants with their ratings, one entry a species and stratum; empty where there is no table of ratings. */
  private List<Rated> rated(Survey survey) {
    Optional<IndicatorTable> ratings = tables.stream().filter(SurveyReader::isOfRatings).findFirst();
    if (ratings.isEmpty()) {
      return List.of();
    }
    Map<String, Rated> rated = new LinkedHashMap<>();
    for (Occurrence plant : survey.speaking()) {
      Optional<String> name = ratings.get().match(plant.species()).flatMap(NameMatch::name);
      OptionalDouble rating = name.map(n -> OptionalDouble.of(ratings.get().value(n).centre())).orElse(OptionalDouble.empty());
      Rated entry = new Rated(name.orElse(plant.species().strip()), plant.stratum(), survey.amount(plant), rating);
      rated.merge(entry.stratum() + '\n' + entry.species(), entry, (a, b) ->
          new Rated(a.species(), a.stratum(), a.coverPercent() + b.coverPercent(), a.rating()));
    }
    return List.copyOf(rated.values());
  }

  private static boolean isOfRatings(IndicatorTable table) {
    return table.axis() == SurveyAxis.WETNESS && table.system().equalsIgnoreCase(SurveyAxis.WETLAND_RATING);
  }

  private List<TakenName> names(Survey survey) {
    return survey.occurrences().stream().map(o -> new TakenName(o.species(), taken(o.species()))).toList();
  }

  /** The surest match that any table has; where none has one, the near names of all together. */
  private NameMatch taken(String written) {
    return tables.stream().flatMap(t -> t.match(written).stream()).min(Comparator.comparing(NameMatch::kind))
        .orElseGet(() -> allNames.find(written));
  }

  private List<Finding> notes(Survey survey) {
    List<Finding> notes = new ArrayList<>();
    List<Occurrence> speaking = survey.speaking();
    long planted = survey.occurrences().stream().filter(o -> o.origin() == Occurrence.Origin.PLANTED).count();
    if (planted > 0) {
      notes.add(Finding.of("survey.planted", "status", planted));
    }
    long forgotten = survey.isList() ? 0 : speaking.stream().filter(o -> o.coverPercent().isEmpty()).count();
    if (forgotten > 0) {
      notes.add(Finding.of("survey.cover-missing", "cover_percent", forgotten));
    }
    if (speaking.stream().anyMatch(o -> o.coverPercent().orElse(0) > 100)) {
      notes.add(Finding.of("survey.cover-above-100", "cover_percent"));
    }
    long unmatched = speaking.stream().filter(o -> tables.stream().allMatch(t -> t.match(o.species()).isEmpty())).count();
    if (unmatched > 0) {
      notes.add(Finding.of("survey.unmatched", "species", unmatched));
    }
    return notes;
  }
}
