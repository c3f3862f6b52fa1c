package org.drysill.report.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.reference.Citation;
import org.drysill.yaml.RecordParts;

/**
 * Every figure, finding, assumption and citation within records, each id once, in the order in
 * which they stand there.
 */
public final class Found {
  private final Map<String, Figure> figures = new LinkedHashMap<>();
  private final Map<String, Finding> findings = new LinkedHashMap<>();
  private final Map<String, Assumption> assumptions = new LinkedHashMap<>();
  private final Map<String, Citation> citations = new LinkedHashMap<>();

  private Found() {}

  /** Looks through results. */
  public static Found in(List<?> results) {
    Found found = new Found();
    found.visit(results);
    return found;
  }

  /** The figure with an id. */
  public Optional<Figure> figure(String id) {
    return Optional.ofNullable(figures.get(id));
  }

  /** All figures. */
  public List<Figure> figures() {
    return new ArrayList<>(figures.values());
  }

  /** All findings. */
  public List<Finding> findings() {
    return new ArrayList<>(findings.values());
  }

  /** All assumptions. */
  public List<Assumption> assumptions() {
    return new ArrayList<>(assumptions.values());
  }

  /** All citations. */
  public List<Citation> citations() {
    return new ArrayList<>(citations.values());
  }

  private void visit(Object value) {
    if (value instanceof Iterable<?> many) {
      many.forEach(this::visit);
    } else if (value instanceof Map<?, ?> map) {
      map.values().forEach(this::visit);
    } else if (value instanceof Optional<?> optional) {
      optional.ifPresent(this::visit);
    } else if (value instanceof Record record) {
      note(record);
      RecordParts.of(record).forEach(part -> visit(part.in(record)));
    }
  }

  private void note(Record record) {
    if (record instanceof Figure figure) {
      figures.putIfAbsent(figure.id(), figure);
    } else if (record instanceof Finding finding) {
      findings.putIfAbsent(finding.id(), finding);
    } else if (record instanceof Assumption assumption) {
      assumptions.putIfAbsent(assumption.id(), assumption);
    } else if (record instanceof Citation citation) {
      citations.putIfAbsent(citation.text(), citation);
    }
  }
}
