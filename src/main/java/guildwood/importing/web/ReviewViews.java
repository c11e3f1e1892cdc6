package guildwood.importing.web;

import guildwood.importing.ColumnMapping;
import guildwood.importing.Decisions;
import guildwood.importing.ImportDraft;
import guildwood.importing.Meaning.Kind;
import guildwood.importing.NameDecision;
import guildwood.importing.exchange.KeptReview;
import guildwood.importing.exchange.ReviewSection;
import guildwood.importing.exchange.ReviewedCell;
import guildwood.importing.exchange.ReviewedConflict;
import guildwood.importing.exchange.ReviewedName;
import guildwood.importing.exchange.ReviewedRow;
import guildwood.importing.exchange.ReviewedValue;
import guildwood.kernel.Source;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Statement;
import guildwood.species.web.ValueWords;
import guildwood.web.Messages;
import guildwood.web.Paging;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The entries of a review in words, for one visitor. */
final class ReviewViews {
  private final Messages messages;
  private final ValueWords words;
  private final SpeciesLibrary library;
  private final ImportDraft draft;

  ReviewViews(Messages messages, ValueWords words, SpeciesLibrary library, ImportDraft draft) {
    this.messages = messages;
    this.words = words;
    this.library = library;
    this.draft = draft;
  }

  /** A row that is brought in. */
  record RowLine(long row, String name, String written, String speciesId, String fate, boolean namesChange, List<ValueLine> added, int same) {}

  /**
   * A value.
   *
   * @param written what stood in the cell, where the value says it otherwise; otherwise empty
   * @param source where the library has it from; empty for one of the table
   */
  record ValueLine(String topic, String value, String written, String source) {}

  /** A name to decide about. */
  record NameLine(long row, String written, String choice, List<NearSpecies> near) {}

  /** A species it may be. */
  record NearSpecies(String id, String name, String scientificName, boolean chosen) {}

  /** A value against what the library says. */
  record ConflictLine(long row, String name, String speciesId, ValueLine value, List<ValueLine> existing) {}

  /**
   * A cell that is kept as it is.
   *
   * @param column in which it can be mended: for a whole row the one of its name; -1 where there is none
   * @param typed what is read instead, as a person typed; empty where nothing was
   */
  record CellLine(long row, String name, int column, String letter, String header, String text, String reason, boolean wholeRow,
      boolean fixed, String typed, boolean leftOut) {}

  /** What the template of a section needs. */
  Map<String, Object> entries(KeptReview review, ReviewSection section, Paging paging) {
    Map<String, Object> model = new HashMap<>();
    for (String list : List.of("rows", "names", "conflicts", "cells")) {
      model.put(list, List.of());
    }
    long from = paging.before();
    switch (section) {
      case NEW, KNOWN -> model.put("rows", review.rows(section, from, paging.rows()).stream().map(this::row).toList());
      case NEAR -> model.put("names", review.names(from, paging.rows()).stream().map(this::name).toList());
      case CONFLICTS -> model.put("conflicts", review.conflicts(from, paging.rows()).stream().map(this::conflict).toList());
      case UNREAD, NOTES -> model.put("cells", review.cells(section, from, paging.rows()).stream().map(this::cell).toList());
    }
    return model;
  }

  private RowLine row(ReviewedRow row) {
    return new RowLine(row.row(), row.name(), row.written().equals(row.name()) ? "" : row.written(), row.speciesId(), row.fate(),
        row.namesChange(), row.added().stream().map(this::value).toList(), row.same());
  }

  private ValueLine value(ReviewedValue value) {
    Statement statement = value.statement();
    String said = words.value(statement);
    // The note of a value of the table is what stood in the cell; that of a value of the library can be anything.
    boolean ofTable = value.sourceId().isEmpty();
    String written = ofTable && !value.note().isEmpty() ? value.note() : value.entered().equalsIgnoreCase(said) ? "" : value.entered();
    return new ValueLine(words.topic(statement.trait(), statement.item()), said, written, source(value.sourceId()));
  }

  private String source(String id) {
    return Optional.ofNullable(library.sources().get(id)).map(this::citation).orElse("");
  }

  private String citation(Source source) {
    return source.author().isEmpty() ? source.title() : messages.say("topic", source.author(), source.title());
  }

  private NameLine name(ReviewedName name) {
    Optional<NameDecision> decision = Optional.ofNullable(draft.decisions().names().get(name.written()));
    List<NearSpecies> near = name.near().stream().flatMap(id -> library.find(id).stream())
        .map(species -> near(species, decision)).toList();
    return new NameLine(name.row(), name.written(), decision.map(d -> choice(d)).orElse(""), near);
  }

  private static NearSpecies near(Species species, Optional<NameDecision> decision) {
    return new NearSpecies(species.id(), species.name(), species.scientificName(),
        decision.filter(d -> d.speciesId().equals(species.id())).isPresent());
  }

  private static String choice(NameDecision decision) {
    return switch (decision.choice()) {
      case NEW -> "new";
      case LEAVE_OUT -> "leave-out";
      case SAME_AS -> decision.speciesId();
    };
  }

  private ConflictLine conflict(ReviewedConflict conflict) {
    return new ConflictLine(conflict.row(), conflict.name(), conflict.speciesId(), value(conflict.value()),
        conflict.existing().stream().map(this::value).toList());
  }

  private CellLine cell(ReviewedCell cell) {
    int column = cell.isWholeRow() ? nameColumn() : cell.column();
    Optional<String> typed = Optional.ofNullable(draft.decisions().cells().get(new Decisions.Place(cell.row(), column)));
    return new CellLine(cell.row(), cell.name(), column, cell.isWholeRow() ? "" : ColumnView.letter(cell.column()), cell.header(),
        cell.text(), cell.code().isEmpty() ? "" : messages.say(cell.reason()), cell.isWholeRow(), typed.isPresent(), typed.orElse(""),
        draft.decisions().leftOut().contains(cell.row()));
  }

  private int nameColumn() {
    return draft.mapping().flatMap(m -> m.first(Kind.SCIENTIFIC_NAME)).map(ColumnMapping::column).orElse(-1);
  }
}
