package org.drysill.report.pdf;

import java.nio.charset.StandardCharsets;

/** A file that travels inside the PDF, associated with the document as a whole. */
public final class Attachment {
  /** What the file is to the document, in the words of ISO 32000-2. */
  public enum Relation {
    /** What the document was made from. */
    SOURCE("Source"),
    /** The data that the document shows. */
    DATA("Data");

    private final String pdfName;

    Relation(String pdfName) {
      this.pdfName = pdfName;
    }

    String pdfName() {
      return pdfName;
    }
  }

  private final String name;
  private final String mediaType;
  private final String description;
  private final Relation relation;
  private final byte[] content;

  /**
   * A file as it is.
   *
   * @param name the file name, unique among the attachments of a document
   * @param mediaType its media type, such as "application/json"
   * @param description one line about it
   * @param relation what it is to the document
   * @param content its bytes
   */
  public Attachment(
      String name, String mediaType, String description, Relation relation, byte[] content) {
    this.name = name;
    this.mediaType = mediaType;
    this.description = description;
    this.relation = relation;
    this.content = content.clone();
  }

  /** A text, kept as UTF-8. */
  public static Attachment ofText(
      String name, String mediaType, String description, Relation relation, String text) {
    return new Attachment(
        name, mediaType, description, relation, text.getBytes(StandardCharsets.UTF_8));
  }

  String name() {
    return name;
  }

  String mediaType() {
    return mediaType;
  }

  String description() {
    return description;
  }

  Relation relation() {
    return relation;
  }

  byte[] content() {
    return content.clone();
  }
}
