package guildwood.guild.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.fit.Stated;
import guildwood.fit.Verdict;
import guildwood.guild.Candidate;
import guildwood.guild.Change;
import guildwood.guild.Distinction;
import guildwood.guild.Gap;
import guildwood.guild.GuildRule;
import guildwood.guild.RuleBreach;
import guildwood.guild.Rules;
import guildwood.guild.StartingWishes;
import guildwood.guild.Wish;
import guildwood.guild.WishKind;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.CautionKind;
import guildwood.species.Evidence;
import guildwood.species.Layer;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Trait;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever the engine can say is a sentence, in either set of units. */
class GuildWordsTest {
  private static final Messages MESSAGES = new Messages();
  private static final String OAK = "quercus-nova";
  private static final String MINT = "mentha-nova";
  private static final SpeciesLibrary LIBRARY = new SpeciesLibrary(1,
      List.of(Stated.species("Quercus nova").make(), Stated.species("Mentha nova").make()), List.of(), Map.of());

  private final List<String> said = new ArrayList<>();

  @ParameterizedTest
  @EnumSource(Units.class)
  void everyRuleThatIsBrokenIsASentence(Units units) {
    GuildWords words = words(units);
    for (GuildRule rule : GuildRule.values()) {
      for (List<String> args : arguments(rule)) {
        String about = say(words.breach(new RuleBreach(rule, List.of(OAK), args)));
        assertTrue(about.startsWith("Quercus nova: "), about);
        String whole = say(words.breach(new RuleBreach(rule, List.of(), args)));
        assertFalse(whole.contains("Quercus"), whole);
        assertTrue(say(words.breach(new RuleBreach(rule, List.of(OAK, MINT), args))).startsWith("Quercus nova, Mentha nova: "));
      }
    }
    onlyIn(units);
  }

  @ParameterizedTest
  @EnumSource(Units.class)
  void everyReasonOfAGapIsASentence(Units units) {
    GuildWords words = words(units);
    List<Gap.Reason> reasons = new ArrayList<>(List.of(new Gap.Reason.NobodyInLibrary(),
        new Gap.Reason.ExcludedByRules(List.of(new RuleBreach(GuildRule.BANNED, List.of(OAK), List.of())), 1),
        new Gap.Reason.ExcludedByRules(List.of(new RuleBreach(GuildRule.BANNED, List.of(OAK), List.of())), 1234),
        new Gap.Reason.NoRoom(OAK, List.of(new RuleBreach(GuildRule.LAYER_FULL, List.of(OAK), List.of("shrub", "3.5", "2")))),
        new Gap.Reason.GroundShort(431, OAK, List.of()),
        new Gap.Reason.GroundShort(0, OAK, List.of(new RuleBreach(GuildRule.TOO_MANY_PLANTS, List.of(), List.of("13", "12")))),
        new Gap.Reason.CouldComeIn(OAK, 1500), new Gap.Reason.CouldComeIn(OAK, 0), new Gap.Reason.CouldComeIn(OAK, -2750)));
    for (Axis axis : Axis.values()) {
      for (double shortfall : new double[] {4.5, -4.5, 0.01, 0}) {
        reasons.add(new Gap.Reason.FailsOnSite(List.of(new Gap.SiteMiss(OAK, axis, 100, shortfall, 1)), 3));
      }
    }
    Set<Class<?>> kinds = new LinkedHashSet<>();
    for (Gap.Reason reason : reasons) {
      kinds.add(reason.getClass());
      say(words.reason(reason));
    }
    assertEquals(Set.of(Gap.Reason.class.getPermittedSubclasses()), kinds, "a reason has no example here");
    onlyIn(units);
    assertEquals("It could be met with Quercus nova, but what would have to make room for it is worth 2.75 points more.",
        words.reason(new Gap.Reason.CouldComeIn(OAK, -2750)));
    assertEquals("Plants that cover the ground cover 0 % of the bed here. The easiest to have more of would be Quercus nova, but: "
            + "Plants to put in: 13; you allow 12.",
        words.reason(new Gap.Reason.GroundShort(0, OAK, List.of(new RuleBreach(GuildRule.TOO_MANY_PLANTS, List.of(), List.of("13", "12"))))));
    assertEquals("One suitable species does it, but your own limits keep it out. Quercus nova: you do not want it in this bed.",
        words.reason(reasons.get(1)));
  }

