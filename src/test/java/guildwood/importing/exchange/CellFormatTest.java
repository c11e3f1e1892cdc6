package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.importing.TableCell;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Number formats as spreadsheets write them. */
class CellFormatTest {
  @ParameterizedTest
  @CsvSource(quoteCharacter = '`', delimiter = '|', value = {
      "General|12.5|12.5|NUMBER",
      "0.00|3.2999999999999998|3.3|NUMBER",
      "#,##0|1500|1500|NUMBER",
      "0%|0.25|25%|TEXT",
      "0.0%|0.07|7%|TEXT",
      "0.0\" ft\"|12.5|12.5 ft|TEXT",
      "0\\ \"m\"|3|3 m|TEXT",
      "General\" in\"|18|18 in|TEXT",
      "\"zone \"0|5|zone 5|TEXT",
      "0\"°F\"|-20|-20°F|TEXT",
      "0\\\"|18|18\"|TEXT",
      "#,##0.00\\ [$€-407]|12.5|12.5|NUMBER",
      "\"$\"#,##0.00|12.5|12.5|NUMBER",
      "[Red]-0.0;0.0|2.5|2.5|NUMBER",
      "0.00E+00|1500|1500|NUMBER",
      "# ?/?|1.5|1.5|NUMBER",
      "0,\"k\"|12000|12000|NUMBER",
      "[<1]0.0\" cm\";0.0\" m\"|2.5|2.5|NUMBER",
      "0\"'\"00|506|506|NUMBER",
      "yyyy\\-mm\\-dd|46120|2026-04-08|DATE",
      "[$-409]d\\-mmm;@|46120|2026-04-08|DATE",
      "mmm|46120|2026-04-08|DATE",
      "m/d/yy h:mm|46120.5625|2026-04-08 13:30|DATE",
      "h:mm AM/PM|0.5625|13:30|DATE",
      "[h]:mm:ss|1.5|36:00|DATE",
      "mm:ss.0|0.001|00:01:26|DATE",
      "yyyy-mm-dd|-3|-3|NUMBER",
      "yyyy-mm-dd|1|1900-01-01|DATE",
      "yyyy-mm-dd|61|1900-03-01|DATE",
      "@|12|12|NUMBER"
  })
  void aFormatMakesOfANumber(String code, String written, String text, TableCell.Kind kind) {
    assertEquals(new TableCell(text, kind), CellFormat.ofCode(code).cell(written, false));
  }

  /** ECMA-376 part 1, 18.17.4.1: day 0 of the 1904 system is 1 January 1904. */
  @ParameterizedTest
  @CsvSource({"0, 1904-01-01", "44658, 2026-04-08"})
  void daysMayCountFrom1904(String written, String date) {
    assertEquals(new TableCell(date, TableCell.Kind.DATE), CellFormat.builtIn(14).cell(written, true));
  }
}
