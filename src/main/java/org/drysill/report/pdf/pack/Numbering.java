package org.drysill.report.pdf.pack;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;

/**
 * The numbers of the objects of a document: first what goes into object streams, in the order in
 * which one object leads to the next, so that numbers near each other stand near each other.
 */
final class Numbering {
  /** What leads from one page to others, or up the structure. */
  private static final Set<COSName> LEADING_AWAY =
      Set.of(COSName.A, COSName.DEST, COSName.PARENT, COSName.P, COSName.getPDFName("ParentTree"));

  /** What the way through the objects has come by. */
  private final Set<COSBase> met = Collections.newSetFromMap(new IdentityHashMap<>());

  private final IdentityHashMap<COSBase, Integer> numbers = new IdentityHashMap<>();
  private final List<COSBase> objects = new ArrayList<>();
  private final List<COSStream> streams = new ArrayList<>();

  /** What is to stand beside an object. */
  private final IdentityHashMap<COSBase, COSBase> beside;

  private int last;

  private Numbering(IdentityHashMap<COSBase, COSBase> beside) {
    this.beside = beside;
  }

  static Numbering of(COSDictionary ends) {
    COSDictionary catalog = ends.getCOSDictionary(COSName.ROOT);
    Numbering numbering = new Numbering(ElementLists.of(catalog));
    if (catalog.containsKey(COSName.STRUCT_TREE_ROOT)) {
      numbering.find(catalog.getDictionaryObject(COSName.STRUCT_TREE_ROOT), LEADING_AWAY);
    }
    numbering.met.clear();
    numbering.find(ends, Set.of());
    numbering.objects.forEach(object -> numbering.numbers.put(object, numbering.next()));
    numbering.streams.forEach(stream -> numbering.numbers.put(stream, numbering.next()));
    return numbering;
  }

  /** The number of an object; zero where it is written where it is used. */
  int number(COSBase object) {
    return numbers.getOrDefault(object, 0);
  }

  /** A number that no object has yet. */
  int next() {
    return ++last;
  }

  List<COSBase> objects() {
    return Collections.unmodifiableList(objects);
  }

  List<COSStream> streams() {
    return Collections.unmodifiableList(streams);
  }

  /** Depth first and without recursion: a structure may be deep. */
  private void find(COSBase start, Set<COSName> without) {
    Deque<COSBase> open = new ArrayDeque<>();
    open.push(start);
    List<COSBase> parts = new ArrayList<>();
    while (!open.isEmpty()) {
      COSBase object = open.pop();
      if (isNew(object)) {
        parts.clear();
        parts(known(object), without, parts);
        for (int i = parts.size() - 1; i >= 0; i--) {
          open.push(parts.get(i));
        }
      }
    }
  }

  /** True where an object was not come by yet on this way; it is listed where it is on none. */
  private boolean isNew(COSBase object) {
    COSBase known = known(object);
    boolean isNumbered =
        known instanceof COSStream
            || object instanceof COSObject
            || (known instanceof COSDictionary && !known.isDirect());
    if (!isNumbered) {
      return true;
    }
    list(known);
    return met.add(known);
  }

  private void list(COSBase object) {
    if (numbers.putIfAbsent(object, 0) != null) {
      return;
    }
    if (object instanceof COSStream stream) {
      streams.add(stream);
      return;
    }
    objects.add(object);
    COSBase companion = beside.get(object);
    if (companion != null) {
      // What it lists has its place in the order of the structure.
      list(companion);
    }
  }

  private static COSBase known(COSBase value) {
    return value instanceof COSObject reference ? reference.getObject() : value;
  }

  private static void parts(COSBase object, Set<COSName> without, List<COSBase> parts) {
    if (object instanceof COSDictionary dictionary) {
      for (Map.Entry<COSName, COSBase> entry : dictionary.entrySet()) {
        if (!without.contains(entry.getKey())) {
          add(entry.getValue(), parts);
        }
      }
    } else if (object instanceof COSArray array) {
      for (COSBase value : array) {
        add(value, parts);
      }
    }
  }

  private static void add(COSBase value, List<COSBase> parts) {
    COSBase known = known(value);
    if (known instanceof COSArray && value instanceof COSObject) {
      parts.add(value);
    } else if (known instanceof COSDictionary || known instanceof COSArray) {
      parts.add(known);
    }
  }
}
