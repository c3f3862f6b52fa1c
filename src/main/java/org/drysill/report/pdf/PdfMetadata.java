package org.drysill.report.pdf;

import java.time.LocalDate;
import java.util.List;

/**
 * What the file says of itself.
 *
 * @param title the title of the document
 * @param author who answers for it; may be empty
 * @param subject one line about its content; may be empty
 * @param keywords words to find it by; may be empty
 * @param language the language of the text as a BCP 47 tag, such as "en"
 * @param producer the program and its version
 * @param date the day that the document stands for; the file bears no other
 */
public record PdfMetadata(
    String title,
    String author,
    String subject,
    List<String> keywords,
    String language,
    String producer,
    LocalDate date) {
  /** Copies the list. */
  public PdfMetadata {
    keywords = List.copyOf(keywords);
  }
}
