package org.drysill.report.sign;

import java.io.IOException;
import java.util.Arrays;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDSignatureField;
import org.drysill.report.evidence.Sha256;
import org.drysill.report.pdf.pack.PackedFile;

/**
 * Gives a report a place for a signature: a field without extent on its first page, which stands in
 * the tree of the structure as PDF/UA asks of fields.
 */
final class Signable {
  static final String FIELD = "Signature";

  private static final COSName PARENT_TREE = COSName.getPDFName("ParentTree");
  private static final COSName NEXT_KEY = COSName.getPDFName("ParentTreeNextKey");
  private static final COSName STRUCT_PARENT = COSName.getPDFName("StructParent");

  private Signable() {}

  /** The report with an empty field; the same for the same report. */
  static byte[] of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDAcroForm form = new PDAcroForm(document);
      PDSignatureField field = new PDSignatureField(form);
      field.setPartialName(FIELD);
      field.setAlternateFieldName("Signature of whoever made this report");
      PDAnnotationWidget widget = field.getWidgets().get(0);
      widget.setRectangle(new PDRectangle());
      widget.setPrinted(true);
      widget.setLocked(true);
      PDPage page = document.getPage(0);
      widget.setPage(page);
      page.getAnnotations().add(widget);
      form.getFields().add(field);
      form.setSignaturesExist(true);
      form.setAppendOnly(true);
      document.getDocumentCatalog().setAcroForm(form);
      tag(document, page, widget);
      return saved(document, pdf);
    }
  }

  private static byte[] saved(PDDocument document, byte[] pdf) throws IOException {
    return PackedFile.of(
        document, Arrays.copyOf(Sha256.digest().digest(pdf), PackedFile.IDENTIFIER_BYTES));
  }

  private static void tag(PDDocument document, PDPage page, PDAnnotationWidget widget) {
    COSDictionary root = document.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
    COSDictionary top = firstElement(root);
    COSDictionary reference = new COSDictionary();
    reference.setItem(COSName.TYPE, COSName.getPDFName("OBJR"));
    reference.setItem(COSName.OBJ, widget);
    reference.setItem(COSName.PG, page);
    reference.setDirect(true);
    COSDictionary element = new COSDictionary();
    element.setItem(COSName.S, COSName.getPDFName("Form"));
    element.setItem(COSName.P, top);
    element.setItem(COSName.K, reference);
    append(top, element);
    int key = root.getInt(NEXT_KEY);
    COSArray numbers = root.getCOSDictionary(PARENT_TREE).getCOSArray(COSName.NUMS);
    numbers.add(COSInteger.get(key));
    numbers.add(element);
    root.setInt(NEXT_KEY, key + 1);
    widget.getCOSObject().setInt(STRUCT_PARENT, key);
  }

  private static COSDictionary firstElement(COSDictionary root) {
    COSBase kids = root.getDictionaryObject(COSName.K);
    return (COSDictionary) (kids instanceof COSArray array ? array.getObject(0) : kids);
  }

  private static void append(COSDictionary parent, COSDictionary element) {
    COSBase kids = parent.getDictionaryObject(COSName.K);
    COSArray array = new COSArray();
    if (kids instanceof COSArray all) {
      all.forEach(array::add);
    } else {
      array.add(parent.getItem(COSName.K));
    }
    array.add(element);
    parent.setItem(COSName.K, array);
  }
}
