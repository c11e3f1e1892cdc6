package guildwood.species.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Source;
import guildwood.species.LibraryContents;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The seed files: a small good set, a set in which everything is wrong, and the real one. */
class SeedFilesTest {
  @Test
  void readsNamesValuesAndSourcesOfEveryGroup() {
    LibraryContents seed = SeedFiles.read("/seed-good").orThrow();
    assertEquals(6, seed.species().size());
    assertEquals("Symphytum × uplandicum", seed.species().get("symphytum-x-uplandicum").scientificName());
    assertEquals(List.of("Saskatoon serviceberry", "saskatoon", "juneberry"), seed.species().get("amelanchier-alnifolia").commonNames());
    assertEquals(Source.Kind.AGENCY_TABLE, seed.sources().stream().filter(s -> s.id().equals("usda-plants")).findFirst().orElseThrow().kind());
    assertTrue(seed.statements().stream().filter(s -> s.speciesId().equals("amelanchier-alnifolia") && s.trait().equals("height"))
        .anyMatch(s -> s.chosen() && s.entered().equals("10..20 ft")));
  }

  @Test
  void namesFileRowAndColumnOfEverythingThatIsWrong() {
    Checked<LibraryContents> seed = SeedFiles.read("/seed-bad");
    List<String> found = seed.findings().stream().map(f -> f.field() + ": " + f.code()).toList();
    assertEquals(List.of(
        "sources.csv, row 3, column id: seed.twice",
        "sources.csv, row 4, column id: seed.id",
        "sources.csv, row 4, column kind: seed.kind",
        "sources.csv, row 4, column title: value.missing",
        "sources.csv, row 4, column year: number.unreadable",
        "species/trees.csv, row 3: seed.cells",
        "species/trees.csv, row 4, column id: seed.species-id",
        "species/trees.csv, row 5, column scientific_name: species.not-a-name",
        "species/shrubs.csv, row 1: seed.header",
        "species/climbers.csv: seed.not-utf-8",
        "species/herbs.csv, row 2, column id: seed.twice",
        "species/roots.csv: seed.no-file",
        "values/trees.csv, row 2, column species: seed.no-species",
        "values/trees.csv, row 2, column source: seed.no-source",
        "values/trees.csv, row 3, column trait: trait.unknown",
        "values/trees.csv, row 4, column item: item.unknown",
        "values/trees.csv, row 5, column value: range.backwards",
        "values/trees.csv, row 6, column value: number.unit-missing",
        "values/trees.csv, row 7, column evidence: evidence.not-here",
        "values/trees.csv, row 8, column rules: seed.rules",
        "values/trees.csv, row 10, column value: statement.twice",
        "values/shrubs.csv, row 2: seed.unreadable",
        "values/trees.csv, row 12, column rules: seed.rulers"), found);
  }

  @Test
  void saysWhichFilesAreMissing() {
    List<Finding> findings = SeedFiles.read("/seed-nowhere").findings();
    assertEquals(13, findings.size());
    assertTrue(findings.stream().allMatch(f -> f.code().equals("seed.no-file")));
  }

  @Test
  void theSeedThatComesWithTheProgramIsSound() {
    Checked<LibraryContents> seed = SeedFiles.read("/seed-data");
    assertEquals(List.of(), seed.findings());
    assertTrue(seed.orThrow().species().size() >= 300, "only " + seed.orThrow().species().size() + " species");
  }
}
