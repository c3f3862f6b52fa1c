package org.drysill.report.page;

import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.Svg;
import org.drysill.report.font.Fonts;
import org.drysill.report.font.WebFonts;

/**
 * The report as one HTML file that needs nothing from anywhere: the text of the PDF with its charts
 * as SVG and its fonts inside.
 */
public final class HtmlPage {
  /** The object elements of charts, as the macro of the templates writes them. */
  private static final Pattern CHART =
      Pattern.compile("<object type=\"chart/[a-z-]+\" data=\"([^\"]*)\"([^>]*)></object>");

  /** The outline of the PDF; a web page has no place for it. */
  private static final Pattern BOOKMARKS =
      Pattern.compile("<bookmarks>.*?</bookmarks>", Pattern.DOTALL);

  /** Tells the browser to fetch nothing and to run nothing, whatever a template writes. */
  private static final String SHUT =
      "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none';"
          + " style-src 'unsafe-inline'; img-src data:; font-src data:; form-action 'none';"
          + " base-uri 'none'\"/>";

  private static final Pattern WIDTH = Pattern.compile("width:([0-9.]+)mm");
  private static final Pattern HEIGHT = Pattern.compile("height:([0-9.]+)mm");
  private static final double PIXELS_PER_MM = 96 / 25.4;

  private final Fonts fonts;

  /** A page maker that reads its fonts when they are first asked for. */
  public HtmlPage() {
    this(new Fonts());
  }

  /** A page maker that shares fonts with others of its thread. */
  public HtmlPage(Fonts fonts) {
    this.fonts = fonts;
  }

  /**
   * Makes the file from the same text as the PDF.
   *
   * @param xhtml well-formed XHTML with charts as object elements
   * @param charts the charts by id
   * @param screen the style rules that a browser needs beyond those of the PDF
   */
  public String render(String xhtml, Map<String, ChartSpec> charts, String screen) {
    String page = BOOKMARKS.matcher(xhtml).replaceFirst("");
    String drawn =
        CHART.matcher(page).replaceAll(chart -> Matcher.quoteReplacement(drawn(chart, charts)));
    String rules = "<style>\n" + screen + new WebFonts(fonts).rules(drawn) + "</style>\n</head>";
    return drawn
        .replaceFirst("<head>", Matcher.quoteReplacement("<head>\n" + SHUT))
        .replaceFirst("</head>", Matcher.quoteReplacement(rules));
  }

  private String drawn(MatchResult object, Map<String, ChartSpec> charts) {
    ChartSpec chart = charts.get(object.group(1));
    if (chart == null) {
      throw new IllegalArgumentException(
          "the page shows a chart that is not given: " + object.group(1));
    }
    String style = object.group(2);
    return Svg.of(chart, fonts, pixels(WIDTH, style), pixels(HEIGHT, style));
  }

  private static double pixels(Pattern length, String style) {
    Matcher found = length.matcher(style);
    if (!found.find()) {
      throw new IllegalArgumentException("a chart needs its size in mm but has " + style);
    }
    return Double.parseDouble(found.group(1)) * PIXELS_PER_MM;
  }
}
