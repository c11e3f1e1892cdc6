package guildwood.guild.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A selection without the items that the bound shows to be no part of anything better than the best known. */
record Reduced(Selection selection, int[] kept, int items) {

  /** Drops what the bound at its best prices rules out; items of the best choice and partners of kept ones stay. */
  static Reduced of(Selection s, Bound bound, Descent descent, Choice best) {
    bound.at(descent.best);
    double spare = bound.value - best.value() - 1 + 2 * Bound.SLACK;
    boolean[] keep = new boolean[s.items];
    for (int p = 0; p < bound.picking.picks; p++) {
      keep[bound.picking.picked[p]] = true;
    }
    for (int o = 0; o < bound.left.opens; o++) {
      keep[bound.left.open[o]] |= bound.picking.lossIn(bound.left.open[o]) <= spare;
    }
    for (int i : best.set()) {
      keep[i] = true;
    }
    return keeping(s, keep);
  }

  private static Reduced keeping(Selection s, boolean[] keep) {
    int[] index = new int[s.items];
    Arrays.fill(index, -1);
    int count = 0;
    int[] kept = new int[s.items];
    for (int i = 0; i < s.items; i++) {
      if (keep[i]) {
        index[i] = count;
        kept[count++] = i;
      }
    }
    List<Item> items = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      Item item = s.source.get(kept[k]);
      int[] partners = Arrays.stream(item.partners()).filter(p -> index[p] >= 0).map(p -> index[p]).toArray();
      items.add(item.withPartners(partners));
    }
    return new Reduced(s.with(items, s.caps), Arrays.copyOf(kept, count), s.items);
  }

  /** The same after another reduction of what this one kept. */
  Reduced then(Reduced further) {
    return new Reduced(further.selection, Arrays.stream(further.kept).map(k -> kept[k]).toArray(), items);
  }

  Choice into(Choice whole) {
    int[] counts = whole.counts();
    return new Choice(Arrays.stream(kept).map(i -> counts[i]).toArray(), whole.value());
  }

  Choice outOf(Choice core) {
    int[] counts = new int[items];
    int[] inner = core.counts();
    for (int k = 0; k < kept.length; k++) {
      counts[kept[k]] = inner[k];
    }
    return new Choice(counts, core.value());
  }
}
