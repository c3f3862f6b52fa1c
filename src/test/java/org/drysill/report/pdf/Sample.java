package org.drysill.report.pdf;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Verdict;
import org.drysill.physics.Range;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.CostEffect;
import org.drysill.report.chart.MonthLines;
import org.drysill.report.chart.RangeBars;
import org.drysill.report.chart.RuleBars;
import org.drysill.report.chart.SourceBars;
import org.drysill.report.chart.Tick;
import org.drysill.report.page.RangeBar;
import org.drysill.report.page.Templates;

/** A document with everything that the engine can put on a page. Its figures are invented. */
public final class Sample {
  /** Longer than any line of the page. */
  public static final String LONGEST = "Ventilator".repeat(30);

  /** Text that a careless page maker would stumble over. */
  public static final List<String> WORDS =
      List.of(
          "<script>alert(1)</script> & \"quotes\" 'apostrophes'",
          "${title} #{1} <#list x as y> ${7*7} [=1]",
          "Spore 🦠 and bell \u0007 end",
          "Hebrew: שלום עולם (טחב), then English",
          "Arrows → ✓ ⚠ ✗ ≤ ≥ ² ³ ⁻ − Δ φ η λ ψ; Zażółć gęślą jaźń, Příliš žluťoučký, Ελληνικά",
          LONGEST);

  private Sample() {}

  private record Row(String label, String provided, String asked, RangeBar bar, Verdict verdict) {}

  /** The charts by id, each kind at least once. */
  public static Map<String, ChartSpec> charts() {
    Map<String, ChartSpec> charts = new LinkedHashMap<>();
    charts.put("range", range());
    charts.put("rules", rules());
    charts.put(
        "months",
        months(List.of(8.1, 8.4, 9.9, 11.8, 14.2, 16.4, 17.6, 17.4, 15.6, 12.9, 10.0, 8.5)));
    charts.put(
        "wet",
        months(List.of(12.9, 13.1, 13.4, 14.0, 15.1, 16.6, 17.9, 17.8, 16.3, 14.6, 13.5, 13.0)));
    charts.put("sources", sources());
    charts.put("cost", cost());
    return charts;
  }

  /** The text of the page. */
  public static String page() {
    return page("A4");
  }

  /** The text of the page on a paper. */
  public static String page(String paper) {
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("title", "The air is short, and the north kitchen corner pays for it");
    model.put("paper", paper);
    model.put("charts", charts());
    model.put("words", WORDS);
    model.put("note", "Read at breast height, door closed for an hour");
    model.put("longest", LONGEST);
    model.put(
        "entries",
        List.of(
            entry("found", "What we found"),
            entry("cold", "Where water appears"),
            entry("do", "What to do, in this order"),
            entry("words", "Words as they were written"),
            entry("long", "A long table")));
    model.put(
        "columns",
        List.of(
            Map.of("title", "flow, l/s"),
            Map.of("title", "provided", "number", true),
            Map.of("title", "asked", "number", true),
            Map.of("title", "range and requirement", "width", 40),
            Map.of("title", "verdict")));
    model.put(
        "rows",
        List.of(
            row("Whole home", "20 (15–26)", "31", new Range(15, 20, 26), 31, Verdict.SHORT),
            row("Kitchen extract", "11 (10–12)", "60", new Range(10, 11, 12), 60, Verdict.SHORT),
            row("Bathroom extract", "14 (10–17)", "15", new Range(10, 14, 17), 15, Verdict.UNKNOWN),
            row("Purge, all rooms", "51 (44–60)", "40", new Range(44, 51, 60), 40, Verdict.MEETS)));
    return new Templates().render("sample.ftlh", model);
  }

  /** What the file says of itself. */
  public static PdfMetadata metadata() {
    return new PdfMetadata(
        "Air & water: \"4 <Sample> Terrace\"",
        "R. Example & Co",
        "A survey <of> a home",
        List.of("ventilation", "condensation & mould"),
        "en",
        "Drysill 0.1.0",
        LocalDate.of(2026, 1, 22));
  }

  /** Two files that travel inside. */
  public static List<Attachment> attachments() {
    return List.of(
        Attachment.ofText(
            "survey.yaml",
            "application/yaml",
            "The survey",
            Attachment.Relation.SOURCE,
            "drysill: 1\n"),
        Attachment.ofText(
            "results.json", "application/json", "The results", Attachment.Relation.DATA, "{}\n"));
  }

  /** The file. */
  public static byte[] pdf() {
    return new PdfRenderer().render(page(), charts(), metadata(), attachments());
  }

  private static Row row(
      String label, String provided, String asked, Range range, double required, Verdict verdict) {
    return new Row(label, provided, asked, RangeBar.of(range, Optional.of(required), 70), verdict);
  }

  private static Map<String, Object> entry(String id, String title) {
    return Map.of("id", id, "title", title);
  }

  private static ChartText text(String title, String unit) {
    return new ChartText(
        title, unit, "measured 22 January 2026", title + " (described in the table)");
  }

