package org.drysill.report.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Calendar;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** Puts files into a document, associated with it as a whole as ISO 19005-3, 6.8 asks. */
final class Attachments {
  private static final COSName AF = COSName.getPDFName("AF");
  private static final COSName RELATIONSHIP = COSName.getPDFName("AFRelationship");

  private Attachments() {}

  static void attach(PDDocument document, List<Attachment> attachments, LocalDate date)
      throws IOException {
    if (attachments.isEmpty()) {
      return;
    }
    COSArray associated = new COSArray();
    // A name tree must be sorted.
    Map<String, PDComplexFileSpecification> byName = new TreeMap<>();
    for (Attachment attachment : attachments) {
      PDComplexFileSpecification file = specification(document, attachment, date);
      byName.put(attachment.name(), file);
      associated.add(file.getCOSObject());
    }
    PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
    tree.setNames(byName);
    PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
    names.setEmbeddedFiles(tree);
    document.getDocumentCatalog().setNames(names);
    document.getDocumentCatalog().getCOSObject().setItem(AF, associated);
  }

  private static PDComplexFileSpecification specification(
      PDDocument document, Attachment attachment, LocalDate date) throws IOException {
    byte[] content = attachment.content();
    PDEmbeddedFile embedded =
        new PDEmbeddedFile(document, new ByteArrayInputStream(content), COSName.FLATE_DECODE);
    embedded.setSubtype(attachment.mediaType());
    embedded.setSize(content.length);
    Calendar day = Provenance.startOf(date);
    embedded.setCreationDate(day);
    embedded.setModDate(day);
    PDComplexFileSpecification file = new PDComplexFileSpecification();
    file.setFile(attachment.name());
    file.setFileUnicode(attachment.name());
    file.setFileDescription(attachment.description());
    file.setEmbeddedFile(embedded);
    file.setEmbeddedFileUnicode(embedded);
    file.getCOSObject().setName(RELATIONSHIP, attachment.relation().pdfName());
    return file;
  }
}
