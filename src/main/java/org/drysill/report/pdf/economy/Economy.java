package org.drysill.report.pdf.economy;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** Makes a painted document, whose fonts are subset, smaller before it is saved. */
public final class Economy {
  private Economy() {}

  /** Rewrites the contents of the pages and tidies the tree of the structure. */
  public static void apply(PDDocument document) throws IOException {
    StructureEconomy structure =
        StructureEconomy.of(document.getDocumentCatalog().getStructureTreeRoot());
    FontCodes fonts = new FontCodes(document);
    PageEconomy economy = new PageEconomy(fonts);
    for (PDPage page : document.getPages()) {
      Joins joins = structure.joins(page.getCOSObject());
      structure.renumber(page.getCOSObject(), economy.apply(page, joins));
    }
    economy.write(document);
    fonts.write();
    structure.finish();
  }
}