  @ParameterizedTest
  @EnumSource(Units.class)
  void everyChangeIsAClause(Units units) {
    GuildWords words = words(units);
    Rules rules = Rules.forArea(20);
    List<Change> changes = new ArrayList<>(List.of(new Change.PutIn(OAK, 3), new Change.Enlarge(10, 12.5),
        new Change.Insist(new Wish(WishKind.LAYER, "shrub", false, 3))));
    for (Axis axis : Axis.values()) {
      double middle = (axis.lowest() + axis.highest()) / 2;
      changes.add(new Change.MoveCondition(axis, Range.of(middle), new Range(middle, axis.highest())));
    }
    for (GuildRule rule : GuildRule.values()) {
      changes.add(new Change.EaseRule(rule, eased(rule), rules));
    }
    Set<Class<?>> kinds = new LinkedHashSet<>();
    for (Change change : changes) {
      kinds.add(change.getClass());
      say(words.change(change));
    }
    assertEquals(Set.of(Change.class.getPermittedSubclasses()), kinds, "a change has no example here");
    onlyIn(units);
    assertEquals("With 3 × Quercus nova put in, whatever must make room", words.change(new Change.PutIn(OAK, 3)));
    assertEquals("With a budget of 125.50", words.change(new Change.EaseRule(GuildRule.OVER_BUDGET, "12550", rules)));
  }

  @Test
  void everyRemarkIsASentence() {
    List<Finding> remarks = new ArrayList<>(List.of(Finding.of("guild.spreader", MINT, OAK), Finding.of("guild.partner-helps", OAK),
        Finding.of("guild.standing-without-partner", OAK), Finding.of("guild.partner-far", OAK, MINT, 40.0, 100)));
    for (Candidate.Assumption assumption : Candidate.Assumption.values()) {
      remarks.add(Finding.of("guild.assumed", OAK, assumption.key()));
    }
    for (String conflict : Trait.CONFLICT.items()) {
      remarks.add(Finding.of("guild.doubtful-conflict", OAK, MINT, conflict));
      remarks.add(Finding.of("guild.standing-enemies", OAK, MINT, conflict));
    }
    List<String> sentences = words(Units.METRIC).remarks(remarks);
    assertEquals(remarks.size(), sentences.size());
    sentences.forEach(this::say);
  }

  @Test
  void aPlantThatRunsIsNamedOnceWithAllItMaySwamp() {
    List<String> said = words(Units.METRIC).remarks(List.of(Finding.of("guild.spreader", MINT, OAK), Finding.of("guild.partner-helps", OAK),
        Finding.of("guild.spreader", MINT, "gone-species")));
    assertEquals(2, said.size());
    assertEquals("Mentha nova runs or suckers and may swamp its low neighbours: Quercus nova, gone-species. Keep an edge between them.", said.get(0));
  }

  @Test
  void aPartnerTooFarOffIsNamedWithItsDistanceAndTheLimit() {
    List<Finding> far = List.of(Finding.of("guild.partner-far", OAK, MINT, 40.0, 100));
    assertEquals(List.of("Quercus nova: a partner, Mentha nova, grows 40 m away. More than 100 ft (30.5 m) away: poor, too little pollen comes so far."),
        words(Units.METRIC).remarks(far));
    assertTrue(words(Units.US).remarks(far).get(0).contains("grows 131 ft away"));
  }

  @Test
  void everyWishIsAClause() {
    Set<String> clauses = new LinkedHashSet<>();
    for (WishKind kind : WishKind.values()) {
      say(MESSAGES.say("wish.kind." + kind.key()));
      for (String item : kind.items()) {
        String clause = say(words(Units.METRIC).wish(new Wish(kind, item, true, 5)));
        assertTrue(clauses.add(clause), "two wishes read alike: " + clause);
      }
    }
  }

  /** What lies at the very edge of what a plant bears misses by nothing that could be named. */
  @Test
  void aMissOfNothingIsNotCounted() {
    for (Axis axis : Axis.values()) {
      for (Units units : Units.values()) {
        String said = words(units).miss(axis, axis == Axis.SEASON ? 0.3 : 0.02);
        assertFalse(said.matches(".*\\b0\\b.*"), said);
        assertEquals(said, words(units).miss(axis, 0));
      }
    }
    assertEquals("1.5 h more sun needed", words(Units.METRIC).miss(Axis.LIGHT, 1.5));
    assertEquals("2 pH lower needed", words(Units.METRIC).miss(Axis.REACTION, -2));
    assertEquals("winters 5 °C milder needed", words(Units.METRIC).miss(Axis.WINTER_COLD, 5));
    assertEquals("winters 9 °F milder needed", words(Units.US).miss(Axis.WINTER_COLD, 5));
  }

