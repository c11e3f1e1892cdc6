package guildwood.guild.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import guildwood.Main;
import guildwood.species.SpeciesLibrary;
import guildwood.species.exchange.ShippedLibrary;
import guildwood.species.exchange.SpeciesTableWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;

/** The command {@code compose} run inside the test, and the files it needs. */
record ComposeRun(int exit, String out, List<String> complaints) {
  /** A bed in which the shipped library can do something. */
  static final String GROUND = "\"conditions\":{\"light\":[6,8],\"moisture\":\"moist\",\"ph\":[6,6.8],\"coldest_winter\":\"zone 5a\"}";

  static ComposeRun of(Path bed, Path species, String... more) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = new CommandLine(new Main());
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    String[] args = new String[5 + more.length];
    System.arraycopy(new String[] {"compose", "--bed", bed.toString(), "--species", species.toString()}, 0, args, 0, 5);
    System.arraycopy(more, 0, args, 5, more.length);
    int exit = line.execute(args);
    return new ComposeRun(exit, out.toString(), err.toString().lines().toList());
  }

  static ComposeRun of(String bed, Path folder, Path species, String... more) throws IOException {
    Path file = folder.resolve("bed.json");
    Files.writeString(file, bed);
    return of(file, species, more);
  }

  JsonNode answer() throws IOException {
    return new ObjectMapper().readTree(out);
  }

  static SpeciesLibrary shipped() {
    return ShippedLibrary.read("/seed-data").orThrow();
  }

  /** The shipped library as the library page gives it out. */
  static Path exported(Path folder) throws IOException {
    Path file = folder.resolve("species.csv");
    try (Writer to = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      SpeciesTableWriter.write(shipped().species(), to);
    }
    return file;
  }

  /** The example of the contributor page. */
  static Path example(Path folder) throws IOException {
    Path file = folder.resolve("example.json");
    try (InputStream in = ComposeRun.class.getResourceAsStream("/compose/bed.json")) {
      Files.write(file, in.readAllBytes());
    }
    return file;
  }
}
