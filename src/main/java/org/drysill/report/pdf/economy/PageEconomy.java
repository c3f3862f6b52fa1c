package org.drysill.report.pdf.economy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;

/**
 * One page with what belongs to it. The layout library gives each empty background of each box a
 * dictionary of its own and each link a frame of its own: two thirds of all objects of a file.
 */
final class PageEconomy {
  private static final String PAGINATION = "Pagination";

  private PageEconomy() {}

  static void apply(PDDocument document, PDPage page, Joins joins) throws IOException {
    COSDictionary resources = page.getResources().getCOSObject();
    COSDictionary properties = resources.getCOSDictionary(COSName.PROPERTIES);
    String content = rewritten(page, properties, joins);
    PDStream stream = new PDStream(document);
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(content.getBytes(StandardCharsets.ISO_8859_1));
    }
    page.setContents(stream);
    if (properties != null && !content.contains("/Prop")) {
      resources.removeItem(COSName.PROPERTIES);
    }
    keepWithin(resources, COSName.FONT);
    for (PDAnnotation annotation : page.getAnnotations()) {
      keepWithin(annotation.getCOSObject(), COSName.A);
      keepWithin(annotation.getCOSObject(), COSName.BS);
    }
  }

  private static String rewritten(PDPage page, COSDictionary properties, Joins joins)
      throws IOException {
    try (InputStream in = page.getContents()) {
      String content = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
      return new ContentEconomy(name -> isPagination(properties, name), joins).rewritten(content);
    }
  }

  private static boolean isPagination(COSDictionary properties, String name) {
    COSDictionary dictionary =
        properties == null ? null : properties.getCOSDictionary(COSName.getPDFName(name));
    return dictionary != null && PAGINATION.equals(dictionary.getNameAsString(COSName.TYPE));
  }

  /** A small dictionary that one place alone uses needs no object of its own. */
  private static void keepWithin(COSDictionary owner, COSName key) {
    COSBase small = owner.getDictionaryObject(key);
    if (small instanceof COSDictionary) {
      small.setDirect(true);
    }
  }
}
