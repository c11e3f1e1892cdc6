package guildwood.choosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.species.Axis;
import guildwood.species.SpeciesLibrary;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class CurrentIndexTest {
  private final AtomicReference<SpeciesLibrary> library = new AtomicReference<>(RandomLibrary.of(1, 20));
  private final CurrentIndex current = new CurrentIndex(library::get);

  private static BedChoice bed(long id, double hours) {
    return new BedChoice(id, "bed " + id, "site",
        Map.of(Axis.LIGHT, new Condition(Axis.LIGHT, Range.of(hours), Basis.OBSERVED, "typed")));
  }

  @Test
  void anIndexStaysUntilTheLibraryChanges() {
    CurrentIndex.State before = current.get();
    assertSame(before, current.get());
    library.set(RandomLibrary.of(2, 30));
    assertNotSame(before.index(), current.get().index());
    assertEquals(30, current.get().index().choose(Query.NOTHING, Optional.empty()).total());
    assertEquals(20, before.index().choose(Query.NOTHING, Optional.empty()).total());
  }

  @Test
  void judgementsGoByWhatABedOffersNotByItsName() {
    CurrentIndex.State state = current.get();
    BedFits first = state.fits(bed(1, 5));
    assertSame(first, state.fits(bed(2, 5)));
    assertNotSame(first, state.fits(bed(1, 6)));
  }

  @Test
  void onlyTheBedsLastAskedForAreKept() {
    CurrentIndex.State state = current.get();
    for (int hours = 0; hours < 24; hours++) {
      state.fits(bed(1, hours));
    }
    assertEquals(8, state.beds().size());
  }
}
