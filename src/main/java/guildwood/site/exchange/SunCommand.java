package guildwood.site.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.sun.SunHours;
import guildwood.site.sun.SunPath;
import guildwood.web.Messages;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reckons the sun at points of a scene file and prints it as JSON. Exit 0, or 2 where the file is no scene. */
@Command(
    name = "sun",
    description = "Print hours of direct sun at the points of a scene as JSON.",
    mixinStandardHelpOptions = true)
public final class SunCommand implements Callable<Integer> {
  private static final int REFUSED = 2;
  private static final int MOST_FINDINGS = 20;

  @Spec
  private CommandSpec spec;

  @Option(names = "--scene", paramLabel = "FILE", required = true, description = "The scene, a JSON file.")
  private Path file;

  @Override
  public Integer call() throws IOException {
    Messages messages = new Messages();
    Checked<SceneFile> read = read();
    if (read.isRefused()) {
      complain(messages, read.findings());
      return REFUSED;
    }
    SceneFile scene = read.orThrow();
    scene.ignored().forEach(key -> say(spec.commandLine().getErr(), messages.say(Finding.of("json.ignored", "", key))));
    SunPath path = scene.scene().sunPath(scene.stepMinutes());
    SunHours hours = SunHours.of(scene.scene(), path, scene.points());
    OptionalDouble slopeRatio = scene.slope()
        .map(slope -> slope.directRatio(path, scene.scene().season())).orElse(OptionalDouble.empty());
    SunReport.write(hours, slopeRatio, spec.commandLine().getOut());
    return CommandLine.ExitCode.OK;
  }

  private Checked<SceneFile> read() {
    try {
      return SceneReader.read(Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      return Checked.refused(Finding.of("file.missing", ""));
    } catch (AccessDeniedException e) {
      return Checked.refused(Finding.of("file.denied", ""));
    } catch (IOException e) {
      return Checked.refused(Finding.of("file.unreadable", ""));
    }
  }

  private void complain(Messages messages, List<Finding> findings) {
    PrintWriter err = spec.commandLine().getErr();
    findings.stream().limit(MOST_FINDINGS).forEach(finding -> {
      String where = finding.field().isEmpty() ? "" : finding.field() + ": ";
      say(err, where + messages.say(finding));
    });
    if (findings.size() > MOST_FINDINGS) {
      say(err, messages.say(Finding.of("json.more", "", findings.size() - MOST_FINDINGS)));
    }
  }

  private void say(PrintWriter err, String text) {
    err.println("guildwood: " + file + ": " + text);
  }
}
