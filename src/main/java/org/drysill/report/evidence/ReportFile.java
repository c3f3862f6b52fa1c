package org.drysill.report.evidence;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * A PDF that claims to be a report. It may be anything: nothing in it is believed, run or followed.
 */
public final class ReportFile implements AutoCloseable {
  private static final int MOST_PAGES = 5000;

  /** What the library has to say of a broken file is said in one sentence by {@link NotAReport}. */
  private static final Logger LIBRARY = Logger.getLogger("org.apache.pdfbox");

  private static final Logger FONT_LIBRARY = Logger.getLogger("org.apache.fontbox");

  private final PDDocument document;
  private final String producer;
  private final Map<String, byte[]> files;
  private final Map<Integer, String> words = new TreeMap<>();

  static {
    LIBRARY.setLevel(Level.OFF);
    FONT_LIBRARY.setLevel(Level.OFF);
  }

  private ReportFile(PDDocument document) throws IOException, NotAReport {
    if (document.isEncrypted()) {
      throw new NotAReport("is encrypted; a report is not");
    }
    if (document.getNumberOfPages() > MOST_PAGES) {
      throw new NotAReport("has more than " + MOST_PAGES + " pages");
    }
    this.document = document;
    this.producer =
        Optional.ofNullable(document.getDocumentInformation().getProducer()).orElse("unknown");
    this.files = EmbeddedFiles.of(document);
  }

  /**
   * Opens a file.
   *
   * @param bytes its bytes
   * @throws NotAReport where it is broken, encrypted, or means harm
   */
  public static ReportFile of(byte[] bytes) throws NotAReport {
    Inflation.check(bytes);
    return guarded(() -> opened(Loader.loadPDF(bytes)));
  }

  private static ReportFile opened(PDDocument document) throws IOException, NotAReport {
    try {
      return new ReportFile(document);
    } catch (IOException | NotAReport | RuntimeException refused) {
      document.close();
      throw refused;
    }
  }

  /** The program that says that it wrote the file, with its version and that of Java. */
  public String producer() {
    return producer;
  }

  /** The files inside by their names, each of which stays within its folder. */
  public Map<String, byte[]> files() {
    return files;
  }

  /** The number of pages. */
  public int pages() {
    return document.getNumberOfPages();
  }

  /**
   * The words of a page.
   *
   * @param page its number from 1
   */
  public String words(int page) throws NotAReport {
    if (!words.containsKey(page)) {
      words.put(page, guarded(() -> stripped(page)));
    }
    return words.get(page);
  }

  private String stripped(int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    stripper.setLineSeparator("\n");
    return stripper.getText(document);
  }

  /**
   * A digest of what a page shows, its words and lines and their places.
   *
   * @param page its number from 1
   */
  public String marks(int page) throws NotAReport {
    return guarded(() -> Sha256.of(document.getPage(page - 1).getContents().readAllBytes()));
  }

  /** True for the name of a file that stays within its folder, on any system. */
  public static boolean isSafe(String name) {
    return EmbeddedFiles.isSafe(name);
  }

  @Override
  public void close() throws IOException {
    document.close();
  }

  /** Something that a file can make fail. */
  private interface Look<T> {
    T look() throws IOException, NotAReport;
  }

  private static <T> T guarded(Look<T> look) throws NotAReport {
    try {
      return look.look();
    } catch (InvalidPasswordException locked) {
      throw new NotAReport("is encrypted; a report is not");
    } catch (IOException | RuntimeException broken) {
      // The library fails in many ways over a file that is not as it should be.
      throw new NotAReport("cannot be read as a PDF");
    } catch (StackOverflowError | OutOfMemoryError harm) {
      throw new NotAReport("asks for more memory than any report");
    }
  }
}
