package guildwood.exporting;

import java.util.Arrays;
import java.util.Optional;

/** The forms in which species can be taken away. */
public enum ExportFormat {
  /** One row a species, the values that rule. */
  CSV("csv", "species.csv", "text/csv; charset=utf-8; header=present"),
  /** The same table, with every value, the sources and what the columns mean on sheets of their own. */
  XLSX("xlsx", "species.xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
  /** Everything, to be brought into another library without loss. */
  PACKAGE("package", "species-library.zip", "application/zip");

  private final String key;
  private final String fileName;
  private final String mediaType;

  ExportFormat(String key, String fileName, String mediaType) {
    this.key = key;
    this.fileName = fileName;
    this.mediaType = mediaType;
  }

  /** Stable name on the command line and in message keys. */
  public String key() {
    return key;
  }

  /** What a file of this form is called unless somebody calls it otherwise. */
  public String fileName() {
    return fileName;
  }

  public String mediaType() {
    return mediaType;
  }

  public static Optional<ExportFormat> ofKey(String key) {
    return Arrays.stream(values()).filter(format -> format.key.equals(key)).findFirst();
  }
}
