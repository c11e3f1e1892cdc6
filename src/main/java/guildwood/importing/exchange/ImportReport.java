package guildwood.importing.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import guildwood.importing.ColumnMapping;
import guildwood.importing.ImportCounts;
import guildwood.web.Messages;

/** The same as {@link ImportSummary} for programs: a JSON object, keys always in the same order. */
public final class ImportReport {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final Messages messages;

  public ImportReport(Messages messages) {
    this.messages = messages;
  }

  public String write(ImportSummary summary) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("file", summary.file());
    json.put("sheet", summary.chosen().table().name());
    ArrayNode others = json.putArray("otherSheets");
    summary.chosen().otherSheets().forEach(others::add);
    json.put("dryRun", summary.run().isEmpty());
    summary.run().ifPresent(run -> json.put("import", run.id()));
    json.set("counts", counts(summary.counts()));
    json.set("columns", columns(summary));
    json.set("unread", unread(summary.unread()));
    json.set("near", near(summary.unread()));
    try {
      return JSON.writer(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"))).writeValueAsString(json) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a report that cannot be written", e);
    }
  }

  private static ObjectNode counts(ImportCounts counts) {
    return JsonNodeFactory.instance.objectNode()
        .put("rows", counts.rows()).put("newSpecies", counts.newSpecies()).put("knownRows", counts.knownRows())
        .put("nearRows", counts.nearRows()).put("refusedRows", counts.refusedRows()).put("leftOutRows", counts.leftOutRows())
        .put("namesChanged", counts.namesChanged()).put("valuesAdded", counts.valuesAdded()).put("valuesSame", counts.valuesSame())
        .put("conflicts", counts.conflicts()).put("notes", counts.notes()).put("cellsUnread", counts.cellsUnread());
  }

  private ArrayNode columns(ImportSummary summary) {
    ArrayNode columns = JsonNodeFactory.instance.arrayNode();
    ColumnWords words = new ColumnWords(messages);
    for (ColumnMapping column : summary.chosen().mapping().columns()) {
      columns.addObject().put("header", column.header()).put("meaning", column.meaning().key()).put("unit", column.unit().key())
          .put("inWords", words.meaning(column));
    }
    return columns;
  }

  private ArrayNode unread(UnreadTally tally) {
    ArrayNode unread = JsonNodeFactory.instance.arrayNode();
    for (UnreadTally.Group group : tally.groups()) {
      unread.addObject().put("header", group.header()).put("cells", group.cells()).put("firstRow", group.firstRow())
          .put("text", group.text()).put("reason", group.reason().code()).put("inWords", messages.say(group.reason()));
    }
    return unread;
  }

  private static ArrayNode near(UnreadTally tally) {
    ArrayNode near = JsonNodeFactory.instance.arrayNode();
    for (UnreadTally.NearName name : tally.near()) {
      ArrayNode ids = near.addObject().put("row", name.row()).put("name", name.written()).putArray("speciesIds");
      name.speciesIds().forEach(ids::add);
    }
    return near;
  }
}
