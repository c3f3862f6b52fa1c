package org.drysill.report.pdf.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.drysill.report.pdf.Sample;
import org.junit.jupiter.api.Test;

/** What was written, read back by the library. */
class PackedFileTest {
  private static final byte[] IDENTIFIER = "sixteen bytes...".getBytes(StandardCharsets.US_ASCII);
  private static final COSName KEY = COSName.getPDFName("Thing");

  /** What is to be true of something that was written and read again. */
  private interface Look {
    void at(COSBase value);
  }

  private static void again(COSBase value, Look look) throws IOException {
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      document.getDocumentCatalog().getCOSObject().setItem(KEY, value);
      try (PDDocument read = Loader.loadPDF(PackedFile.of(document, IDENTIFIER))) {
        assertThat(read.getNumberOfPages()).isEqualTo(1);
        look.at(read.getDocumentCatalog().getCOSObject().getDictionaryObject(KEY));
      }
    }
  }

  @Test
  void values_of_every_kind_are_read_as_they_were() throws IOException {
    COSArray values =
        new COSArray(
            List.of(
                COSInteger.get(-7),
                new COSFloat(0.25f),
                COSBoolean.TRUE,
                COSNull.NULL,
                COSName.getPDFName("A name"),
                new COSString("(a) \\ back\r\nslash"),
                new COSString("– und αβγ")));
    again(values, read -> assertThat(read).hasToString(values.toString()));
  }

  @Test
  void dictionaries_within_and_on_their_own_are_told_apart() throws IOException {
    COSDictionary own = new COSDictionary();
    own.setInt(COSName.N, 1);
    COSDictionary within = new COSDictionary();
    within.setInt(COSName.N, 2);
    within.setDirect(true);
    again(
        new COSArray(List.of(own, within, own)),
        read -> {
          COSArray array = (COSArray) read;
          assertThat(array.get(0)).isInstanceOf(COSObject.class);
          assertThat(array.get(1)).isInstanceOf(COSDictionary.class);
          assertThat(array.getObject(2)).isSameAs(array.getObject(0));
          assertThat(((COSDictionary) array.getObject(0)).getInt(COSName.N)).isEqualTo(1);
          assertThat(((COSDictionary) array.getObject(1)).getInt(COSName.N)).isEqualTo(2);
        });
  }

  @Test
  void what_leads_back_to_itself_comes_to_an_end() throws IOException {
    COSDictionary parent = new COSDictionary();
    COSDictionary child = new COSDictionary();
    parent.setItem(COSName.K, new COSArray(List.of(child)));
    child.setItem(COSName.P, parent);
    again(
        parent,
        read -> {
          COSArray kids = ((COSDictionary) read).getCOSArray(COSName.K);
          assertThat(((COSDictionary) kids.getObject(0)).getCOSDictionary(COSName.P))
              .isSameAs(read);
        });
  }

  @Test
  void a_stream_keeps_its_bytes() throws IOException {
    try (PDDocument document = new PDDocument()) {
      COSStream stream = document.getDocument().createCOSStream();
      try (var out = stream.createOutputStream(COSName.FLATE_DECODE)) {
        out.write("endstream endobj".getBytes(StandardCharsets.US_ASCII));
      }
      document.getDocumentCatalog().getCOSObject().setItem(KEY, stream);
      try (PDDocument read = Loader.loadPDF(PackedFile.of(document, IDENTIFIER))) {
        COSStream found = read.getDocumentCatalog().getCOSObject().getCOSStream(KEY);
        assertThat(found.toTextString()).isEqualTo("endstream endobj");
        assertThat(((COSString) read.getDocument().getDocumentID().get(0)).getBytes())
            .isEqualTo(IDENTIFIER);
      }
    }
  }

  /** A file that was read and written again holds the same, and is no larger. */
  @Test
  void a_document_that_was_read_can_be_written() throws IOException {
    byte[] once = Sample.pdf();
    try (PDDocument document = Loader.loadPDF(once)) {
      byte[] twice = PackedFile.of(document, IDENTIFIER);
      assertThat(twice.length).isBetween(once.length * 99 / 100, once.length * 101 / 100);
      try (PDDocument again = Loader.loadPDF(twice)) {
        assertThat(again.getNumberOfPages()).isEqualTo(document.getNumberOfPages());
      }
    }
  }
}
