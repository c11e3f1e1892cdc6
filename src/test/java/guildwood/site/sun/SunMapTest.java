package guildwood.site.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SunMapTest {
  private static final BedGrid GRID = new BedGrid(new GroundPoint(0, 0), 0.5, 16, 12);
  private static final Footprint BED = ShadowTest.footprint(0, 0, 8, 0, 8, 3, 4, 3, 4, 6, 0, 6);
  private static final SunMap.Words WORDS = new Texts("Sun on <bed> & \"border\"");

  /** A house along the south and a tree whose name needs care. */
  private static final Scene SCENE = Scenes.with(Scenes.WISCONSIN, Scenes.SUMMER, List.of(
      ShadowTest.building(6, 0, -3, 8, -3, 8, -0.5, 0, -0.5),
      new Tree("a & b <c>", new GroundPoint(2, 5), 6, 1, 1.5, 0.1, 0.5, false)));
  private static final SunHours HOURS = SunHours.of(SCENE, SCENE.sunPath(30), GRID.middles());

  @Test
  void isWellFormedAndNamedForThoseWhoListen() throws Exception {
    Element svg = parsed(draw(Optional.of(BED))).getDocumentElement();
    assertEquals("img", svg.getAttribute("role"));
    assertEquals("sun-title sun-text", svg.getAttribute("aria-labelledby"));
    Element title = (Element) svg.getElementsByTagName("title").item(0);
    assertEquals("sun-title", title.getAttribute("id"));
    assertEquals("Sun on <bed> & \"border\"", title.getTextContent());
    assertEquals("what the map shows", svg.getElementsByTagName("desc").item(0).getTextContent());
  }

  @Test
  void holdsNoStyleAndNoScript() {
    String svg = draw(Optional.of(BED));
    assertFalse(svg.contains("style=") || svg.contains("<style") || svg.contains("<script") || svg.contains("onload"), svg);
    assertFalse(svg.contains("NaN") || svg.contains("Infinity"), svg);
  }

  @Test
  void everyCellOfTheBedIsPaintedInItsBandAndNoOther() throws Exception {
    List<Element> painted = elements(parsed(draw(Optional.of(BED))), "rect").stream()
        .filter(rect -> rect.getAttribute("fill").startsWith("#")).toList();
    double unit = 600.0 / 16;
    List<SunBand> bands = SunBand.all();
    double area = 0;
    for (Element rect : painted.subList(0, painted.size() - bands.size())) {
      area += number(rect, "width") * number(rect, "height") / (unit * unit);
      int row = 11 - (int) Math.round((number(rect, "y") - 60) / unit);
      int from = (int) Math.round((number(rect, "x") - 60) / unit);
      int to = from + (int) Math.round(number(rect, "width") / unit);
      for (int column = from; column < to; column++) {
        SunBand band = bands.get(SunBand.indexOf(bands, HOURS.seasonMeanHours(row * 16 + column)));
        assertEquals(band.fill(), rect.getAttribute("fill"));
      }
    }
    assertEquals(16 * 6 + 8 * 6, area, 0.1, "cells of the L");
  }

  @Test
  void legendScaleNorthAndObstaclesStandInTheDrawing() throws Exception {
    List<String> texts = elements(parsed(draw(Optional.empty())), "text").stream().map(Element::getTextContent).toList();
    for (SunBand band : SunBand.all()) {
      assertTrue(texts.contains(WORDS.band(band)), band::toString);
    }
    assertTrue(texts.containsAll(List.of("North", "2.0 m", "a & b <c>", "building")), texts::toString);
  }

  @Test
  void figuresOnTheMapAreTheHoursOfTheirCells() throws Exception {
    List<String> figures = elements(parsed(draw(Optional.empty())), "text").stream()
        .map(Element::getTextContent).filter(text -> text.matches("\\d+\\.\\d")).toList();
    List<String> expected = new ArrayList<>();
    for (int row = 1; row < 12; row += 2) {
      for (int column = 1; column < 16; column += 2) {
        expected.add(String.format(Locale.ROOT, "%.1f", HOURS.seasonMeanHours(row * 16 + column)));
      }
    }
    assertEquals(expected, figures);
  }

  /** So that a photocopy still tells the bands apart: lightness rises from band to band, hatching thins out. */
  @Test
  void bandsReadInGrey() {
    List<SunBand> bands = SunBand.all();
    for (int i = 1; i < bands.size(); i++) {
      assertTrue(luminance(bands.get(i).fill()) > 1.15 * luminance(bands.get(i - 1).fill()), bands.get(i)::toString);
      assertTrue(bands.get(i).hatch() <= bands.get(i - 1).hatch());
      assertEquals(bands.get(i - 1).toHours(), bands.get(i).fromHours());
    }
    assertEquals(LightClass.FULL_SUN, bands.get(SunBand.indexOf(bands, 6)).lightClass());
    assertEquals(LightClass.PART_SHADE, bands.get(SunBand.indexOf(bands, 5.99)).lightClass());
    assertEquals(LightClass.FULL_SHADE, bands.get(SunBand.indexOf(bands, 0)).lightClass());
    assertEquals(bands.size() - 1, SunBand.indexOf(bands, 24));
  }

  @Test
  void hoursOfAnotherGridAreABug() {
    BedGrid other = new BedGrid(new GroundPoint(0, 0), 0.5, 3, 3);
    assertThrows(IllegalArgumentException.class, () -> SunMap.draw(other, HOURS, Optional.empty(), WORDS, "sun"));
  }

  private static String draw(Optional<Footprint> outline) {
    return SunMap.draw(GRID, HOURS, outline, WORDS, "sun");
  }

  /** Relative luminance as WCAG 2.2 defines it. */
  private static double luminance(String colour) {
    double sum = 0;
    double[] weights = {0.2126, 0.7152, 0.0722};
    for (int i = 0; i < 3; i++) {
      double share = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      sum += weights[i] * (share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4));
    }
    return sum;
  }

  private static Document parsed(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  private static List<Element> elements(Document document, String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  private record Texts(String title) implements SunMap.Words {
    @Override
    public String description() {
      return "what the map shows";
    }

    @Override
    public String north() {
      return "North";
    }

    @Override
    public String metres(double lengthM) {
      return lengthM + " m";
    }

    @Override
    public String band(SunBand band) {
      return band.fromHours() + " to " + band.toHours() + " h, " + band.lightClass().word();
    }
  }
}
