package org.drysill.verify;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.drysill.report.evidence.NotAReport;
import org.drysill.report.evidence.ReportFile;

/** Holds the PDF against the one that its files give again: its bytes, or else its pages. */
final class Pages {
  private final byte[] pdf;
  private final ReportFile file;
  private final byte[] again;

  /**
   * A comparison.
   *
   * @param pdf the bytes of the report
   * @param file what is in it
   * @param again the bytes of the report that was made again
   */
  Pages(byte[] pdf, ReportFile file, byte[] again) {
    this.pdf = pdf;
    this.file = file;
    this.again = again;
  }

  Statement compared(Origin origin, Sources sources) throws NotAReport, IOException {
    if (!origin.same()) {
      return Statement.notCompared("The pages: another version, or other data, words them.");
    }
    if (!sources.missingPictures().isEmpty()) {
      return new Statement(
          Statement.State.NOT_COMPARED,
          "The pages: photographs are not inside; --files gives them.",
          sources.missingPictures());
    }
    if (Arrays.equals(pdf, again)) {
      return Statement.agrees("The files inside give the same PDF again, byte for byte.");
    }
    try (ReportFile remade = ReportFile.of(again)) {
      return pageByPage(remade);
    }
  }

  private Statement pageByPage(ReportFile remade) throws NotAReport {
    List<String> differing = differing(remade);
    if (!differing.isEmpty()) {
      return Statement.differs("The pages are not those that the files inside give.", differing);
    }
    if (!file.producer().equals(remade.producer())) {
      return Statement.notCompared(
          "The bytes: the file was made by "
              + file.producer()
              + ", this is "
              + remade.producer()
              + ". Words and lines of all pages agree; fonts, pictures and marks of the file were"
              + " not compared.");
    }
    return Statement.differs(
        "The PDF is not the one that the files inside give, though words and lines of its pages"
            + " are: something else in it was changed.",
        List.of("first at byte " + Arrays.mismatch(pdf, again)));
  }

  private List<String> differing(ReportFile remade) throws NotAReport {
    List<String> differing = new ArrayList<>();
    if (file.pages() != remade.pages()) {
      differing.add(file.pages() + " pages in the file, " + remade.pages() + " made again");
    }
    for (int page = 1; page <= Math.min(file.pages(), remade.pages()); page++) {
      // Equal marks are equal words, and quicker to compare.
      if (!file.marks(page).equals(remade.marks(page))) {
        differing.add("page " + page + words(file.words(page), remade.words(page)));
      }
    }
    return differing;
  }

  /** The first line that is not the same. */
  private static String words(String there, String again) {
    if (there.equals(again)) {
      return ": the same words, but other lines or places";
    }
    List<String> one = there.lines().toList();
    List<String> other = again.lines().toList();
    int line = 0;
    while (line < Math.min(one.size(), other.size()) && one.get(line).equals(other.get(line))) {
      line++;
    }
    return ": \"" + at(one, line) + "\" in the file, \"" + at(other, line) + "\" made again";
  }

  private static String at(List<String> lines, int line) {
    return line < lines.size() ? lines.get(line).strip() : "";
  }
}
