package org.drysill.report.pdf.economy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/**
 * The tree of the structure without what says nothing: spans that only pass on what they hold, and
 * parts of tables that hold nothing. Equal attributes are one object.
 */
final class StructureEconomy {
  private static final Set<String> IDLE = Set.of("Span", "Div", "THead", "TFoot");
  private static final Set<COSName> PLAIN =
      Set.of(COSName.TYPE, COSName.S, COSName.P, COSName.PG, COSName.K);

  /** What may hold text of its own. */
  private static final Set<String> HOLDERS = Set.of("TD", "TH", "Lbl", "LBody");

  private static final COSName MARKED_CONTENT = COSName.getPDFName("MCR");
  private static final COSName OBJECT = COSName.getPDFName("OBJR");

  private final ParentTree parents;
  private final IdentityHashMap<COSDictionary, Joins> joins = new IdentityHashMap<>();
  private final Map<String, COSDictionary> attributes = new HashMap<>();

  private final COSDictionary root;

  private StructureEconomy(COSDictionary root, ParentTree parents) {
    this.root = root;
    this.parents = parents;
  }

  /** The tidy tree of a document. */
  static StructureEconomy of(PDStructureTreeRoot root) {
    StructureEconomy economy = new StructureEconomy(root.getCOSObject(), ParentTree.of(root));
    economy.tidy(root.getCOSObject());
    return economy;
  }

  /** What may become one on a page. */
  Joins joins(COSDictionary page) {
    return joins.computeIfAbsent(page, first -> new Joins());
  }

  /**
   * Gives the contents of a page their new numbers. What has none is part of the content before it
   * by now, or was nothing.
   */
  void renumber(COSDictionary page, Map<Integer, Integer> numbers) {
    Set<COSDictionary> holders = Collections.newSetFromMap(new IdentityHashMap<>());
    for (COSDictionary holder : parents.renumbered(page, numbers)) {
      if (holders.add(holder)) {
        setKids(
            holder,
            kids(holder).stream().flatMap(kid -> renumbered(kid, holder, page, numbers)).toList());
      }
    }
  }

  private static Stream<COSBase> renumbered(
      COSBase kid, COSDictionary holder, COSDictionary page, Map<Integer, Integer> numbers) {
    if (kid instanceof COSInteger number && holder.getCOSDictionary(COSName.PG) == page) {
      return Stream.ofNullable(numbers.get(number.intValue())).map(COSInteger::get);
    }
    if (kid instanceof COSDictionary reference
        && reference.containsKey(COSName.MCID)
        && reference.getCOSDictionary(COSName.PG) == page) {
      Integer number = numbers.get(reference.getInt(COSName.MCID));
      if (number == null) {
        return Stream.empty();
      }
      reference.setInt(COSName.MCID, number);
    }
    return Stream.of(kid);
  }

  /** Takes out which page an element is on where nothing of its own is there. */
  void finish() {
    forgetPages(root);
  }

  private static void forgetPages(COSDictionary element) {
    List<COSBase> kids = kids(element);
    if (kids.stream().allMatch(StructureEconomy::isElement)) {
      element.removeItem(COSName.PG);
    }
    for (COSBase kid : kids) {
      if (isElement(kid)) {
        forgetPages((COSDictionary) kid);
      }
    }
  }

  private void tidy(COSDictionary element) {
    List<COSBase> kept = new ArrayList<>();
    for (COSBase kid : kids(element)) {
      if (!isElement(kid)) {
        keepWithin(kid);
        kept.add(kid);
        continue;
      }
      COSDictionary child = (COSDictionary) kid;
      tidy(child);
      if (isPlainSpan(child) || isPlainDivision(child)) {
        kids(child).forEach(passed -> kept.add(adopted(passed, child, element)));
      } else if (!isIdle(child)) {
        kept.add(child);
      }
    }
    List<COSBase> own = withoutOnlyParagraph(element, kept);
    setKids(element, own);
    noteFollowers(element, own);
    shareAttributes(element);
    own.forEach(kid -> sayOnce(element, kid));
    // Its place in the tree tells that it is one.
    if (element.containsKey(COSName.S)) {
      element.removeItem(COSName.TYPE);
    }
  }

  private void noteFollowers(COSDictionary element, List<COSBase> kids) {
    for (int i = 1; i < kids.size(); i++) {
      if (kids.get(i - 1) instanceof COSInteger content && kids.get(i) instanceof COSInteger next) {
        joins(element.getCOSDictionary(COSName.PG)).follows(content.intValue(), next.intValue());
      }
    }
  }

  private static List<COSBase> kids(COSDictionary element) {
    COSBase kids = element.getDictionaryObject(COSName.K);
    if (kids instanceof COSArray array) {
      List<COSBase> all = new ArrayList<>(array.size());
      for (int i = 0; i < array.size(); i++) {
        all.add(array.getObject(i));
      }
      return all;
    }
    return kids == null ? List.of() : List.of(kids);
  }

