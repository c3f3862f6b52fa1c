package org.drysill.report.pdf.economy;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which marked contents of a page become one: those that follow each other on the page and in the
 * element of the structure that holds both, such as the lines of a paragraph.
 */
final class Joins {
  private static final Pattern NUMBERED = Pattern.compile("/\\w+ <</MCID (\\d+)>> BDC");

  private final Map<Integer, Integer> before = new HashMap<>();
  private final Set<Integer> joined = new LinkedHashSet<>();

  /** Takes note that an element holds one content directly after another. */
  void follows(int content, int next) {
    before.put(next, content);
  }

  /** Whether a mark goes on with what the mark before it began; counted as joined where it does. */
  boolean join(String first, String next) {
    int content = number(next);
    boolean goesOn = content >= 0 && before.getOrDefault(content, -1) == number(first);
    if (goesOn) {
      joined.add(content);
    }
    return goesOn;
  }

  /** The contents that are part of the one before. */
  Set<Integer> joined() {
    return joined;
  }

  private static int number(String mark) {
    Matcher numbered = NUMBERED.matcher(mark);
    return numbered.matches() ? Integer.parseInt(numbered.group(1)) : -2;
  }
}
