package guildwood.importing.exchange;

import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * An XML part, event by event. Declarations of entities are refused, since they serve to swell a file or to read
 * others; whatever the parser throws over damaged markup is a refusal.
 */
final class XmlPart implements AutoCloseable {
  private static final XMLInputFactory FACTORY = factory();

  private final Stepping in;
  private final XMLStreamReader reader;

  XmlPart(InputStream part) throws IOException {
    in = new Stepping(part);
    try {
      reader = FACTORY.createXMLStreamReader(in);
    } catch (XMLStreamException | RuntimeException e) {
      part.close();
      throw RefusedRead.in(e);
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = new InputFactoryImpl();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, false);
    return factory;
  }

  /** The next event as in {@link XMLStreamConstants}; END_DOCUMENT at the end. */
  int next() throws IOException {
    try {
      in.sinceStep = 0;
      int event = reader.hasNext() ? reader.next() : XMLStreamConstants.END_DOCUMENT;
      if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
        throw new RefusedRead("entity");
      }
      return event;
    } catch (XMLStreamException | RuntimeException e) {
      throw RefusedRead.in(e);
    }
  }

  /** Name of the element without its namespace. */
  String element() {
    return reader.getLocalName();
  }

  /** An attribute by its name without namespace; empty where there is none. */
  String attribute(String name) throws RefusedRead {
    for (int i = attributes() - 1; i >= 0; i--) {
      if (attributeName(i).equals(name)) {
        return attributeValue(i);
      }
    }
    return "";
  }

  /** How many attributes the element has. */
  int attributes() {
    return reader.getAttributeCount();
  }

  /** Without its namespace. */
  String attributeName(int attribute) {
    return reader.getAttributeLocalName(attribute);
  }

  String attributeValue(int attribute) throws RefusedRead {
    try {
      return reader.getAttributeValue(attribute);
    } catch (RuntimeException e) {
      throw RefusedRead.in(e);
    }
  }

  /** Adds the text of this event, or as much of it as a cell may hold and one more. */
  void addText(StringBuilder text) throws RefusedRead {
    try {
      // Taken even where there is no room, since the parser reads lazily.
      String more = reader.getText();
      int room = Math.max(0, TableLimits.CELL_CHARS + 1 - text.length());
      text.append(more, 0, Math.min(room, more.length()));
    } catch (RuntimeException e) {
      throw RefusedRead.in(e);
    }
  }

  /** Passes over the element that has just begun, with all that is in it. */
  void skip() throws IOException {
    for (int depth = 1; depth > 0; ) {
      int event = next();
      if (event == XMLStreamConstants.END_DOCUMENT) {
        throw new RefusedRead("damaged");
      }
      depth += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
    }
  }

  /** Reads what is left unseen, so that damage to it comes out; it is not parsed. */
  void finish() throws IOException {
    byte[] rest = new byte[1 << 13];
    do {
      in.sinceStep = 0;
    } while (in.read(rest) >= 0);
  }

  @Override
  public void close() throws IOException {
    in.close();
  }

  /** Keeps the parser from gathering one huge name, attribute or comment. */
  private static final class Stepping extends FilterInputStream {
    private long sinceStep;

    Stepping(InputStream in) {
      super(in);
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] buffer, int from, int length) throws IOException {
      int read = super.read(buffer, from, length);
      sinceStep += Math.max(0, read);
      if (sinceStep > TableLimits.XML_STEP_BYTES) {
        throw new RefusedRead("xml-step");
      }
      return read;
    }
  }
}
