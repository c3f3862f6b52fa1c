package org.drysill.report.pdf.economy;

import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** The way back from marked content to the element of the structure that holds it. */
final class ParentTree {
  private static final COSName STRUCT_PARENTS = COSName.STRUCT_PARENTS;

  private final Map<Integer, COSArray> pages = new HashMap<>();

  private ParentTree() {}

  static ParentTree of(PDStructureTreeRoot root) {
    ParentTree tree = new ParentTree();
    COSDictionary top = root.getCOSObject().getCOSDictionary(COSName.getPDFName("ParentTree"));
    if (top != null) {
      tree.read(top);
    }
    return tree;
  }

  private void read(COSDictionary node) {
    COSArray kids = node.getCOSArray(COSName.KIDS);
    for (int i = 0; kids != null && i < kids.size(); i++) {
      read((COSDictionary) kids.getObject(i));
    }
    COSArray numbers = node.getCOSArray(COSName.NUMS);
    for (int i = 0; numbers != null && i + 1 < numbers.size(); i += 2) {
      COSBase holders = numbers.getObject(i + 1);
      if (holders instanceof COSArray array) {
        pages.put(numbers.getInt(i), array);
      }
    }
  }

  /** The content of that number on that page is held by another element from now on. */
  void set(COSDictionary page, int content, COSDictionary holder) {
    holders(page, content).set(content, holder);
  }

  /** The holder of a content, which from now on has none. */
  COSDictionary cleared(COSDictionary page, int content) {
    COSArray holders = holders(page, content);
    COSDictionary holder = (COSDictionary) holders.getObject(content);
    holders.set(content, COSNull.NULL);
    return holder;
  }

  private COSArray holders(COSDictionary page, int content) {
    COSArray holders = pages.get(page.getInt(STRUCT_PARENTS));
    if (holders == null || content >= holders.size()) {
      throw new IllegalStateException("content " + content + " has no holder");
    }
    return holders;
  }
}
