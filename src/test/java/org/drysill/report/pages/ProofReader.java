package org.drysill.report.pages;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.drysill.report.Report;

/** Says what is wrong with the pages of a report. */
public final class ProofReader {
  /**
   * The least share of the height that a page uses, the last one apart: a tall figure may follow.
   */
  static final double LEAST_SHARE = 0.33;

  /** Chapters to be kept or signed apart, which begin a page of their own. */
  private static final Set<String> OWN_PAGES = Set.of("House facts to keep", "Signatures");

  /** The smallest type, of notes, charts and small print [pt]. */
  static final double LEAST_TYPE = 7.8;

  private static final double EDGE = 10 * 72 / 25.4;
  private static final Pattern WORKING = Pattern.compile("w\\d+(\\.\\d+)?");
  private static final Pattern ID = Pattern.compile(" id=\"([^\"]+)\"");
  private static final Pattern HREF = Pattern.compile(" href=\"#([^\"]+)\"");

  /** A number of a working within the text of the page; a name of the survey may read alike. */
  private static final Pattern SPOKEN =
      Pattern.compile("(?<=[( ,>])(w\\d+(?:\\.\\d+)?)(?=[),;<.])(?!\\.\\d)");

  private ProofReader() {}

  /** All that is wrong, one line each; empty for a clean report. */
  public static List<String> faults(Report report) {
    PrintedReport printed = PrintedReport.of(report.pdf());
    List<String> faults = new ArrayList<>();
    for (Sheet sheet : printed.sheets()) {
      faults.addAll(outside(sheet));
      faults.addAll(small(sheet));
      faults.addAll(sheet.overlaps());
      if (sheet.number() < printed.sheets().size()) {
        if (OWN_PAGES.stream().noneMatch(printed.sheets().get(sheet.number())::beginsWith)) {
          faults.addAll(thin(sheet));
        }
        faults.addAll(orphan(sheet, printed.sheets().get(sheet.number())));
      }
    }
    faults.addAll(contents(printed));
    faults.addAll(links(printed));
    faults.addAll(references(report.html()));
    return faults;
  }

  static List<String> outside(Sheet sheet) {
    Rectangle2D paper =
        new Rectangle2D.Double(EDGE, EDGE, sheet.width() - 2 * EDGE, sheet.height() - 2 * EDGE);
    return sheet.glyphs().stream()
        .filter(g -> g.clipped() || !paper.contains(g.box()))
        .map(g -> "cut or at the edge, " + sheet.place(g))
        .toList();
  }

  /** Type that would not be read on a copy at 70 %, where 7.8 pt is 5.5 pt. */
  static List<String> small(Sheet sheet) {
    return sheet.glyphs().stream()
        .filter(g -> g.size() < LEAST_TYPE - 0.05)
        .map(g -> String.format("type of %.1f pt, %s", g.size(), sheet.place(g)))
        .toList();
  }

  static List<String> thin(Sheet sheet) {
    return sheet.share() < LEAST_SHARE
        ? List.of(String.format("page %d uses %.0f %% only", sheet.number(), 100 * sheet.share()))
        : List.of();
  }

  /** A heading, a title, a table's head or the head of a group at the foot of a page. */
  static List<String> orphan(Sheet sheet, Sheet next) {
    List<Glyph> line = sheet.lastLine();
    if (line.isEmpty()) {
      return List.of();
    }
    boolean bold = line.stream().allMatch(Glyph::bold);
    boolean alone =
        line.stream()
                .anyMatch(
                    g ->
                        g.within("THead")
                            || g.place().kinds().stream().anyMatch(ProofReader::isHeading))
            || (bold
                && line.stream().allMatch(g -> g.within("P") && !g.within("TD"))
                && isWhole(List.of(sheet, next), line))
            || (bold
                && line.stream().allMatch(g -> g.within("TD"))
                && gap(line) < 20
                && !text(line).matches("(w\\d+(\\.\\d+)?)+"));
    return alone
        ? List.of("page " + sheet.number() + " ends with a heading: " + text(line))
        : List.of();
  }

  /** Whether the paragraphs in a line are bold to their ends: no first words of more. */
  private static boolean isWhole(List<Sheet> sheets, List<Glyph> line) {
    Set<Integer> blocks = line.stream().map(g -> g.place().block()).collect(Collectors.toSet());
    return sheets.stream()
        .flatMap(s -> s.body().stream())
        .filter(g -> blocks.contains(g.place().block()))
        .allMatch(Glyph::bold);
  }

  private static boolean isHeading(String kind) {
    return kind.matches("H\\d");
  }

  /** The widest space between two letters of a line [pt]. */
  private static double gap(List<Glyph> line) {
    double widest = 0;
    for (int i = 1; i < line.size(); i++) {
      widest = Math.max(widest, line.get(i).box().getX() - line.get(i - 1).box().getMaxX());
    }
    return widest;
  }

  private static String text(List<Glyph> line) {
    return line.stream().map(Glyph::text).collect(Collectors.joining());
  }

  /** Page numbers of the contents. */
  static List<String> contents(PrintedReport printed) {
    List<PrintedReport.Link> numbered =
        printed.links().stream().filter(l -> l.text().matches("\\d+")).toList();
    List<String> faults = new ArrayList<>();
    if (numbered.size() < 5) {
      faults.add("the contents have " + numbered.size() + " page numbers");
    }
    for (PrintedReport.Link link : numbered) {
      if (Integer.parseInt(link.text()) != link.target()) {
        faults.add("the contents say page " + link.text() + " for what is on " + link.target());
      }
    }
    return faults;
  }

  /** Links lead somewhere, and those of workings to the line of that number. */
  static List<String> links(PrintedReport printed) {
    List<String> faults = new ArrayList<>();
    for (PrintedReport.Link link : printed.links()) {
      if (link.target() < 1) {
        faults.add("page " + link.page() + ": " + link.text() + " leads nowhere");
      } else if (WORKING.matcher(link.text()).matches()) {
        Sheet target = printed.sheets().get(link.target() - 1);
        Rectangle2D there = new Rectangle2D.Double(0, link.top() - 4, target.width(), 30);
        if (!target.text(there).contains(link.text())) {
          faults.add(
              "page " + link.page() + ": " + link.text() + " leads to " + target.text(there));
        }
      }
    }
    return faults;
  }

  /** What the page text refers to is there. */
  static List<String> references(String html) {
    Set<String> ids = all(ID, html);
    Set<String> missing = all(HREF, html);
    missing.removeAll(ids);
    List<String> faults = new ArrayList<>();
    missing.forEach(id -> faults.add("no element has the id " + id));
    int listing = html.indexOf("<table class=\"fixed wide listing");
    Set<String> spoken = all(SPOKEN, listing < 0 ? html : html.substring(0, listing));
    spoken.removeAll(ids);
    spoken.forEach(number -> faults.add("no working has the number " + number));
    return faults;
  }

  private static Set<String> all(Pattern pattern, String html) {
    Set<String> found = new HashSet<>();
    for (Matcher m = pattern.matcher(html); m.find(); ) {
      found.add(m.group(1));
    }
    return found;
  }
}
