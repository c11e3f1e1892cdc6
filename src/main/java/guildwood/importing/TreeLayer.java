package guildwood.importing;

import guildwood.importing.CellReading.Value;
import guildwood.importing.CellReading.Values;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import guildwood.species.TraitValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The layer of what a table calls just a tree: a tall tree from 9 m on, otherwise a small one. The height that parts
 * them is common practice, no source; without a height in the row the cell stays unread.
 */
final class TreeLayer {
  private static final double TALL_FROM_M = 9;

  private TreeLayer() {}

  static CellReading of(ColumnMapping column, TableCell cell, CellReading read, List<ReadValue> values) {
    List<String> tokens = Tokens.of(cell.text(), column.separator(), t -> isTree(t) || ClassTable.value(Trait.LAYER, t).isPresent());
    Optional<Double> heightM = values.stream().filter(v -> v.trait() == Trait.HEIGHT)
        .map(v -> ((TraitValue.Span) v.value()).range().middle()).findFirst();
    if (heightM.isEmpty() || tokens.stream().noneMatch(TreeLayer::isTree)) {
      return read;
    }
    List<String> words = new ArrayList<>(List.of(heightM.get() >= TALL_FROM_M ? "tall-tree" : "small-tree"));
    tokens.forEach(t -> ClassTable.value(Trait.LAYER, t).ifPresent(words::add));
    String entered = String.join("; ", words.stream().distinct().toList());
    Value value = new Value(Trait.LAYER, "", entered, TraitReader.read(Trait.LAYER, entered, "").orThrow());
    boolean all = tokens.stream().allMatch(t -> isTree(t) || ClassTable.value(Trait.LAYER, t).isPresent());
    return all || !(read instanceof Values part) ? all ? new Values(List.of(value), Optional.empty()) : read
        : new Values(List.of(value), part.unread());
  }

  private static boolean isTree(String token) {
    return token.equals("tree") || token.equals("trees") || token.equals("deciduous tree") || token.equals("evergreen tree");
  }
}
