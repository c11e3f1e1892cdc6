package guildwood.importing;

import guildwood.importing.CellReading.Value;
import guildwood.importing.CellReading.Values;
import guildwood.species.CautionCell;
import guildwood.species.CautionKind;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads cautions: no danger that a table names may be lost, so what has no place or part is kept as a caution all the same. */
final class CautionReader {
  /** 'No, the berries are eaten', 'not known to be': neither a danger nor a plain no. */
  private static final Pattern DENIAL = Pattern.compile("(?i)(no|none|not|non|nontoxic|safe|harmless)\\b.*");

  /** 'Yes: bark, seeds': the word before the colon is no part of the plant. */
  private static final Pattern AGREED = Pattern.compile("(?i)(?:yes|y|x|true)\\s*[:;]\\s*(.+)");

  private CautionReader() {}

  static CellReading read(String kind, ColumnMapping column, TableCell cell) {
    String text = cell.text().strip().replaceAll("\\p{Cntrl}+", " ");
    boolean no = YesNo.read(text).filter(yes -> !yes).isPresent();
    if (cell.kind() == TableCell.Kind.ERROR) {
      return CellReading.refused("import.error-cell");
    }
    if (no || YesNo.saysNothing(text)) {
      return CellReading.SILENT;
    }
    if (DENIAL.matcher(text).matches()) {
      return CellReading.refused("import.says-no", text);
    }
    Matcher agreed = AGREED.matcher(text);
    if (agreed.matches()) {
      return plain(kind, column, agreed.group(1));
    }
    Optional<CellReading> own = asWritten(kind, text);
    return own.orElseGet(() -> plain(kind, column, text));
  }

  /** As the species table writes cautions, with the part or place before a colon. */
  private static Optional<CellReading> asWritten(String kind, String text) {
    List<Value> values = new ArrayList<>();
    CautionKind known = CautionKind.of(kind).orElseThrow();
    if (known.detail() == CautionKind.Detail.NONE && isShort(text)) {
      return Optional.empty();
    }
    for (CautionCell.Entry entry : CautionCell.read(kind, text)) {
      boolean reads = !TraitReader.readItem(Trait.CAUTION, entry.item(), "").isRefused() && !TraitReader.read(Trait.CAUTION, entry.text(), "").isRefused();
      if (!reads) {
        return Optional.empty();
      }
      values.add(new Value(Trait.CAUTION, entry.item(), entry.text(), TraitReader.read(Trait.CAUTION, entry.text(), "").orThrow()));
    }
    return values.isEmpty() ? Optional.empty() : Optional.of(new Values(values, Optional.empty()));
  }

  private static CellReading plain(String kind, ColumnMapping column, String text) {
    CautionKind known = CautionKind.of(kind).orElseThrow();
    if (known.isLegal()) {
      return CellReading.refused("caution.place-missing");
    }
    String item = switch (known.detail()) {
      case NONE -> kind;
      case PART -> kind + ":plant";
      default -> CautionKind.OTHER.key();
    };
    return CellReader.kept(Trait.CAUTION, item, isShort(text) || item.equals(CautionKind.OTHER.key()) ? column.header() + ": " + text : text);
  }

  /** A word or two mean nothing without their header. */
  private static boolean isShort(String text) {
    return text.split("\\s+").length < 3;
  }
}
