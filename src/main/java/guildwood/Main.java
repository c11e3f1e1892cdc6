package guildwood;

import guildwood.exporting.exchange.ExportCommand;
import guildwood.guild.exchange.ComposeCommand;
import guildwood.site.exchange.ClimateCommand;
import guildwood.site.exchange.IndicateCommand;
import guildwood.site.exchange.SunCommand;
import java.nio.file.Path;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The command line. Exit 0 on success, 2 with a plain message on bad input. */
@Command(
    name = "guildwood",
    description = "Plan plant guilds and choose species, bed by bed.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    subcommands = {
      Main.Serve.class, ComposeCommand.class, IndicateCommand.class, SunCommand.class, ClimateCommand.class, Coverage.class,
      ExportCommand.class, ImportCommand.class
    })
public final class Main {
  public static void main(String[] args) {
    int exit = line().execute(args);
    if (exit != 0) {
      System.exit(exit);
    }
  }

  /** The commands, with every failure put into one sentence. */
  static CommandLine line() {
    CommandLine line = new CommandLine(new Main());
    line.setExecutionExceptionHandler((e, command, parsed) -> {
      command.getErr().println("guildwood: " + e.getMessage());
      return 2;
    });
    return line;
  }

  /** Serves the pages until the process is ended. */
  @Command(name = "serve", description = "Serve the pages.", mixinStandardHelpOptions = true)
  static final class Serve implements Callable<Integer> {
    @Option(names = "--demo", description = "Serve an invented site with beds; nothing is kept.")
    private boolean demo;

    @Option(names = "--data", paramLabel = "DIR", description = "Where the database lives (default: ./data).")
    private Path data;

    @Option(names = "--host", description = "The address to listen on (default: 127.0.0.1, this machine only).")
    private String host;

    @Option(names = "--port", description = "The port to listen on (default: 8080; 0 takes any free one).")
    private Integer port;

    @Option(names = "--public-address", paramLabel = "URL", description = "How others reach the pages.")
    private String publicAddress;

    @Override
    public Integer call() {
      OptionalInt wanted = port == null ? OptionalInt.empty() : OptionalInt.of(port);
      Settings settings = Settings.of(demo, data, host, wanted, publicAddress, System.getenv());
      App app = App.start(settings);
      Runtime.getRuntime().addShutdownHook(new Thread(app::close));
      app.greeting().forEach(System.out::println);
      return 0;
    }
  }

  /** The version from the jar's manifest. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"guildwood " + (version == null ? "(not packaged)" : version)};
    }
  }
}
