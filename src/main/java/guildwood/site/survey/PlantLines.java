package guildwood.site.survey;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.survey.Occurrence.Origin;
import guildwood.site.survey.Occurrence.Stage;
import guildwood.site.survey.SurveySheet.Row;
import guildwood.species.names.NameMatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The list of plants as people type it: one a line, the name first, then as much of this as they know, in any order:
 * the cover, and the words planted, wild, seedling, mature. {@code Acer rubrum 15}, {@code stinging nettle, +, seedling}.
 */
public final class PlantLines {
  private static final int LONGEST_TEXT = 20_000;
  private static final int MOST_FINDINGS = 8;
  private static final int LONGEST_SHOWN = 40;

  private static final Pattern WORD = Pattern.compile("(?i)^(.*?)[\\s,;:]+(planted|wild|seedlings?|mature|adult)$");

  /** A last word with a digit in front, without any letter, or a lone r or c is meant as a cover. */
  private static final Pattern COVER = Pattern.compile("^(.*?)[\\s,;:]+([-+−.]?\\d\\S*(?:\\s*%)?|[^\\p{L}\\d\\s,;:()'\"]+|[rc])$");

  private PlantLines() {}

  /**
   * Reads the list. Every line that cannot be read is a finding that names the line.
   *
   * @param names what a written name is taken for
   */
  public static Checked<List<Row>> read(String typed, CoverScale scale, Function<String, NameMatch> names, String field) {
    if (typed.length() > LONGEST_TEXT) {
      return Checked.refused(Finding.of("text.too-long", field, LONGEST_TEXT));
    }
    List<Row> rows = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    String[] lines = typed.replace("\r\n", "\n").replace('\r', '\n').split("\n");
    for (int i = 0; i < lines.length; i++) {
      String line = lines[i].replace('\t', ' ').replace('\u00A0', ' ').strip();
      if (!line.isEmpty()) {
        Checked<Row> row = row(line, i + 1, scale, names, field);
        row.value().ifPresent(rows::add);
        findings.addAll(row.findings());
      }
    }
    if (rows.isEmpty() && findings.isEmpty()) {
      findings.add(Finding.of("survey.no-plants", field));
    }
    if (rows.size() > SurveySheet.MOST_ROWS) {
      findings.add(Finding.of("survey.too-many-plants", field, SurveySheet.MOST_ROWS));
    }
    return findings.isEmpty() ? Checked.of(rows) : Checked.refused(findings.subList(0, Math.min(MOST_FINDINGS, findings.size())));
  }

  /** The list that reads as these rows. */
  public static String write(List<Row> rows) {
    List<String> lines = new ArrayList<>();
    for (Row row : rows) {
      StringBuilder line = new StringBuilder(row.written());
      line.append(row.cover().isEmpty() ? "" : " " + row.cover());
      line.append(row.origin() == Origin.PLANTED ? " planted" : "");
      line.append(row.stage() == Stage.NOT_SAID ? "" : row.stage() == Stage.SEEDLING ? " seedling" : " mature");
      lines.add(line.toString());
    }
    return String.join("\n", lines);
  }

  private static Checked<Row> row(String line, int number, CoverScale scale, Function<String, NameMatch> names, String field) {
    if (line.chars().anyMatch(Character::isISOControl)) {
      return Checked.refused(Finding.of("survey.line-control-characters", field, number));
    }
    String name = line;
    Origin origin = Origin.WILD;
    Stage stage = Stage.NOT_SAID;
    String cover = "";
    boolean more = true;
    while (more) {
      Matcher word = WORD.matcher(name);
      Matcher tail = COVER.matcher(name);
      if (word.matches()) {
        String said = word.group(2).toLowerCase(java.util.Locale.ROOT);
        origin = said.equals("planted") ? Origin.PLANTED : origin;
        stage = said.startsWith("seedling") ? Stage.SEEDLING : said.equals("mature") || said.equals("adult") ? Stage.MATURE : stage;
        name = word.group(1).strip();
      } else if (cover.isEmpty() && tail.matches() && !tail.group(1).isBlank()) {
        cover = tail.group(2).strip();
        name = tail.group(1).strip();
      } else {
        more = false;
      }
    }
    name = name.replaceAll("[\\s,;:]+$", "");
    return checked(name, number, cover, origin, stage, scale, names, field);
  }

  private static Checked<Row> checked(String name, int number, String cover, Origin origin, Stage stage, CoverScale scale,
      Function<String, NameMatch> names, String field) {
    if (name.chars().noneMatch(Character::isLetter)) {
      return Checked.refused(Finding.of("survey.line-without-name", field, number, shown(name)));
    }
    if (name.length() > Row.LONGEST_NAME) {
      return Checked.refused(Finding.of("survey.line-too-long", field, number, Row.LONGEST_NAME));
    }
    String written = scale == CoverScale.PERCENT ? cover.replace("%", "").replace(',', '.').strip() : cover;
    OptionalDouble percent = written.isEmpty() ? OptionalDouble.empty() : scale.percent(written);
    if (!written.isEmpty() && (percent.isEmpty() || percent.getAsDouble() > 100 || written.length() > 12)) {
      return Checked.refused(scale == CoverScale.PERCENT
          ? Finding.of("survey.line-cover-percent", field, number, shown(cover))
          : Finding.of("survey.line-cover-class", field, number, shown(cover), String.join(", ", scale.classes())));
    }
    Optional<String> taken = names.apply(name).name();
    return Checked.of(new Row(name, taken, written, origin, stage));
  }

  private static String shown(String text) {
    return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "…";
  }
}
