package guildwood.importing.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import guildwood.importing.ColumnMapping;
import guildwood.importing.ColumnUnit;
import guildwood.importing.Decisions;
import guildwood.importing.Decisions.Place;
import guildwood.importing.Heading;
import guildwood.importing.ImportDraft;
import guildwood.importing.ImportSource;
import guildwood.importing.Mapping;
import guildwood.importing.Meaning;
import guildwood.importing.Meaning.Kind;
import guildwood.importing.NameDecision;
import guildwood.kernel.Source;
import guildwood.species.Trait;
import guildwood.store.Database;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Imports in progress and saved mappings outlive a restart. */
class SqlImportDraftsStoreTest {
  private static final Mapping MAPPING = new Mapping(new Heading(2, 3, List.of("Name", "Höhe; \"m\""), List.of("", "")), List.of(
      ColumnMapping.of(0, "Name", Meaning.NAME, ColumnUnit.AS_WRITTEN),
      new ColumnMapping(1, "Höhe; \"m\"", Meaning.of(Kind.VALUE, Trait.HEIGHT, ""), ColumnUnit.METRES, "|")));

  @Test
  void aDraftComesBackAfterARestart(@TempDir Path directory) {
    ImportDraft draft = new ImportDraft(0, "plants & co.xlsx", "draft-1", "Sheet 1", Instant.parse("2026-11-25T12:00:00Z"),
        Optional.of(MAPPING), Optional.of(new ImportSource(Source.Kind.HEARSAY, "A list", "Ann", OptionalInt.empty())),
        Decisions.NONE.with("Malus 'Red \"One\"'", NameDecision.sameAs("malus-domestica")).with("Rosa", NameDecision.LEAVE_OUT)
            .with(new Place(7, 2), "4 to 8").withoutRow(12).withImportRules(true));
    long id;
    try (Database database = Database.open(directory)) {
      id = new SqlImportDrafts(database).add(draft);
      new SqlImportDrafts(database).keepMapping("mine", MAPPING);
    }
    try (Database database = Database.open(directory)) {
      SqlImportDrafts drafts = new SqlImportDrafts(database);
      ImportDraft found = drafts.find(id).orElseThrow();
      assertEquals(draft.decisions(), found.decisions());
      assertEquals(draft.source(), found.source());
      assertEquals(draft.mapping(), found.mapping());
      assertEquals(draft.startedAt(), found.startedAt());
      assertEquals(Optional.of(MAPPING), drafts.mapping("mine"));
      drafts.change(found.onSheet("Sheet 2"));
      assertEquals(Optional.empty(), drafts.find(id).orElseThrow().mapping());
      drafts.remove(id);
      assertEquals(List.of(), drafts.all());
      assertThrows(IllegalArgumentException.class, () -> drafts.change(found));
    }
  }

  @Test
  void savedMappingsGiveWayAndGo() {
    try (Database database = Database.inMemory()) {
      SqlImportDrafts drafts = new SqlImportDrafts(database);
      drafts.keepMapping("b", MAPPING);
      drafts.keepMapping("a", MAPPING);
      Mapping other = MAPPING.with(MAPPING.columns().get(1).with(ColumnUnit.FEET));
      drafts.keepMapping("b", other);
      assertEquals(List.of("a", "b"), drafts.mappingNames());
      assertEquals(Optional.of(other), drafts.mapping("b"));
      drafts.removeMapping("b");
      assertEquals(Optional.empty(), drafts.mapping("b"));
    }
  }
}
