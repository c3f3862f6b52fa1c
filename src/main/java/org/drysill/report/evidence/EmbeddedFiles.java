package org.drysill.report.evidence;

import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Takes the files out of a document that may mean harm. */
final class EmbeddedFiles {
  /** The most bytes that all files may have together. */
  private static final long MOST_BYTES = 256L * 1024 * 1024;

  private static final int MOST_FILES = 1000;
  private static final int DEEPEST = 16;
  private static final int LONGEST_NAME = 400;

  private final Map<String, byte[]> files = new LinkedHashMap<>();
  private long left = MOST_BYTES;

  private EmbeddedFiles() {}

  /** The files by their names, which are relative paths within one folder. */
  static Map<String, byte[]> of(PDDocument document) throws IOException, NotAReport {
    EmbeddedFiles embedded = new EmbeddedFiles();
    COSDictionary names =
        document.getDocumentCatalog().getCOSObject().getCOSDictionary(COSName.NAMES);
    if (names != null) {
      embedded.read(names.getCOSDictionary(COSName.EMBEDDED_FILES), 0);
    }
    return Collections.unmodifiableMap(embedded.files);
  }

  private void read(COSDictionary node, int depth) throws IOException, NotAReport {
    if (node == null) {
      return;
    }
    if (depth > DEEPEST) {
      throw new NotAReport("lists its files in a way that does not end");
    }
    COSArray kids = node.getCOSArray(COSName.KIDS);
    for (int i = 0; kids != null && i < kids.size(); i++) {
      if (kids.getObject(i) instanceof COSDictionary kid) {
        read(kid, depth + 1);
      }
    }
    COSArray names = node.getCOSArray(COSName.NAMES);
    for (int i = 1; names != null && i < names.size(); i += 2) {
      if (names.getObject(i) instanceof COSDictionary file) {
        add(file);
      }
    }
  }

  private void add(COSDictionary file) throws IOException, NotAReport {
    String name = name(file);
    COSStream stream =
        stream(file).orElseThrow(() -> new NotAReport("lists a file without content: " + name));
    byte[] content = content(stream, name);
    left -= content.length;
    if (files.putIfAbsent(name, content) != null) {
      throw new NotAReport("has two files of one name inside: " + name);
    }
    if (files.size() > MOST_FILES) {
      throw new NotAReport("has more than " + MOST_FILES + " files inside");
    }
  }

  private static String name(COSDictionary file) throws NotAReport {
    COSBase name = file.getDictionaryObject(COSName.UF);
    COSBase known = name == null ? file.getDictionaryObject(COSName.F) : name;
    String text = known instanceof COSString string ? string.getString() : "";
    if (!isSafe(text)) {
      throw new NotAReport(
          "has a file inside whose name leads elsewhere: "
              + text.codePoints()
                  .limit(LONGEST_NAME)
                  .map(c -> Character.isISOControl(c) ? '?' : c)
                  .collect(
                      StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append));
    }
    return text;
  }

  /** True for a path that stays within its folder, on any system. */
  static boolean isSafe(String name) {
    if (name.length() > LONGEST_NAME || name.codePoints().anyMatch(EmbeddedFiles::isOdd)) {
      return false;
    }
    for (String part : name.split("/", -1)) {
      if (part.isBlank() || part.equals(".") || part.equals("..")) {
        return false;
      }
    }
    return true;
  }

  private static boolean isOdd(int character) {
    return Character.isISOControl(character) || character == '\\' || character == ':';
  }

  private static Optional<COSStream> stream(COSDictionary file) {
    COSDictionary embedded = file.getCOSDictionary(COSName.EF);
    if (embedded == null) {
      return Optional.empty();
    }
    COSStream stream = embedded.getCOSStream(COSName.UF);
    return Optional.ofNullable(stream == null ? embedded.getCOSStream(COSName.F) : stream);
  }

  /** Not through the library, which inflates without limit. */
  private byte[] content(COSStream stream, String name) throws IOException, NotAReport {
    try (InputStream in = stream.createRawInputStream()) {
      byte[] raw = in.readAllBytes();
      COSBase filter = stream.getFilters();
      if (filter == null && raw.length <= left) {
        return raw;
      }
      if (COSName.FLATE_DECODE.equals(filter) && !stream.containsKey(COSName.DECODE_PARMS)) {
        return Inflation.inflated(raw, left, name);
      }
      throw new NotAReport("has a file inside that is packed in another way: " + name);
    }
  }
}
