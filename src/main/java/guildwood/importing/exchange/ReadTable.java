package guildwood.importing.exchange;

import guildwood.importing.Table;
import guildwood.kernel.Checked;
import java.io.IOException;

/** What the tables of all kinds of files have in common: a name, and refusals as values. */
final class ReadTable implements Table {
  private final String name;
  private final Rows rows;

  ReadTable(String name, Rows rows) {
    this.name = name;
    this.rows = rows;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Checked<Long> rows(RowTaker taker) {
    RowGate gate = new RowGate(taker);
    try {
      rows.read(gate);
      return Checked.of(gate.handedOver());
    } catch (IOException e) {
      return Checked.refused(RefusedRead.in(e).finding());
    }
  }

  /** Reads a sheet from its file anew. */
  interface Rows {
    void read(RowGate gate) throws IOException;
  }
}
