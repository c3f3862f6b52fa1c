package org.drysill.report.pdf.economy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.drysill.report.pdf.Sample;
import org.junit.jupiter.api.Test;

/** The way from marked content to the structure and back, in the sample document. */
class StructureTest {
  private static final Pattern CONTENT = Pattern.compile("<</MCID (\\d+)>>BDC");

  @Test
  void each_marked_content_is_held_by_one_element_that_lists_it_and_none_else_is()
      throws IOException {
    try (PDDocument document = Loader.loadPDF(Sample.pdf())) {
      int contents = 0;
      for (PDPage page : document.getPages()) {
        COSArray holders = holders(document, page.getCOSObject().getInt(COSName.STRUCT_PARENTS));
        List<Integer> marked = marked(page);
        assertThat(marked).doesNotHaveDuplicates();
        for (int content = 0; content < holders.size(); content++) {
          COSBase holder = holders.getObject(content);
          assertThat(holder instanceof COSDictionary).isEqualTo(marked.contains(content));
          if (holder instanceof COSDictionary element) {
            assertThat(contents(element, page.getCOSObject())).contains(content);
            contents++;
          }
        }
      }
      assertThat(contents).isGreaterThan(100);
    }
  }

  @Test
  void no_page_has_a_list_of_properties_and_no_span_only_passes_on() throws IOException {
    try (PDDocument document = Loader.loadPDF(Sample.pdf())) {
      for (PDPage page : document.getPages()) {
        assertThat(page.getResources().getCOSObject().containsKey(COSName.PROPERTIES)).isFalse();
      }
      List<COSDictionary> elements = new ArrayList<>();
      collect(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), elements);
      assertThat(elements).hasSizeGreaterThan(100);
      assertThat(elements)
          .noneMatch(
              element ->
                  "Span".equals(element.getNameAsString(COSName.S))
                      && !element.containsKey(COSName.A)
                      && !element.containsKey(COSName.ALT));
    }
  }

  private static void collect(COSDictionary element, List<COSDictionary> found) {
    COSBase kids = element.getDictionaryObject(COSName.K);
    for (COSBase kid : kids instanceof COSArray array ? array.toList() : listOf(kids)) {
      COSBase resolved = kid instanceof org.apache.pdfbox.cos.COSObject o ? o.getObject() : kid;
      if (resolved instanceof COSDictionary dictionary && dictionary.containsKey(COSName.S)) {
        assertThat(dictionary.getCOSDictionary(COSName.P)).isSameAs(element);
        found.add(dictionary);
        collect(dictionary, found);
      }
    }
  }

  private static List<COSBase> listOf(COSBase kid) {
    return kid == null ? List.of() : List.of(kid);
  }

  private static List<Integer> contents(COSDictionary element, COSDictionary page) {
    COSBase kids = element.getDictionaryObject(COSName.K);
    List<Integer> contents = new ArrayList<>();
    for (int i = 0; i < (kids instanceof COSArray array ? array.size() : 1); i++) {
      COSBase kid = kids instanceof COSArray array ? array.getObject(i) : kids;
      if (kid instanceof COSInteger number && element.getCOSDictionary(COSName.PG) == page) {
        contents.add(number.intValue());
      } else if (kid instanceof COSDictionary reference
          && reference.getCOSDictionary(COSName.PG) == page) {
        contents.add(reference.getInt(COSName.MCID));
      }
    }
    return contents;
  }

  private static COSArray holders(PDDocument document, int key) {
    COSDictionary tree =
        document
            .getDocumentCatalog()
            .getStructureTreeRoot()
            .getCOSObject()
            .getCOSDictionary(COSName.getPDFName("ParentTree"));
    COSArray numbers = tree.getCOSArray(COSName.NUMS);
    for (int i = 0; i < numbers.size(); i += 2) {
      if (numbers.getInt(i) == key) {
        return (COSArray) numbers.getObject(i + 1);
      }
    }
    throw new AssertionError("no page " + key);
  }

  private static List<Integer> marked(PDPage page) throws IOException {
    String content = new String(page.getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
    List<Integer> marked = new ArrayList<>();
    Matcher matcher = CONTENT.matcher(content);
    while (matcher.find()) {
      marked.add(Integer.parseInt(matcher.group(1)));
    }
    return marked;
  }
}
