package guildwood.drawing;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What stands where on a drawing, read from nothing but its SVG. */
public final class SvgBoxes {
  /** Letters reach so far above and below their line, as shares of their size. */
  private static final double ABOVE = 0.75;

  private static final double BELOW = 0.25;

  private final Element svg;
  private final List<Text> texts = new ArrayList<>();

  /** A line of text with the box its letters take. */
  public record Text(String words, String kind, double left, double top, double right, double bottom) {
    boolean meets(Text other) {
      return left < other.right && right > other.left && top < other.bottom && bottom > other.top;
    }
  }

  private SvgBoxes(Element svg) {
    this.svg = svg;
    for (Element text : all("text")) {
      double size = number(text, "font-size");
      double x = number(text, "x");
      double y = number(text, "y");
      texts.add(new Text(text.getTextContent(), text.getAttribute("class"), x, y - ABOVE * size, x + number(text, "textLength"), y + BELOW * size));
    }
  }

  public static SvgBoxes of(String svg) {
    try {
      Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
          .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
      return new SvgBoxes(document.getDocumentElement());
    } catch (java.io.IOException | org.xml.sax.SAXException | javax.xml.parsers.ParserConfigurationException e) {
      throw new AssertionError("no drawing: " + e.getMessage(), e);
    }
  }

  public List<Text> texts(String kind) {
    return texts.stream().filter(t -> t.kind().equals(kind)).toList();
  }

  /** Pairs of lines of text that lie over one another. */
  public List<String> overlapping() {
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      for (int j = i + 1; j < texts.size(); j++) {
        if (texts.get(i).meets(texts.get(j))) {
          pairs.add(texts.get(i) + " over " + texts.get(j));
        }
      }
    }
    return pairs;
  }

  /** Text and crowns that reach beyond the sheet. */
  public List<String> cutOff() {
    List<String> out = new ArrayList<>();
    for (Text text : texts) {
      if (text.left() < 0 || text.top() < 0 || text.right() > viewWidth() || text.bottom() > viewHeight()) {
        out.add(text.toString());
      }
    }
    spots().forEach((id, spot) -> {
      if (spot[0] - spot[2] < 0 || spot[1] - spot[2] < 0 || spot[0] + spot[2] > viewWidth() || spot[1] + spot[2] > viewHeight()) {
        out.add(id + " at " + spot[0] + ", " + spot[1]);
      }
    });
    return out;
  }

  /** Each plant's stem and the radius of its crown, millimetres on the sheet; ground covers have no crown of their own. */
  public Map<String, double[]> spots() {
    Map<String, Double> crowns = new LinkedHashMap<>();
    for (Element circle : all("circle")) {
      if (circle.getAttribute("class").equals("crown")) {
        crowns.put(((Element) circle.getParentNode()).getAttribute("data-crown"), number(circle, "r"));
      }
    }
    Map<String, double[]> spots = new LinkedHashMap<>();
    for (Element group : all("g")) {
      if (group.getAttribute("class").equals("spot")) {
        String id = group.getAttribute("data-spot");
        String[] at = group.getAttribute("transform").replaceAll("[a-z()]", "").split(" ");
        spots.put(id, new double[] {Double.parseDouble(at[0]), Double.parseDouble(at[1]), crowns.getOrDefault(id, 0.0)});
      }
    }
    return spots;
  }

  double widthMm() {
    return Double.parseDouble(svg.getAttribute("width").replace("mm", ""));
  }

  double viewWidth() {
    return Double.parseDouble(svg.getAttribute("viewBox").split(" ")[2]);
  }

  private double viewHeight() {
    return Double.parseDouble(svg.getAttribute("viewBox").split(" ")[3]);
  }

  double scaleBarMetres() {
    return number(scaleBar(), "data-metres");
  }

  double scaleBarMm() {
    return number((Element) scaleBar().getElementsByTagName("rect").item(0), "width");
  }

  private Element scaleBar() {
    return all("g").stream().filter(g -> g.getAttribute("class").equals("scale-bar")).findFirst().orElseThrow();
  }

  private List<Element> all(String name) {
    NodeList found = svg.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }
}
