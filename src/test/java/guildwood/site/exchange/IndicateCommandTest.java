package guildwood.site.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

class IndicateCommandTest {
  private static final String VALUES = """
      species,system,axis,value
      Alnus glutinosa,ellenberg,moisture,9
      Urtica dioica,ellenberg,moisture,6
      Caltha palustris,ellenberg,moisture,9
      Alnus glutinosa,wetland-rating,wetness,1
      Urtica dioica,wetland-rating,wetness,FAC
      """;

  @TempDir
  private Path folder;

  private record Run(int exit, String out, String err) {
    JsonNode plot(int index) throws IOException {
      return new ObjectMapper().readTree(out).get("plots").get(index);
    }
  }

  private Run run(String survey, String values, String... more) throws IOException {
    Files.writeString(folder.resolve("survey.csv"), survey);
    Files.writeString(folder.resolve("values.csv"), values);
    List<String> args = new ArrayList<>(List.of(
        "--survey", folder.resolve("survey.csv").toString(), "--values", folder.resolve("values.csv").toString()));
    args.addAll(List.of(more));
    return execute(args);
  }

  private static Run execute(List<String> args) {
    StringWriter err = new StringWriter();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream before = System.out;
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
    try {
      int exit = new CommandLine(new IndicateCommand()).setErr(new PrintWriter(err)).execute(args.toArray(String[]::new));
      return new Run(exit, out.toString(StandardCharsets.UTF_8), err.toString());
    } finally {
      System.setOut(before);
    }
  }

  @Test
  void printsTheFixedKeysInAStableOrder() throws IOException {
    Run run = run("plot,species,cover_percent\n1,Alnus glutinosa (L.) Gaertn.,60\n1,Urtica dioica,20\n1,Nobody knows,20\n", VALUES);
    assertEquals(0, run.exit(), run.err());
    JsonNode plot = run.plot(0);
    List<String> keys = new ArrayList<>();
    plot.fieldNames().forEachRemaining(keys::add);
    assertEquals(List.of("plot", "coverMatchedPercent", "axes", "prevalenceIndex", "dominants", "dominancePercent", "names", "notes"), keys);
    List<String> axisKeys = new ArrayList<>();
    plot.at("/axes/moisture").fieldNames().forEachRemaining(axisKeys::add);
    assertEquals(List.of("median", "low80", "high80", "weightedMean", "standardError", "unweightedMean", "species",
        "effectiveSpecies", "warnings"), axisKeys.subList(0, 9));
    assertEquals("1", plot.get("plot").asText());
    assertEquals(80, plot.at("/coverMatchedPercent/moisture").asDouble(), 1e-9);
    assertEquals(8.25, plot.at("/axes/moisture/weightedMean").asDouble(), 1e-9);
    assertEquals(7.5, plot.at("/axes/moisture/unweightedMean").asDouble(), 1e-9);
    assertEquals((60 + 3 * 20) / 80.0, plot.get("prevalenceIndex").asDouble(), 1e-9);
    assertEquals("Alnus glutinosa", plot.at("/dominants/0").asText());
    assertEquals("unknown", plot.at("/names/0/how").asText());
    assertEquals(run.out(), run("plot,species,cover_percent\n1,Alnus glutinosa (L.) Gaertn.,60\n1,Urtica dioica,20\n1,Nobody knows,20\n", VALUES).out());
  }

  @Test
  void plantedOnesAreIgnoredAndPlotsKeepTheirOrder() throws IOException {
    Run run = run("""
        plot,species,cover_percent,status
        b,Alnus glutinosa,60,wild
        a,Urtica dioica,20,
        b,Urtica dioica,90,planted
        """, VALUES);
    assertEquals("b", run.plot(0).get("plot").asText());
    assertEquals(9, run.plot(0).at("/axes/moisture/weightedMean").asDouble());
    assertEquals(1, run.plot(0).at("/axes/moisture/species").asInt());
    assertTrue(run.plot(0).at("/axes/moisture/standardError").isNull());
    assertEquals(100, run.plot(0).at("/coverMatchedPercent/moisture").asDouble());
    assertEquals(1, run.plot(0).get("prevalenceIndex").asDouble());
  }

  @Test
  void aListWithoutCoverIsReadButHasNoIndex() throws IOException {
    Run run = run("plot,species\n1,Alnus glutinosa\n1,Urtica dioica\n", VALUES);
    assertEquals(7.5, run.plot(0).at("/axes/moisture/weightedMean").asDouble(), 1e-9);
    assertTrue(run.plot(0).get("prevalenceIndex").isNull());
    assertTrue(run.plot(0).get("dominancePercent").isNull());
  }

  @Test
  void coverClassesStandForTheirMidPoints() throws IOException {
    Run run = run("plot,species,cover_percent\n1,Alnus glutinosa,+\n1,Urtica dioica,1\n", VALUES, "--cover-scale", "braun-blanquet");
    assertEquals((0.1 * 9 + 2.5 * 6) / 2.6, run.plot(0).at("/axes/moisture/weightedMean").asDouble(), 1e-9);
  }

