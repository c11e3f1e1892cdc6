package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.importing.ColumnMapping;
import guildwood.importing.ColumnUnit;
import guildwood.importing.Heading;
import guildwood.importing.Mapping;
import guildwood.importing.Meaning;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mappings as files, good and bad. */
class MappingFileTest {
  @Test
  void everyMeaningAndUnitComesBack() {
    List<ColumnMapping> columns = new ArrayList<>();
    for (Meaning meaning : Meaning.choices()) {
      for (ColumnUnit unit : ColumnUnit.choices(meaning)) {
        if (columns.size() < 1000) {
          columns.add(new ColumnMapping(columns.size(), "Spälte \"" + columns.size() + "\"", meaning, unit, columns.size() % 3 == 0 ? ";" : ""));
        }
      }
    }
    List<String> headers = columns.stream().map(ColumnMapping::header).toList();
    Mapping mapping = new Mapping(new Heading(3, 4, headers, Collections.nCopies(headers.size(), "")), columns);
    String written = MappingFile.write(mapping);
    Mapping read = MappingFile.read(written.getBytes(StandardCharsets.UTF_8)).orThrow();
    assertEquals(mapping, read);
    assertEquals(written, MappingFile.write(read));
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', quoteCharacter = '~', value = {
      "not json;json.unreadable", "[];import.mapping-format", "{};import.mapping-format", "{'format':'x'};import.mapping-format", "null;import.mapping-format",
      "{'format':'guildwood-mapping-1'};json.missing", "{'format':'guildwood-mapping-1','columns':[]};import.mapping-columns",
      "{'format':'guildwood-mapping-1','columns':7};json.not-list", "{'format':'guildwood-mapping-1','columns':[7]};json.not-object",
      "{'format':'guildwood-mapping-1','columns':[{'header':'a'}]};json.missing",
      "{'format':'guildwood-mapping-1','columns':[{'header':'a','meaning':'dance'}]};import.mapping-meaning",
      "{'format':'guildwood-mapping-1','columns':[{'header':'a','meaning':'value:height','unit':'fahrenheit'}]};import.mapping-unit",
      "{'format':'guildwood-mapping-1','columns':[{'header':'a','meaning':'note','separator':'123456'}]};import.mapping-separator",
      "{'format':'guildwood-mapping-1','columns':[{'header':'a','meaning':'note','column':-1}]};json.out-of-scale",
      "{'format':'guildwood-mapping-1','heading':{'firstRow':5,'lastRow':2},'columns':[{'header':'a','meaning':'note'}]};range.backwards",
      "{'format':'guildwood-mapping-1','heading':{'firstRow':'x','lastRow':2},'columns':[{'header':'a','meaning':'note'}]};json.not-number"})
  void badFilesAreRefusedWithAReason(String json, String code) {
    assertEquals(code, MappingFile.read(json.replace('\'', '"').getBytes(StandardCharsets.UTF_8)).findings().get(0).code());
  }
}
