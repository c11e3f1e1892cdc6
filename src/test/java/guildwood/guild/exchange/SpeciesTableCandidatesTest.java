package guildwood.guild.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.guild.Candidacy;
import guildwood.guild.Supply;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.exchange.SpeciesTableReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A species read from its row is the same candidate, to the last bit, as the species of the library itself. */
class SpeciesTableCandidatesTest {
  @TempDir
  private static Path folder;

  static Stream<Arguments> beds() {
    return Stream.of(
        Arguments.of("US-WI", Map.of(Axis.LIGHT, new Range(6, 8), Axis.MOISTURE, Range.of(3), Axis.REACTION, new Range(6, 6.8),
            Axis.FERTILITY, new Range(2, 3), Axis.TEXTURE, Range.of(2), Axis.WINTER_COLD, new Range(-28.9, -26.1), Axis.SEASON, Range.of(144))),
        Arguments.of("", Map.of(Axis.LIGHT, new Range(0.37, 2.9), Axis.MOISTURE, new Range(3.5, 5), Axis.REACTION, new Range(4.1, 5.3))),
        Arguments.of("DE", Map.of()));
  }

  @ParameterizedTest
  @MethodSource("beds")
  void isTheSameCandidate(String place, Map<Axis, Range> conditions) throws IOException {
    SpeciesLibrary read;
    try (var in = Files.newInputStream(ComposeRun.exported(folder))) {
      read = SpeciesTableReader.read(in).orThrow().library();
    }
    SpeciesLibrary shipped = ComposeRun.shipped();
    Candidacy candidacy = new Candidacy(conditions, place);
    assertEquals(shipped.species().size(), read.species().size());
    for (Species species : shipped.species()) {
      assertEquals(candidacy.of(species, Supply.UNKNOWN), candidacy.of(read.find(species.id()).orElseThrow(), Supply.UNKNOWN));
    }
  }
}
