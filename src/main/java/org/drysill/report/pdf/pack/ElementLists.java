package org.drysill.report.pdf.pack;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;

/**
 * For each page the list of the elements of the structure that its contents belong to, where it is
 * an object of its own. It names what the elements around it name, so that it deflates best there.
 */
final class ElementLists {
  private ElementLists() {}

  /** The lists by page; none where the document has no structure. */
  static IdentityHashMap<COSBase, COSBase> of(COSDictionary catalog) {
    IdentityHashMap<COSBase, COSBase> byPage = new IdentityHashMap<>();
    COSDictionary structure = catalog.getCOSDictionary(COSName.STRUCT_TREE_ROOT);
    COSDictionary tree =
        structure == null ? null : structure.getCOSDictionary(COSName.getPDFName("ParentTree"));
    COSArray numbered = tree == null ? null : tree.getCOSArray(COSName.NUMS);
    if (numbered == null) {
      return byPage;
    }
    Map<Integer, COSBase> lists = lists(numbered);
    COSArray pages = catalog.getCOSDictionary(COSName.PAGES).getCOSArray(COSName.KIDS);
    for (int i = 0; i < pages.size(); i++) {
      COSDictionary page = (COSDictionary) pages.getObject(i);
      COSBase list = lists.get(page.getInt(COSName.STRUCT_PARENTS));
      if (list != null) {
        byPage.put(page, list);
      }
    }
    return byPage;
  }

  private static Map<Integer, COSBase> lists(COSArray numbered) {
    Map<Integer, COSBase> lists = new HashMap<>();
    for (int i = 0; i + 1 < numbered.size(); i += 2) {
      if (numbered.get(i + 1) instanceof COSObject list && list.getObject() instanceof COSArray) {
        lists.put(numbered.getInt(i), list.getObject());
      }
    }
    return lists;
  }
}
