package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.fit.Stated;
import guildwood.species.CautionKind;
import guildwood.species.Evidence;
import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import guildwood.species.Trait;
import java.time.Month;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CandidacyTest {
  private static Candidate read(Stated species) {
    return Plants.candidate(species);
  }

  @Test
  void fillsTheUppermostLayerItCan() {
    Candidate vine = read(Stated.species("Actinidia exemplum").with(Trait.LAYER, "herb; climber").with(Trait.CROWN, "2 m"));
    assertEquals(Layer.CLIMBER, vine.stature().orElseThrow().layer());
    // A crown 2 m wide covers pi square metres, 314 square decimetres.
    assertEquals(314, vine.stature().orElseThrow().crownDm2());
    assertEquals(Set.of(), vine.assumptions());
  }

  @Test
  void aMissingCrownIsTheUsualOneAndFlagged() {
    Candidate shrub = read(Stated.species("Rubus exemplum").with(Trait.LAYER, "shrub"));
    assertEquals(Set.of(Candidate.Assumption.CROWN_OF_LAYER), shrub.assumptions());
    assertEquals(Stature.crownDm2(1.8), shrub.stature().orElseThrow().crownDm2());
  }

  @Test
  void aMissingLayerIsReadFromTheHeightOrNotKnown() {
    Candidate tree = read(Stated.species("Quercus exemplum").with(Trait.HEIGHT, "20 m").with(Trait.CROWN, "12 m"));
    assertEquals(Layer.TALL_TREE, tree.stature().orElseThrow().layer());
    assertEquals(Set.of(Candidate.Assumption.LAYER_FROM_HEIGHT), tree.assumptions());
    assertTrue(read(Stated.species("Aenigma exemplum")).stature().isEmpty());
  }

  @Test
  void claimsCarryTheirEvidenceAndANoIsNoJob() {
    Candidate plant = read(Stated.species("Symphytum exemplum")
        .with(Trait.FUNCTION, "dynamic-accumulator", "yes", Optional.of(Evidence.OBSERVED))
        .with(Trait.FUNCTION, "nitrogen-fixer", "no", Optional.of(Evidence.MEASURED))
        .with(Trait.FUNCTION, "mulch-maker", "yes"));
    assertEquals(Map.of(GuildFunction.DYNAMIC_ACCUMULATOR, Evidence.OBSERVED, GuildFunction.MULCH_MAKER, Evidence.OBSERVED),
        plant.services().functions());
    assertTrue(plant.assumptions().contains(Candidate.Assumption.EVIDENCE_NOT_STATED));
  }

  @Test
  void harvestWithoutMonthsMeetsAPartButNoMonth() {
    Candidate plant = read(Stated.species("Sambucus exemplum").with(Trait.HARVEST, "fruit", "8; 9").with(Trait.HARVEST, "flower", "yes"));
    assertTrue(plant.provides(Wish.harvest("flower", 1)));
    assertTrue(plant.provides(Wish.harvestIn(Month.SEPTEMBER, 1)));
    assertFalse(plant.provides(Wish.harvestIn(Month.JUNE, 1)));
  }

  @Test
  void needsTheOpenSkyWhereLightBelowFiveHoursIsNotBorne() {
    assertTrue(read(Stated.species("Sol unus").with(Trait.LIGHT, "shade-intolerant")).manners().needsSun());
    assertTrue(read(Stated.species("Sol duo").with(Trait.LIGHT, "3..16").with(Trait.LIGHT_PREFERRED, "full sun")).manners().needsSun());
    assertFalse(read(Stated.species("Umbra unus").with(Trait.LIGHT, "part shade; full sun")).manners().needsSun());
    assertFalse(read(Stated.species("Umbra duo")).manners().needsSun());
  }

  @Test
  void aCautionOfAPlaceHoldsThereAndInItsParts() {
    var plant = Stated.species("Rosa exemplum").with(Trait.CAUTION, "listed:US", "listed").with(Trait.CAUTION, "weedy:US-MI", "spreads")
        .with(Trait.CAUTION, "toxic:seeds", "do not eat").make();
    assertEquals(Set.of(CautionKind.TOXIC, CautionKind.LISTED), new Candidacy(Plants.BED, "US-WI").of(plant, Supply.UNKNOWN).cautions());
    assertEquals(Set.of(CautionKind.TOXIC), new Candidacy(Plants.BED, "DE").of(plant, Supply.UNKNOWN).cautions());
  }

  @Test
  void cultivarsOfOneSpeciesAreKin() {
    Kinship liberty = read(Stated.species("Malus domestica 'Liberty'")).kinship();
    assertEquals(new Kinship("Malus", "Malus domestica", true), liberty);
    assertEquals(new Kinship("Symphytum", "Symphytum × uplandicum", false), read(Stated.species("Symphytum × uplandicum")).kinship());
  }

  @Test
  void nothingKnownCountsAsHalfAtMost() {
    assertEquals(500, read(Stated.species("Aenigma exemplum").with(Trait.LAYER, "herb")).fitPermille());
    assertEquals(1000, read(Plants.plant("Nota exemplum", "herb", "1 m")).fitPermille());
  }
}
