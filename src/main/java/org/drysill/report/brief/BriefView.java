package org.drysill.report.brief;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drysill.report.block.Section;
import org.drysill.report.chart.ChartSpec;

/**
 * The short report in finished words and numbers, ready for its template.
 *
 * @param language BCP 47 tag of its language
 * @param paper {@code A4} or {@code letter}
 * @param address how the home is called
 * @param visit the visit in one line
 * @param author who took the readings; may be empty
 * @param keywords words to find it by
 * @param verdict the first page
 * @param sections what follows, in order
 * @param charts the charts by id
 * @param wanting keys for which this language has no words, so that the results' own stand there
 * @param said the words of the templates themselves, by key
 */
public record BriefView(
    String language,
    String paper,
    String address,
    String visit,
    String author,
    List<String> keywords,
    Section verdict,
    List<Section> sections,
    Map<String, ChartSpec> charts,
    List<String> wanting,
    Map<String, String> said) {
  /** Copies the collections. */
  public BriefView {
    keywords = List.copyOf(keywords);
    sections = List.copyOf(sections);
    charts = Collections.unmodifiableMap(new LinkedHashMap<>(charts));
    wanting = List.copyOf(wanting);
    said = Map.copyOf(said);
  }

  /** The title of the document. */
  public String title() {
    return address + ": " + verdict.heading();
  }
}