  private static RangeBars range() {
    return new RangeBars(
        text("The kitchen moves a sixth of the air that is asked of it", "air flow, l/s"),
        Axis.fromZero(62, 4),
        List.of(
            bar("Whole home", new Range(15, 20, 26), "20 (15–26)", 31, Verdict.SHORT),
            bar("Kitchen extract", new Range(10, 11, 12), "11 (10–12)", 60, Verdict.SHORT),
            bar(
                "Bathroom extract on the first floor",
                new Range(10, 14, 17),
                "14 (10–17)",
                15,
                Verdict.UNKNOWN),
            bar("Cloakroom", new Range(7, 8, 9), "8 (7–9)", 6, Verdict.MEETS)));
  }

  private static RangeBars.Row bar(
      String label, Range range, String words, double asked, Verdict verdict) {
    return new RangeBars.Row(
        label, range, words, Optional.of(asked), "asked " + (int) asked, Optional.of(verdict));
  }

  private static RuleBars rules() {
    return new RuleBars(
        text("Every rule set asks for more than the home has", "whole-home air flow, l/s"),
        Axis.fromZero(45, 5),
        Optional.of(
            new RuleBars.Second("l/s", "ach", List.of(new Tick(0, "0"), new Tick(28.3, "0.5")))),
        List.of(
            new RuleBars.Row("England, existing home", List.of(31.0), "31", true, false),
            new RuleBars.Row("By floor area, 0.3 l/s per m²", List.of(25.2), "25.2", false, false),
            new RuleBars.Row(
                "North America, by area and bedrooms", List.of(42.0), "42", false, false),
            new RuleBars.Row("Europe, category II", List.of(29.4), "29.4", false, false),
            new RuleBars.Row("Per person", List.of(), "needs occupants", false, false),
            new RuleBars.Row("Told: 0.5 ach", List.of(28.3), "28.3", false, true)),
        Optional.of(new RuleBars.Band(new Range(15, 20, 26), "provided 20 (15–26)")));
  }

  private static MonthLines months(List<Double> surface) {
    List<Double> dew =
        List.of(11.5, 11.2, 11.0, 11.4, 12.6, 14.2, 15.6, 15.5, 14.0, 12.6, 11.9, 11.6);
    List<Double> air =
        List.of(18.9, 18.9, 19.0, 19.3, 19.9, 21.0, 22.1, 22.0, 20.7, 19.6, 19.1, 19.0);
    return new MonthLines(
        text(
            "The kitchen window lies below the dew point from October to April", "temperature, °C"),
        Axis.around(5, 25, 4),
        MonthLines.JANUARY_FIRST,
        List.of(
            new MonthLines.Line("kitchen air", air, MonthLines.Style.QUIET),
            new MonthLines.Line("window, lower edge", surface, MonthLines.Style.MAIN),
            new MonthLines.Line("dew point of the air", dew, MonthLines.Style.LIMIT)),
        Optional.of(new MonthLines.Below(1, 2, "water on the pane")));
  }

  private static SourceBars sources() {
    return new SourceBars(
        text("People and washing make most of the moisture", "moisture, kg a day"),
        Axis.fromZero(11, 5),
        List.of(
            source("Three people", new Range(2.6, 3.2, 4.0), "3.2 (2.6–4.0)", false),
            source(
                "Clothes dried indoors, four loads a week",
                new Range(0.9, 1.3, 1.7),
                "1.3 (0.9–1.7)",
                false),
            source("Cooking with gas, no lids", new Range(0.8, 1.2, 2.0), "1.2 (0.8–2.0)", false),
            source("Showers", new Range(0.5, 0.8, 1.2), "0.8 (0.5–1.2)", false),
            source("Fish tank", Range.exactly(0.4), "0.4", false),
            source("All sources", new Range(5.2, 6.9, 9.3), "6.9 (5.2–9.3)", true)));
  }

  private static SourceBars.Row source(String label, Range value, String words, boolean sum) {
    return new SourceBars.Row(label, value, words, sum);
  }

  private static CostEffect cost() {
    return new CostEffect(
        text("The kitchen fan does most for its price", "price and moisture removed"),
        Axis.fromZero(4800, 5),
        "price, £, all work included",
        Axis.fromZero(55, 5),
        "less moisture in the air, %",
        List.of(
            point("1", "Kitchen extract", new Range(300, 430, 900), new Range(29, 38, 47), true),
            point("2", "Dry washing with fan on", new Range(0, 0, 0), new Range(8, 12, 17), true),
            point("3", "Secondary glazing", new Range(1400, 1900, 2600), new Range(0, 2, 4), true),
            point(
                "4",
                "Heat recovery pair",
                new Range(900, 1150, 1400),
                new Range(18, 25, 33),
                false),
            point(
                "5",
                "Background ventilators",
                new Range(240, 360, 520),
                new Range(9, 14, 20),
                false),
            point("6", "Dehumidifier", new Range(150, 220, 300), new Range(7, 15, 22), false),
            point(
                "7",
                "Balanced system with heat recovery",
                new Range(3200, 4000, 4800),
                new Range(38, 46, 55),
                false),
            point(
                "8", "Bathroom extract", new Range(280, 400, 600), new Range(10, 16, 21), false)));
  }

  private static CostEffect.Point point(
      String number, String label, Range cost, Range effect, boolean chosen) {
    return new CostEffect.Point(number, label, cost, effect, chosen);
  }
}
