package guildwood.importing.store;

import guildwood.importing.BroughtLibrary;
import guildwood.importing.ImportCounts;
import guildwood.importing.ImportPlan;
import guildwood.importing.ImportProgress;
import guildwood.importing.ImportRun;
import guildwood.importing.Imports;
import guildwood.importing.Review;
import guildwood.importing.RowOutcome;
import guildwood.importing.Table;
import guildwood.importing.UndoReport;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.LibraryContents;
import guildwood.species.LibraryMerge;
import guildwood.species.SpeciesLibrary;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** Imports in the database: each is one transaction, from its first row to its last. */
public final class SqlImports implements Imports {
  private static final RowMapper<ImportRun> RUN = (row, ctx) -> new ImportRun(row.getLong("id"), row.getString("title"),
      row.getObject("brought_at", OffsetDateTime.class).toInstant(),
      new ImportCounts(row.getLong("total_rows"), row.getLong("new_species"), row.getLong("known_rows"), row.getLong("near_rows"),
          row.getLong("refused_rows"), row.getLong("left_out_rows"), row.getLong("names_changed"), row.getLong("values_added"),
          row.getLong("values_same"), row.getLong("conflicts"), row.getLong("notes"), row.getLong("cells_unread")),
      Optional.ofNullable(row.getObject("undone_at", OffsetDateTime.class)).map(OffsetDateTime::toInstant));

  private final Database database;
  private final SqlSpeciesRecords records;

  public SqlImports(Database database, SqlSpeciesRecords records) {
    this.database = database;
    this.records = records;
  }

  @Override
  public Checked<ImportRun> bring(Table table, ImportPlan plan, String title, Instant now, ImportProgress progress) {
    try {
      long id = records.changeLibraryAtLarge((library, handle) -> written(table, plan, title, now, progress, library, handle));
      return Checked.of(find(id).orElseThrow());
    } catch (NotBrought e) {
      return Checked.refused(e.findings);
    }
  }

  @Override
  public BroughtLibrary bring(LibraryContents contents, String title, Instant now) {
    record Written(long id, LibraryMerge merge) {}
    Written written = records.changeLibraryAtLarge((library, handle) -> {
      long id = begin(handle, title, now);
      LibraryMarks marks = LibraryMarks.before(handle, id);
      LibraryMerge merge = records.addAll(library, handle, contents);
      marks.mark(merge.additions());
      count(handle, id, BroughtLibrary.counts(merge));
      return new Written(id, merge);
    });
    return new BroughtLibrary(find(written.id()).orElseThrow(), written.merge());
  }

  private static long begin(Handle handle, String title, Instant now) {
    return handle.createUpdate("insert into import_run (title, brought_at) values (:title, :now)")
        .bind("title", title.length() <= ImportRun.LONGEST_TITLE ? title : title.substring(0, ImportRun.LONGEST_TITLE))
        .bind("now", now.atOffset(ZoneOffset.UTC)).executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
  }

  private long written(Table table, ImportPlan plan, String title, Instant now, ImportProgress progress, SpeciesLibrary library, Handle handle) {
    long id = begin(handle, title, now);
    try (ImportWriter writer = new ImportWriter(handle.getConnection(), id, plan, library)) {
      Checked<ImportCounts> counts = new Review(plan, library, records.holdings()).run(table, row -> write(writer, row), progress);
      if (counts.isRefused()) {
        throw new NotBrought(counts.findings());
      }
      writer.flush();
      count(handle, id, counts.orThrow());
      return id;
    } catch (SQLException e) {
      throw new NotWritten(e);
    }
  }

  private static boolean write(ImportWriter writer, RowOutcome row) {
    try {
      writer.write(row);
      return true;
    } catch (SQLException e) {
      throw new NotWritten(e);
    }
  }

  private static void count(Handle handle, long id, ImportCounts c) {
    handle.createUpdate("update import_run set total_rows = :rows, new_species = :newSpecies, known_rows = :knownRows, "
            + "near_rows = :nearRows, refused_rows = :refusedRows, left_out_rows = :leftOutRows, names_changed = :namesChanged, "
            + "values_added = :valuesAdded, values_same = :valuesSame, conflicts = :conflicts, notes = :notes, "
            + "cells_unread = :cellsUnread where id = :id")
        .bindMethods(c).bind("id", id).execute();
  }

  @Override
  public List<ImportRun> runs() {
    return database.read(handle -> handle.createQuery("select * from import_run order by id desc").map(RUN).list());
  }

  @Override
  public Optional<ImportRun> find(long id) {
    return database.read(handle -> handle.createQuery("select * from import_run where id = :id").bind("id", id).map(RUN).findOne());
  }

  @Override
  public UndoReport wouldUndo(long id) {
    return database.read(handle -> {
      handle.begin();
      try {
        return new ImportUndo(handle, id).undo();
      } finally {
        handle.rollback();
      }
    });
  }

  @Override
  public Checked<UndoReport> undo(long id, Instant now) {
    ImportRun run = find(id).orElseThrow(() -> new IllegalArgumentException("no import " + id));
    if (run.undoneAt().isPresent()) {
      return Checked.refused(Finding.of("import.undone-already", ""));
    }
    return Checked.of(records.changeLibraryAtLarge((library, handle) -> {
      UndoReport report = new ImportUndo(handle, id).undo();
      handle.createUpdate("update import_run set undone_at = :now where id = :id")
          .bind("now", now.atOffset(ZoneOffset.UTC)).bind("id", id).execute();
      return report;
    }));
  }

  /** Takes the transaction back; what was found goes on to the caller. */
  private static final class NotBrought extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<Finding> findings;

    NotBrought(List<Finding> findings) {
      super(findings.toString());
      this.findings = findings;
    }
  }

  private static final class NotWritten extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotWritten(SQLException cause) {
      super(cause);
    }
  }
}
