package org.drysill.report.page;

import java.io.IOException;
import java.io.StringReader;
import java.util.Locale;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Holds the page that templates of a user's own make to what a report may be: well-formed, nothing
 * that runs, nothing that is fetched, no chart that there is not.
 */
final class PageCheck extends DefaultHandler {
  private static final Set<String> REFUSED =
      Set.of("script", "iframe", "frame", "embed", "applet", "link", "base", "form", "input");

  private static final Set<String> FETCHED =
      Set.of("src", "data", "srcset", "poster", "background", "action", "xlink:href");

  private final Set<String> charts;

  private PageCheck(Set<String> charts) {
    this.charts = charts;
  }

  /**
   * Looks through a page.
   *
   * @throws TemplateProblem where it is not what a report may be
   */
  static void check(String page, Set<String> charts) {
    try {
      SAXParserFactory factory = SAXParserFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.newSAXParser().parse(new InputSource(new StringReader(page)), new PageCheck(charts));
    } catch (SAXParseException e) {
      throw new TemplateProblem(
          "the page that the own templates make is not well-formed: "
              + e.getMessage()
              + " Line "
              + e.getLineNumber()
              + " of the page: "
              + line(page, e.getLineNumber()));
    } catch (SAXException | IOException | ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String line(String page, int number) {
    String line = page.lines().skip(Math.max(0, number - 1L)).findFirst().orElse("").strip();
    return line.length() > 120 ? line.substring(0, 120) + "…" : line;
  }

  @Override
  public InputSource resolveEntity(String publicId, String systemId) {
    return new InputSource(new StringReader(""));
  }

  @Override
  public void startElement(String uri, String local, String name, Attributes attributes) {
    String element = name.toLowerCase(Locale.ROOT);
    boolean refreshes = element.equals("meta") && attributes.getValue("http-equiv") != null;
    if (REFUSED.contains(element) || refreshes) {
      throw new TemplateProblem("own templates may not write the element " + element);
    }
    boolean chart = element.equals("object");
    if (chart && !charts.contains(attributes.getValue("data"))) {
      throw new TemplateProblem(
          "the own templates show a chart that there is not: " + attributes.getValue("data"));
    }
    for (int i = 0; i < attributes.getLength(); i++) {
      String key = attributes.getQName(i).toLowerCase(Locale.ROOT);
      String value = attributes.getValue(i).strip();
      boolean fetches = FETCHED.contains(key) && !chart && !value.startsWith("data:");
      if (key.startsWith("on") || fetches) {
        throw new TemplateProblem(
            "own templates may not write the attribute " + key + " with " + value);
      }
    }
  }
}
