package org.drysill.report.pdf.economy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;

/**
 * One page with what belongs to it. The layout library gives each empty background of each box a
 * dictionary of its own and each link a frame of its own: two thirds of all objects of a file.
 */
final class PageEconomy {
  private static final String PAGINATION = "Pagination";

  private final FontCodes fonts;
  private final Map<PDPage, String> contents = new LinkedHashMap<>();
  private final Set<COSStream> charts = Collections.newSetFromMap(new IdentityHashMap<>());

  PageEconomy(FontCodes fonts) {
    this.fonts = fonts;
  }

  /** Rewrites a page; gives the new numbers of its marked contents by the old ones. */
  Map<Integer, Integer> apply(PDPage page, Joins joins) throws IOException {
    COSDictionary resources = page.getResources().getCOSObject();
    COSDictionary properties = resources.getCOSDictionary(COSName.PROPERTIES);
    Terse terse = new Terse(fonts(resources));
    String content = terse.rewritten(rewritten(page, properties, joins));
    contents.put(page, content);
    if (properties != null && !content.contains("/Prop")) {
      resources.removeItem(COSName.PROPERTIES);
    }
    charts(resources);
    keepWithin(page.getCOSObject(), COSName.RESOURCES);
    keepWithin(resources, COSName.FONT);
    keepWithin(resources, COSName.XOBJECT);
    for (PDAnnotation annotation : page.getAnnotations()) {
      keepWithin(annotation.getCOSObject(), COSName.A);
      keepWithin(annotation.getCOSObject(), COSName.BS);
      annotation.setRectangle(rounded(annotation.getRectangle()));
    }
    return terse.numbers();
  }

  /** Puts the contents into the pages. */
  void write(PDDocument document) throws IOException {
    String beginning = SharedBeginning.of(List.copyOf(contents.values()));
    PDStream shared = stream(document, beginning);
    for (Map.Entry<PDPage, String> page : contents.entrySet()) {
      String content = page.getValue();
      if (beginning.isEmpty() || !content.startsWith(beginning)) {
        page.getKey().setContents(stream(document, content));
      } else {
        PDStream rest = stream(document, content.substring(beginning.length()));
        page.getKey().setContents(List.of(shared, rest));
      }
    }
  }

  private static PDStream stream(PDDocument document, String content) throws IOException {
    PDStream stream = new PDStream(document);
    write(content, stream.getCOSObject());
    return stream;
  }

  private static String rewritten(PDPage page, COSDictionary properties, Joins joins)
      throws IOException {
    try (InputStream in = page.getContents()) {
      return new ContentEconomy(name -> isPagination(properties, name), joins).rewritten(text(in));
    }
  }

  private static boolean isPagination(COSDictionary properties, String name) {
    COSDictionary dictionary =
        properties == null ? null : properties.getCOSDictionary(COSName.getPDFName(name));
    return dictionary != null && PAGINATION.equals(dictionary.getNameAsString(COSName.TYPE));
  }

  private void charts(COSDictionary resources) throws IOException {
    COSDictionary objects = resources.getCOSDictionary(COSName.XOBJECT);
    if (objects == null) {
      return;
    }
    for (COSName name : objects.keySet()) {
      if (objects.getDictionaryObject(name) instanceof COSStream form
          && COSName.FORM.equals(form.getCOSName(COSName.SUBTYPE))
          && charts.add(form)) {
        chart(form);
      }
    }
  }

  private void chart(COSStream form) throws IOException {
    String content;
    try (InputStream in = form.createInputStream()) {
      content = ChartEconomy.rewritten(text(in));
    }
    COSDictionary resources = form.getCOSDictionary(COSName.RESOURCES);
    write(new Terse(fonts(resources)).rewritten(content), form);
    charts(resources);
    keepWithin(form, COSName.RESOURCES);
    keepWithin(resources, COSName.FONT);
  }

  /** The codes of a font by its name in a list of resources. */
  private Function<String, Optional<GlyphCodes>> fonts(COSDictionary resources) {
    COSDictionary named = resources == null ? null : resources.getCOSDictionary(COSName.FONT);
    return name -> {
      COSDictionary font = named == null ? null : named.getCOSDictionary(COSName.getPDFName(name));
      return font == null ? Optional.empty() : fonts.of(font);
    };
  }

  private static PDRectangle rounded(PDRectangle rectangle) {
    float left = tenths(rectangle.getLowerLeftX());
    float bottom = tenths(rectangle.getLowerLeftY());
    return new PDRectangle(
        left,
        bottom,
        tenths(rectangle.getUpperRightX()) - left,
        tenths(rectangle.getUpperRightY()) - bottom);
  }

  private static float tenths(float number) {
    return Math.round(number * 10) / 10f;
  }

  private static String text(InputStream in) throws IOException {
    return new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
  }

  private static void write(String content, COSStream stream) throws IOException {
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(content.getBytes(StandardCharsets.ISO_8859_1));
    }
  }

  /** A small dictionary that one place alone uses needs no object of its own. */
  private static void keepWithin(COSDictionary owner, COSName key) {
    COSBase small = owner.getDictionaryObject(key);
    if (small instanceof COSDictionary) {
      small.setDirect(true);
    }
  }
}
