package guildwood.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import guildwood.kernel.Range;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TextureSetTest {
  @Test
  void countsTheShareOfTheBedsClassesThatAreBorne() {
    TextureSet coarseAndFine = new TextureSet(Set.of(1, 3));
    assertEquals(1, coarseAndFine.mean(Range.of(3)));
    assertEquals(0, coarseAndFine.mean(Range.of(2)));
    assertEquals(0.5, coarseAndFine.mean(new Range(1, 2)));
    assertEquals(2.0 / 3, coarseAndFine.mean(new Range(1, 3)), 1e-12);
  }

  @Test
  void namesTheWayToTheNearestClass() {
    assertEquals(-1, new TextureSet(Set.of(1)).shortfall(Range.of(2)));
    assertEquals(2, new TextureSet(Set.of(3)).shortfall(Range.of(1)));
    assertEquals(0, new TextureSet(Set.of(2, 3)).shortfall(new Range(2, 3)));
  }

  @Test
  void refusesWhatIsNoTextureClass() {
    assertThrows(IllegalArgumentException.class, () -> new TextureSet(Set.of()));
    assertThrows(IllegalArgumentException.class, () -> new TextureSet(Set.of(4)));
  }
}
