package org.drysill.report.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.pdf.pack.PackedFile;

/**
 * What a file says of itself, in its information dictionary and in its metadata stream alike. No
 * clock is read: the dates are those of the document, the identifier is a hash of what went in.
 */
final class Provenance {
  private Provenance() {}

  static void write(PDDocument document, PdfMetadata metadata) throws IOException {
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle(metadata.title());
    setUnlessEmpty(metadata.author(), information::setAuthor);
    setUnlessEmpty(metadata.subject(), information::setSubject);
    setUnlessEmpty(String.join(", ", metadata.keywords()), information::setKeywords);
    information.setCreator(metadata.producer());
    information.setProducer(metadata.producer());
    Calendar day = startOf(metadata.date());
    information.setCreationDate(day);
    information.setModificationDate(day);
    document.setDocumentInformation(information);
    PDMetadata stream = new PDMetadata(document);
    stream.importXMPMetadata(Xmp.packet(metadata).getBytes(StandardCharsets.UTF_8));
    document.getDocumentCatalog().setMetadata(stream);
    document.getDocumentCatalog().setLanguage(metadata.language());
  }

  private static void setUnlessEmpty(String value, Consumer<String> setter) {
    if (!value.isEmpty()) {
      setter.accept(value);
    }
  }

  /** The first moment of a day in universal time. */
  static Calendar startOf(LocalDate date) {
    Calendar day = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    day.setTimeInMillis(date.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
    return day;
  }

  /** The same for the same input, and another for any other. */
  static byte[] id(
      String xhtml,
      Map<String, ChartSpec> charts,
      PdfMetadata metadata,
      List<Attachment> attachments) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update(xhtml.getBytes(StandardCharsets.UTF_8));
      digest.update(new TreeMap<>(charts).toString().getBytes(StandardCharsets.UTF_8));
      digest.update(metadata.toString().getBytes(StandardCharsets.UTF_8));
      for (Attachment attachment : attachments) {
        digest.update(attachment.name().getBytes(StandardCharsets.UTF_8));
        digest.update(attachment.content());
      }
      return Arrays.copyOf(digest.digest(), PackedFile.IDENTIFIER_BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