  @Test
  void everyWordThePagesPutTogetherExists() {
    Arrays.stream(Layer.values()).forEach(layer -> say(MESSAGES.say("term.layer." + layer.key())));
    Arrays.stream(Verdict.values()).forEach(verdict -> say(MESSAGES.say("term.verdict." + verdict.key())));
    Arrays.stream(Evidence.values()).forEach(evidence -> say(MESSAGES.say("term.evidence." + evidence.key())));
    Arrays.stream(CautionKind.values()).forEach(kind -> say(MESSAGES.say("term.caution." + kind.key())));
    Arrays.stream(Distinction.values()).forEach(d -> say(MESSAGES.say("character." + d.key())));
    Arrays.stream(StartingWishes.values()).forEach(set -> say(MESSAGES.say("wishes." + set.key())));
    Trait.NATIVITY.items().forEach(region -> say(MESSAGES.say("term.region." + region)));
    Trait.CONFLICT.items().forEach(conflict -> say(MESSAGES.say("term.conflict." + conflict)));
    Arrays.stream(Units.values()).forEach(units -> say(MESSAGES.say("units.now." + units.key())));
    List.of("none", "bloom", "harvest", "both").forEach(mark -> MESSAGES.say("year." + mark));
    List.of("works", "expired", "revoked").forEach(state -> say(MESSAGES.say("share.state." + state)));
  }

  @Test
  void pointsAndMoneyAreExact() {
    assertEquals("75.987", GuildWords.points(75_987));
    assertEquals("0.02", GuildWords.points(20));
    assertEquals("−25", GuildWords.points(-25_000));
    assertEquals("0", GuildWords.points(0));
    assertEquals("0.05", GuildWords.money(5));
    assertEquals("1234567.80", GuildWords.money(123_456_780));
  }

  private String say(String text) {
    assertFalse(text.isBlank());
    assertFalse(text.matches("(?s).*(\\{\\d|null|\\?\\?|quercus-nova|mentha-nova|\\b[a-z]+_[a-z]+\\b).*"), text);
    assertFalse(text.contains("  ") || text.contains("()") || text.endsWith(" "), text);
    said.add(text);
    return text;
  }

  /** Nothing said so far is in the other system's units. */
  private void onlyIn(Units units) {
    for (String text : said) {
      String foreign = units == Units.US ? ".*(m²|°C|\\d m\\b|\\d cm\\b).*" : ".*(sq ft|°F|\\d ft\\b|\\d in\\b).*";
      assertFalse(text.matches(foreign), text);
    }
  }

  private static GuildWords words(Units units) {
    return new GuildWords(MESSAGES, LIBRARY, units);
  }

  /** Values of every kind that may come with a rule, as {@link GuildRule} lists them. */
  private static List<List<String>> arguments(GuildRule rule) {
    return switch (rule) {
      case UNKNOWN_SPECIES, FIT_NOT_KNOWN, LAYER_NOT_KNOWN, BANNED, PARTNER_MISSING -> List.of(List.of());
      case DOES_NOT_FIT, BORDERLINE -> Arrays.stream(Axis.values())
          .flatMap(axis -> List.of("1.25", "-3", "0").stream().map(shortfall -> List.of(axis.key(), "150", shortfall))).toList();
      case CAUTION -> CautionKind.keys().stream().map(List::of).toList();
      case NOT_NATIVE -> Trait.NATIVITY.items().stream().map(List::of).toList();
      case LARGER_THAN_BED -> List.of(List.of("78.54", "24"));
      case NOT_IN_STOCK -> List.of(List.of("2", "1", "4"));
      case NOT_TO_BE_HAD, PATCH_TOO_SMALL, TOO_MANY_SPECIES, TOO_MANY_PLANTS, STANDING_LEFT_OUT, PIN_IGNORED -> List.of(List.of("2", "1"));
      case OVER_BUDGET -> List.of(List.of("123456", "5000"));
      case LAYER_FULL, NO_LIGHT_LEFT -> Arrays.stream(Layer.values()).map(layer -> List.of(layer.key(), "12.5", "10")).toList();
      case ENEMIES -> Trait.CONFLICT.items().stream().map(List::of).toList();
      case GENUS_LIMIT -> List.of(List.of("Rubus", "3", "2"));
    };
  }

  private static String eased(GuildRule rule) {
    return switch (rule) {
      case CAUTION -> CautionKind.THORNS.key();
      case NOT_NATIVE -> Trait.NATIVITY.items().get(0);
      case BANNED, PIN_IGNORED, LAYER_NOT_KNOWN -> OAK;
      case OVER_BUDGET -> "12500";
      default -> "4";
    };
  }
}
