package org.drysill.report.appendix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Line;
import org.drysill.report.block.Listing;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.evidence.FilesInside;
import org.drysill.report.evidence.InputFile;
import org.drysill.report.subject.Desk;
import org.drysill.report.subject.Provenance;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;
import org.drysill.yaml.Problem;

/** From what and by what the report was made, and the survey as it was read. */
final class RecordChapter implements Chapter {
  private static final String WHOLE =
      "What this report was made from travels inside this file, with the results of which these"
          + " pages are the readable part. "
          + InputFile.WHAT_IS_INSIDE
          + " A digest (SHA-256) identifies each of them: other content has another digest.";
  private static final String SHARED =
      "The results travel inside this file; the survey does not, for this is a copy to share. Whoever"
          + " has the whole report can see by the digests (SHA-256) that both are of one survey.";
  private static final int LONGEST_LISTING = 2000;

  private static final List<String> HOW_TO_CHECK =
      List.of(
          "Take the files out of this PDF: any PDF viewer lists them as attachments. Their names"
              + " tell the folders that they belong in.",
          "Compare their digests with those printed above.",
          "Make the report again from them. The same files and the same version of the program and"
              + " its data give the same figures, and on the same Java the same PDF, byte for byte."
              + " The command drysill verify does all of this and says what does not agree.");

  @Override
  public Optional<Section> write(Desk desk) {
    Provenance provenance = desk.subject().provenance();
    List<Block> blocks = new ArrayList<>();
    boolean shared = desk.subject().file().shared();
    blocks.add(new Prose(List.of(), "", "", shared ? SHARED : WHOLE));
    blocks.add(files(provenance, shared));
    if (!shared) {
      blocks.add(new Subhead(List.of(), "How to check it"));
      blocks.add(new Bullets(List.of(), HOW_TO_CHECK));
    }
    warnings(blocks, desk.subject().file().warnings());
    if (!shared) {
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

  /** What went in and came out, across the page: a digest takes a line. */
  private static Grid files(Provenance provenance, boolean shared) {
    List<Row> rows = new ArrayList<>();
    rows.add(row("Made by", provenance.program() + " " + provenance.version(), ""));
    rows.add(row("Rule set that governs", provenance.ruleSet(), ""));
    rows.add(
        row(
            "Published figures",
            provenance.data().files() + " data files that came with the program.",
            provenance.data().sha256()));
    provenance.inputs().forEach(input -> rows.add(row(input, shared)));
    List<String> names = provenance.inputs().stream().map(Provenance.Input::name).toList();
    provenance
        .results()
        .ifPresent(
            digest ->
                rows.add(
                    row(
                        FilesInside.nameOfResults(names),
                        "Every figure with its working.",
                        digest)));
    return Grid.wide(
            "",
            List.of(Cells.words("what", 52), Cells.words("what it is, and its digest")),
            rows,
            "")
        .densely();
  }

  private static Row row(Provenance.Input input, boolean shared) {
    String where = input.inside() || shared ? "." : ", not inside this file.";
    return row(input.name(), input.role().description() + where, input.sha256());
  }

  private static Row row(String name, String text, String digest) {
    return Cells.row(
        Cells.text(name), Cells.text(text, digest.isEmpty() ? "" : "SHA-256 " + grouped(digest)));
  }

  /** Eight digits at a time, as they are compared by eye. */
  private static String grouped(String digest) {
    return digest.replaceAll("(.{8})(?=.)", "$1 ");
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
