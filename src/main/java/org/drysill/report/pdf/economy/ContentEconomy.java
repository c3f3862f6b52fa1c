package org.drysill.report.pdf.economy;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Page contents as the PDF library writes them, one operator a line, said shorter: nothing between
 * marks that mark nothing, rectangles as such and once, text as {@link TextObject} sets it, places
 * to a hundredth of a point (4 µm).
 */
final class ContentEconomy {
  private static final String END_OF_MARKED = "EMC";
  private static final String ARTIFACT = "/Artifact ";
  private static final String BACKGROUND = "/Artifact BMC";
  private static final String PAGINATION = "/Artifact <</Type/Pagination>> BDC";

  private final Predicate<String> isPagination;
  private final Rectangles rectangles = new Rectangles();
  private final Deque<String> marks = new ArrayDeque<>();
  private final StringBuilder out = new StringBuilder();
  private final TextObject text;
  private String[] lines = {};

  /** Where the last background ended, while nothing else follows; below zero otherwise. */
  private int endOfBackground = -1;

  /**
   * An economy of one page.
   *
   * @param isPagination whether the named property list marks running heads and feet
   * @param joins which marked contents may become one
   */
  ContentEconomy(Predicate<String> isPagination, Joins joins) {
    this.isPagination = isPagination;
    this.text = new TextObject(out, joins);
  }

  String rewritten(String content) {
    lines = content.stripTrailing().split("\n", -1);
    int at = 0;
    while (at < lines.length) {
      at = step(at);
    }
    flush();
    return out.toString();
  }

  /** Takes one line, or several that belong together; gives the line after them. */
  private int step(int at) {
    int filled = rectangles.filled(lines, at);
    if (filled > 0) {
      text.end();
      return at + filled;
    }
    Optional<String> frame = Frame.at(lines, at);
    if (frame.isPresent()) {
      write(frame.get());
      return at + Frame.LENGTH;
    }
    if (lines[at].startsWith(ARTIFACT)) {
      return artifact(at);
    }
    int piece = TextObject.pieceLength(lines, at);
    if (piece > 0) {
      out.append(rectangles.drained());
      text.piece(lines, at, piece, lines[at]);
      endOfBackground = -1;
      return at + piece;
    }
    return line(at);
  }

  private int artifact(int at) {
    if (at + 1 < lines.length && lines[at + 1].equals(END_OF_MARKED)) {
      return at + 2;
    }
    String[] words = lines[at].split(" ", -1);
    boolean pagination = words.length == 3 && isPagination.test(words[1].substring(1));
    int piece = pagination ? TextObject.pieceLength(lines, at) : 0;
    if (piece > 0) {
      out.append(rectangles.drained());
      text.piece(lines, at, piece, PAGINATION);
      endOfBackground = -1;
      return at + piece;
    }
    begin(pagination);
    return at + 1;
  }

  private void begin(boolean pagination) {
    marks.push(pagination ? PAGINATION : BACKGROUND);
    if (!pagination && endOfBackground >= 0) {
      out.setLength(endOfBackground);
      endOfBackground = -1;
    } else {
      write(marks.peek());
    }
  }

  private int line(int at) {
    int clipped = Rectangles.clipped(lines, at);
    if (clipped > 0) {
      write(Rectangles.of(lines, at).words());
      return at + clipped;
    }
    if (lines[at].equals(END_OF_MARKED)) {
      end();
    } else {
      remember(lines[at]);
      write(lines[at]);
    }
    return at + 1;
  }

  private void end() {
    flush();
    int here = out.length();
    boolean background = !marks.isEmpty() && BACKGROUND.equals(marks.pop());
    write(END_OF_MARKED);
    endOfBackground = background ? here : -1;
  }

  /** Marks are counted whatever they mark. */
  private void remember(String line) {
    text.remember(line);
    if (line.endsWith(" BDC") || line.endsWith(" BMC")) {
      marks.push(line);
    }
  }

  private void write(String line) {
    flush();
    out.append(line).append('\n');
    endOfBackground = -1;
  }

  private void flush() {
    text.end();
    out.append(rectangles.drained());
  }
}
