package guildwood.importing.web;

import guildwood.importing.ImportCounts;
import guildwood.importing.UndoReport;
import java.text.NumberFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * One thing that is counted.
 *
 * @param key of its name
 */
record CountLine(String key, String number) {

  static List<CountLine> of(ImportCounts counts) {
    Map<String, Long> all = new LinkedHashMap<>();
    all.put("rows", counts.rows());
    all.put("new", counts.newSpecies());
    all.put("near", counts.nearRows());
    all.put("known", counts.knownRows());
    all.put("names", counts.namesChanged());
    all.put("values", counts.valuesAdded());
    all.put("same", counts.valuesSame());
    all.put("conflicts", counts.conflicts());
    all.put("notes", counts.notes());
    all.put("unread", counts.cellsUnread());
    all.put("refused", counts.refusedRows());
    all.put("left-out", counts.leftOutRows());
    return lines(all);
  }

  static List<CountLine> of(UndoReport report) {
    Map<String, Long> all = new LinkedHashMap<>();
    all.put("species", report.species());
    all.put("statements", report.values());
    all.put("notes", report.notes());
    all.put("names", report.names());
    all.put("holdings", report.holdings());
    all.put("sources", report.sources());
    return lines(all);
  }

  /** Nothing is said of what there is none of, but for the first. */
  private static List<CountLine> lines(Map<String, Long> counts) {
    String first = counts.keySet().iterator().next();
    return counts.entrySet().stream().filter(e -> e.getValue() > 0 || e.getKey().equals(first))
        .map(e -> new CountLine(e.getKey(), number(e.getValue()))).toList();
  }

  /** A whole number with its thousands apart. */
  static String number(long number) {
    return NumberFormat.getIntegerInstance(Locale.ENGLISH).format(number);
  }
}