  private static void setKids(COSDictionary element, List<COSBase> kids) {
    if (kids.isEmpty()) {
      element.removeItem(COSName.K);
    } else if (kids.size() == 1) {
      element.setItem(COSName.K, kids.get(0));
    } else {
      COSArray array = new COSArray(kids);
      array.setDirect(true);
      element.setItem(COSName.K, array);
    }
  }

  private static boolean isElement(COSBase kid) {
    return kid instanceof COSDictionary dictionary && dictionary.containsKey(COSName.S);
  }

  private static boolean isIdle(COSDictionary element) {
    return !element.containsKey(COSName.K)
        && PLAIN.containsAll(element.keySet())
        && IDLE.contains(element.getNameAsString(COSName.S));
  }

  /** True for a span that says nothing of what it holds, which may be moved to its parent. */
  private static boolean isPlainSpan(COSDictionary element) {
    return "Span".equals(element.getNameAsString(COSName.S))
        && PLAIN.containsAll(element.keySet())
        && kids(element).stream().noneMatch(StructureEconomy::isObject);
  }

  /** True for a division that only groups elements, which may be moved to its parent. */
  private static boolean isPlainDivision(COSDictionary element) {
    return "Div".equals(element.getNameAsString(COSName.S))
        && PLAIN.containsAll(element.keySet())
        && kids(element).stream().allMatch(StructureEconomy::isElement);
  }

  /** A cell that holds one paragraph and nothing else holds what is in it. */
  private List<COSBase> withoutOnlyParagraph(COSDictionary element, List<COSBase> kids) {
    boolean isOnly =
        kids.size() == 1
            && HOLDERS.contains(element.getNameAsString(COSName.S, ""))
            && isElement(kids.get(0));
    if (!isOnly || !isPlainParagraph((COSDictionary) kids.get(0))) {
      return kids;
    }
    COSDictionary paragraph = (COSDictionary) kids.get(0);
    element.setItem(COSName.PG, paragraph.getCOSDictionary(COSName.PG));
    return kids(paragraph).stream().map(kid -> adopted(kid, paragraph, element)).toList();
  }

  private static boolean isPlainParagraph(COSDictionary element) {
    return "P".equals(element.getNameAsString(COSName.S))
        && PLAIN.containsAll(element.keySet())
        && kids(element).stream().noneMatch(StructureEconomy::isObject);
  }

  private static boolean isObject(COSBase kid) {
    return kid instanceof COSDictionary dictionary && dictionary.getItem(COSName.TYPE) == OBJECT;
  }

  /** What a span held, as its parent's own. */
  private COSBase adopted(COSBase kid, COSDictionary span, COSDictionary parent) {
    if (isElement(kid)) {
      ((COSDictionary) kid).setItem(COSName.P, parent);
      return kid;
    }
    if (kid instanceof COSInteger number) {
      COSDictionary page = span.getCOSDictionary(COSName.PG);
      parents.set(page, number.intValue(), parent);
      return page == parent.getCOSDictionary(COSName.PG) ? kid : reference(page, number);
    }
    COSDictionary reference = (COSDictionary) kid;
    if (!reference.containsKey(COSName.PG)) {
      reference.setItem(COSName.PG, span.getCOSDictionary(COSName.PG));
    }
    parents.set(reference.getCOSDictionary(COSName.PG), reference.getInt(COSName.MCID), parent);
    return kid;
  }

  private static COSDictionary reference(COSDictionary page, COSInteger number) {
    COSDictionary reference = new COSDictionary();
    reference.setItem(COSName.TYPE, MARKED_CONTENT);
    reference.setItem(COSName.PG, page);
    reference.setItem(COSName.MCID, number);
    reference.setDirect(true);
    return reference;
  }

  private static void keepWithin(COSBase kid) {
    if (kid instanceof COSDictionary) {
      kid.setDirect(true);
    }
  }

  /** A link says in words where it leads; its element need not say the same. */
  private static void sayOnce(COSDictionary element, COSBase kid) {
    if (isObject(kid)
        && ((COSDictionary) kid).getDictionaryObject(COSName.OBJ) instanceof COSDictionary link
        && element.containsKey(COSName.ALT)
        && Objects.equals(element.getString(COSName.ALT), link.getString(COSName.CONTENTS))) {
      element.removeItem(COSName.ALT);
    }
  }

  private void shareAttributes(COSDictionary element) {
    COSDictionary own = element.getCOSDictionary(COSName.A);
    if (own != null && own.size() > 0) {
      String words = own.entrySet().toString();
      element.setItem(COSName.A, attributes.computeIfAbsent(words, first -> own));
    }
  }
}
