package guildwood.site.survey.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.site.exchange.IndicatorFiles;
import guildwood.site.survey.AxisReading;
import guildwood.site.survey.IndicatorLibrary;
import guildwood.site.survey.Occurrence;
import guildwood.site.survey.PlantNames;
import guildwood.site.survey.Survey;
import guildwood.site.survey.SurveyAxis;
import guildwood.site.survey.SurveyReader;
import guildwood.web.Messages;
import guildwood.web.Templates;
import java.io.StringReader;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class AxisPictureTest {
  private static final Messages MESSAGES = new Messages();
  private static final IndicatorLibrary LIBRARY = IndicatorFiles.read();
  private static final PlantNames NAMES = new PlantNames(LIBRARY.plants());
  private static final SurveyReader READER = new SurveyReader(LIBRARY.tables(Optional.empty()));
  /** The scale is drawn from 12 to 388. */
  private static final double LEFT = 12;
  private static final double LENGTH = 376;

  @Test
  void barsAndIntervalLieWhereTheReadingSays() throws Exception {
    AxisReading reading = read(SurveyAxis.MOISTURE, "Typha latifolia", "Caltha palustris", "Carex stricta", "Juncus effusus", "Salix nigra");
    Document svg = svg(reading);
    assertTrue(reading.called());
    String interval = first(svg, "path", "interval").getAttribute("d");
    assertTrue(interval.startsWith("M" + x(reading, reading.interval80().min()) + " "), interval);
    assertTrue(interval.contains("H" + x(reading, reading.interval80().max()) + " "), interval);
    assertEquals(x(reading, reading.median()), first(svg, "line", "median").getAttribute("x1"));
    List<Element> bars = all(svg, "rect");
    assertEquals(reading.voices().size(), bars.size());
    for (Element bar : bars) {
      double from = Double.parseDouble(bar.getAttribute("x"));
      double to = from + Double.parseDouble(bar.getAttribute("width"));
      assertTrue(reading.voices().stream().anyMatch(v -> Math.abs(from - place(reading, v.reach().min())) < 0.11
          && Math.abs(to - place(reading, v.reach().max())) < 0.21), from + " to " + to);
    }
  }

  @Test
  void isNamedAndDescribedForReadersWhoDoNotSeeIt() throws Exception {
    AxisReading reading = read(SurveyAxis.REACTION, "Vaccinium corymbosum", "Kalmia angustifolia", "Gaultheria procumbens");
    Element svg = svg(reading).getDocumentElement();
    assertEquals("img", svg.getAttribute("role"));
    String title = svg.getElementsByTagName("title").item(0).getTextContent();
    String desc = svg.getElementsByTagName("desc").item(0).getTextContent();
    assertEquals("Soil reaction: the plants’ reading", title);
    assertTrue(desc.contains("acid"), desc);
    assertEquals("title-reaction desc-reaction", svg.getAttribute("aria-labelledby"));
    assertFalse(svg.hasAttribute("style"));
  }

  @Test
  void aGeneralistAloneHasADashedBarAndNoInterval() throws Exception {
    AxisReading reading = read(SurveyAxis.MOISTURE, "Acer rubrum");
    assertFalse(reading.called());
    Document svg = svg(reading);
    assertTrue(all(svg, "path").stream().noneMatch(p -> p.getAttribute("class").equals("interval")));
    assertEquals("bar generalist", all(svg, "rect").get(0).getAttribute("class"));
  }

  @Test
  void drawsTheHeaviestOnesOnlyAndSaysHowManyMore() {
    String[] many = LIBRARY.plants().stream().map(IndicatorLibrary.Plant::species).limit(40).toArray(String[]::new);
    AxisReading reading = read(SurveyAxis.MOISTURE, many);
    AxisPicture picture = picture(reading);
    assertEquals(AxisPicture.MOST_BARS, picture.bars().size());
    assertEquals(reading.voices().size() - AxisPicture.MOST_BARS, picture.more());
  }

  @Test
  void everyAxisCanBeDrawnAndSoilReactionHasItsNineClasses() throws Exception {
    SurveyReader withRatings = new SurveyReader(LIBRARY.tables(Optional.of(guildwood.species.WetlandRegion.NE)));
    var readings = withRatings.read(survey("Acer rubrum", "Urtica dioica", "Salix nigra", "Quercus alba")).readings();
    assertEquals(List.of(SurveyAxis.values()), List.copyOf(readings.keySet()));
    for (AxisReading reading : readings.values()) {
      assertTrue(all(svg(reading), "text").size() > 3);
    }
    // NRCS 1998 has nine classes from 3.5 to 9.0: eight borders between them.
    assertEquals(8, picture(readings.get(SurveyAxis.REACTION)).borders().size());
  }

  private static Survey survey(String... species) {
    return Survey.of("plot", Arrays.stream(species).map(s -> Occurrence.wild(s, 10)).toList());
  }

  private static AxisReading read(SurveyAxis axis, String... species) {
    return READER.read(survey(species)).readings().get(axis);
  }

  private static AxisPicture picture(AxisReading reading) {
    return AxisView.of(reading, NAMES, LIBRARY, MESSAGES).picture();
  }

  private static Document svg(AxisReading reading) throws Exception {
    String drawn = new Templates(MESSAGES).render("survey/parts :: picture", Map.of("p", picture(reading)));
    return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(drawn)));
  }

  private static List<Element> all(Document svg, String tag) {
    var found = svg.getElementsByTagName(tag);
    return java.util.stream.IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i)).toList();
  }

  private static Element first(Document svg, String tag, String name) {
    return all(svg, tag).stream().filter(e -> e.getAttribute("class").equals(name)).findFirst().orElseThrow();
  }

  private static double place(AxisReading reading, double value) {
    return LEFT + LENGTH * (value - reading.scale().min()) / reading.scale().width();
  }

  private static String x(AxisReading reading, double value) {
    return String.format(java.util.Locale.ROOT, "%.1f", place(reading, value));
  }
}
