package org.drysill.report.appendix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Fact;
import org.drysill.report.block.Facts;
import org.drysill.report.block.Line;
import org.drysill.report.block.Listing;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;
import org.drysill.report.subject.Provenance;
import org.drysill.report.words.Words;
import org.drysill.yaml.Problem;

/** From what and by what the report was made, and the survey as it was read. */
final class RecordChapter implements Chapter {
  private static final String AGAIN =
      " The same survey and the same version give the same report, byte for byte.";
  private static final String WHOLE =
      "The survey and the results travel inside this file as attachments." + AGAIN;
  private static final String SHARED =
      "The results travel inside this file as an attachment; the survey does not, for this is a copy"
          + " to share. Whoever has the whole report can see by the hash that both are of one"
          + " survey."
          + AGAIN;
  private static final int LONGEST_LISTING = 2000;

  @Override
  public Optional<Section> write(Desk desk) {
    Provenance provenance = desk.subject().provenance();
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Made by", provenance.program() + " " + provenance.version()));
    facts.add(new Fact("Published figures", provenance.data()));
    provenance.inputs().forEach(i -> facts.add(new Fact(i.name(), "SHA-256 " + i.sha256())));
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Prose(List.of(), "", "", desk.subject().file().shared() ? SHARED : WHOLE));
    blocks.add(new Facts(List.of(), facts));
    warnings(blocks, desk.subject().file().warnings());
    if (!desk.subject().file().shared()) {
      blocks.add(new Subhead(List.of(), "The survey as it was read"));
      blocks.add(listing(desk.subject().file().text()));
    }
    return Optional.of(
        new Section(
            "record",
            "From what this report was made",
            "Input record and provenance",
            false,
            blocks));
  }

  private static void warnings(List<Block> blocks, List<Problem> warnings) {
    if (!warnings.isEmpty()) {
      blocks.add(new Subhead(List.of(), "What the reader of the survey remarked"));
      blocks.add(
          new Bullets(
              List.of(),
              warnings.stream()
                  .map(
                      w ->
                          "Line "
                              + w.place().line()
                              + ", "
                              + w.key()
                              + ": "
                              + Words.sentence("found " + w.found() + ", expected " + w.expected()))
                  .toList()));
    }
  }

  private static Listing listing(String text) {
    List<String> read = text.lines().limit(LONGEST_LISTING).toList();
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < read.size(); i++) {
      // Empty lines say nothing; the numbers tell where they were.
      if (!read.get(i).isBlank()) {
        lines.add(new Line(Integer.toString(i + 1), indented(read.get(i))));
      }
    }
    return new Listing(List.of(), lines);
  }

  /** Leading spaces carry meaning in the file; no-break spaces keep them on the page. */
  private static String indented(String line) {
    int at = 0;
    while (at < line.length() && line.charAt(at) == ' ') {
      at++;
    }
    return "\u00a0".repeat(Math.min(at, 24)) + line.substring(at);
  }
}
