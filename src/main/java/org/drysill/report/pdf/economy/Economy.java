package org.drysill.report.pdf.economy;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** Makes a painted document smaller before it is saved. */
public final class Economy {
  private Economy() {}

  /** Rewrites the contents of the pages and tidies the tree of the structure. */
  public static void apply(PDDocument document) throws IOException {
    StructureEconomy structure =
        StructureEconomy.of(document.getDocumentCatalog().getStructureTreeRoot());
    for (PDPage page : document.getPages()) {
      Joins joins = structure.joins(page.getCOSObject());
      PageEconomy.apply(document, page, joins);
      structure.forget(page.getCOSObject(), joins.joined());
    }
  }
}
