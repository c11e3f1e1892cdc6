package guildwood.importing.exchange;

import com.github.miachm.sods.Sheet;
import com.github.miachm.sods.SpreadSheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Whole files of every kind, to be damaged. */
public final class DamagedFiles {
  private static final String[][] PLANTS = {
      {"Scientific name", "Height (ft)", "Zone", "Bloom", "Notes"},
      {"Corylus avellana L.", "15", "4-8", "Feb–Mar", "nuts, \"sweet\"; poles"},
      {"Mentha × piperita", "2.5", "zone 5b", "July", "tea\nbees"},
      {"Malus domestica 'Ashmead'", "18", "4", "2026-05-08", "=1+2"},
      {"Trifolium repens", "0.5", "3", "May to Sept", "groundcover é"}};

  private DamagedFiles() {}

  /** The same table with several separators and encodings. */
  public static List<byte[]> texts() {
    StringBuilder text = new StringBuilder();
    for (String[] row : PLANTS) {
      for (String cell : row) {
        text.append('"').append(cell.replace("\"", "\"\"")).append("\",");
      }
      text.append("\r\n");
    }
    String semicolons = text.toString().replace("\",\"", "\";\"").replace("×", "x").replace("–", "-");
    return List.of(text.toString().getBytes(StandardCharsets.UTF_8), ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE),
        semicolons.getBytes(Charset.forName("windows-1252")), text.toString().replace("\",\"", "\t").replace("\"", "").getBytes(StandardCharsets.UTF_8),
        ("sep=|\n" + text.toString().replace("\",\"", "|").replace("\"", "")).getBytes(StandardCharsets.UTF_8));
  }

  public static byte[] workbook() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("Plants");
      for (int row = 0; row < PLANTS.length; row++) {
        for (int column = 0; column < PLANTS[row].length; column++) {
          sheet.value(row, column, PLANTS[row][column]);
        }
        sheet.value(row, 5, row * 1.25);
        sheet.value(row, 6, LocalDate.of(2026, 4, 8));
        sheet.style(row, 6).format("yyyy-mm-dd").set();
        sheet.formula(row, 7, "F1*2");
        sheet.inlineString(row, 8, "in place");
        sheet.value(row, 9, row % 2 == 0);
      }
      book.newWorksheet("Empty");
    }
    return bytes.toByteArray();
  }

  public static byte[] openDocument() throws IOException {
    Sheet sheet = new Sheet("Plants", PLANTS.length, 7);
    for (int row = 0; row < PLANTS.length; row++) {
      for (int column = 0; column < PLANTS[row].length; column++) {
        sheet.getRange(row, column).setValue(PLANTS[row][column]);
      }
      sheet.getRange(row, 5).setValue(row * 1.25);
      sheet.getRange(row, 6).setValue(LocalDate.of(2026, 4, 8));
    }
    SpreadSheet book = new SpreadSheet();
    book.appendSheet(sheet);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    book.save(bytes);
    return bytes.toByteArray();
  }

  /** A table of so many invented plants, up to 17,576. */
  public static String manyPlants(int rows) {
    StringBuilder text = new StringBuilder("Scientific name,Height (ft),pH,Zone,Remarks\n");
    for (int i = 0; i < rows; i++) {
      text.append("Fictoria planta").append((char) ('a' + i / 676 % 26)).append((char) ('a' + i / 26 % 26)).append((char) ('a' + i % 26))
          .append(',').append(1 + i % 90).append(",5-7,4-8,remark ").append(i).append('\n');
    }
    return text.toString();
  }
}
