package org.drysill.verify;

import java.util.List;

/**
 * What was found about a report.
 *
 * @param statements the findings in the order in which they were looked for
 */
public record Verified(List<Statement> statements) {
  /** Copies the list. */
  public Verified {
    statements = List.copyOf(statements);
  }

  /** True where nothing that was compared differs. */
  public boolean agrees() {
    return statements.stream().noneMatch(s -> s.state() == Statement.State.DIFFERS);
  }
}
