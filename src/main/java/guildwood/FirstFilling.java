package guildwood;

import guildwood.kernel.Checked;
import guildwood.species.LibraryContents;
import guildwood.species.SpeciesRecords;
import guildwood.species.exchange.SeedFiles;
import guildwood.web.Messages;
import java.util.stream.Collectors;

/** Fills an empty library with the species that come with the program. */
final class FirstFilling {
  static final String SEED = "/seed-data";

  private FirstFilling() {}

  /**
   * Keeps the whole seed in one transaction, unless the library holds anything, be it in the bin.
   *
   * @throws BadSeed where any of it cannot be read; nothing is kept then
   */
  static void fill(SpeciesRecords records, Messages messages, String root) {
    if (!records.library().isEmpty()) {
      return;
    }
    Checked<LibraryContents> seed = SeedFiles.read(root);
    if (seed.isRefused()) {
      throw new BadSeed(seed.findings().stream().map(f -> f.field() + ": " + messages.say(f)).collect(Collectors.joining("\n")));
    }
    records.addAll(seed.orThrow());
  }

  /** The species that come with the program cannot be read; the message lists every place. */
  static final class BadSeed extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BadSeed(String places) {
      super("the species that come with the program cannot be read:\n" + places);
    }
  }
}