  @Test
  void severalSystemsOfOneAxisAreNotMixed() throws IOException {
    Run run = run("plot,species,cover_percent\n1,Alnus glutinosa,50\n1,Urtica dioica,50\n", """
        species,system,axis,value,width,min,max
        Alnus glutinosa,one,moisture,9,1.2,,
        Alnus glutinosa,two,moisture,,,0,0.5
        Urtica dioica,two,moisture,,,0.2,1
        """);
    assertEquals("two", run.plot(0).at("/axes/moisture/system").asText());
    assertEquals("one", run.plot(0).at("/otherSystems/0/system").asText());
    assertTrue(run.plot(0).at("/axes/moisture/high80").asDouble() < 1.2);
  }

  @Test
  void valuesThatAStatisticsProgramWroteAsMissingAreMissing() throws IOException {
    Run run = run("\"plot\",\"species\",\"cover_percent\"\n\"1\",\"Achimill\",3\n\"1\",\"Agrostol\",2\n",
        "\uFEFF\"species\",\"system\",\"axis\",\"value\",\"width\"\n\"Achimill\",\"wa\",\"moisture\",4.4,NA\n\"Agrostol\",\"wa\",\"moisture\",NA,NA\n\"Airaprae\",\"wa\",\"moisture\",2.25,0\n");
    assertEquals(0, run.exit(), run.err());
    assertEquals(4.4, run.plot(0).at("/axes/moisture/weightedMean").asDouble());
    assertEquals(60, run.plot(0).at("/coverMatchedPercent/moisture").asDouble(), 1e-9);
  }

  @Test
  void aPlotNobodyCanReadIsNotAnError() throws IOException {
    Run run = run("plot,species,cover_percent\n1,Nobody knows,60\n", VALUES);
    assertEquals(0, run.exit());
    assertEquals(0, run.plot(0).at("/coverMatchedPercent/moisture").asDouble());
    assertFalse(run.plot(0).get("axes").has("moisture"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "1,Acer rubrum,much | survey.csv, row 2, column cover_percent",
      "1,Acer rubrum,-5 | survey.csv, row 2, column cover_percent",
      "1,,5 | survey.csv, row 2, column species",
      ",Acer rubrum,5 | survey.csv, row 2, column plot"})
  void aBadSurveyIsRefusedNamingRowAndColumn(String row, String where) throws IOException {
    Run run = run("plot,species,cover_percent\n" + row + "\n", VALUES);
    assertEquals(2, run.exit());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith(where + ": "), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "A b,x,moisture,wet,,,,, | values.csv, row 2, column value",
      "A b,x,moistness,1,,,,, | values.csv, row 2, column axis",
      "A b,,moisture,1,,,,, | values.csv, row 2, column system",
      "A b,x,moisture,1,-2,,,, | values.csv, row 2, column width",
      "A b,x,moisture,,,5,3,, | values.csv, row 2, column min",
      "A b,x,moisture,,,5,,, | values.csv, row 2, column max",
      "A b,x,moisture,,,1,3,0,2 | values.csv, row 2, column preferred_min",
      "A b,x,moisture,4,,1,3,, | values.csv, row 2, column value",
      "A b,wetland-rating,wetness,6,,,,, | values.csv, row 2, column value",
      "A b,x,moisture | values.csv, row 2"})
  void badValuesAreRefusedNamingRowAndColumn(String row, String where) throws IOException {
    Run run = run("plot,species,cover_percent\n1,A b,5\n",
        "species,system,axis,value,width,min,max,preferred_min,preferred_max\n" + row + "\n");
    assertEquals(2, run.exit());
    assertTrue(run.err().startsWith(where + ": "), run.err());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "species;system;axis;value | separated by another sign",
      "species,axis,value | Columns are missing in the first row: system",
      "'' | The file is empty"})
  void aFileWithoutTheColumnsIsRefused(String header, String words) throws IOException {
    Run run = run("plot,species,cover_percent\n1,A b,5\n", header + "\n");
    assertEquals(2, run.exit());
    assertTrue(run.err().contains(words), run.err());
  }

  @Test
  void everythingWrongIsSaidAtOnceAndTwiceTheSameIsFine() throws IOException {
    Run run = run("plot,species,cover_percent\n1,A b,x\n2,A b,y\n",
        "species,system,axis,value\nA b,s,moisture,1\nA b,s,moisture,1\nA b,s,moisture,2\n");
    assertEquals(3, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("values.csv, row 4, column species"), run.err());
  }

  @Test
  void aMissingFileOrOptionIsSaidPlainly() {
    Run run = execute(List.of("--survey", folder.resolve("none.csv").toString(), "--values", folder.resolve("none.csv").toString()));
    assertEquals(2, run.exit());
    assertTrue(run.err().contains("cannot be read"), run.err());
    assertEquals(2, execute(List.of("--survey", "x")).exit());
  }
}
