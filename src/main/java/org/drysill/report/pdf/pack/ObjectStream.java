package org.drysill.report.pdf.pack;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/** A stream of objects (ISO 32000-1, 7.5.7). */
final class ObjectStream {
  /** Fewer give the deflation less to repeat. */
  private static final int MOST_OBJECTS = 10_000;

  private final Map<Integer, Integer> members;
  private final int first;
  private final byte[] content;

  /**
   * A stream.
   *
   * @param members the numbers of its objects with their indices
   * @param first where the first object begins
   * @param content its bytes
   */
  private ObjectStream(Map<Integer, Integer> members, int first, byte[] content) {
    this.members = members;
    this.first = first;
    this.content = content;
  }

  Map<Integer, Integer> members() {
    return members;
  }

  byte[] content() {
    return content;
  }

  static List<ObjectStream> of(Numbering numbering) throws IOException {
    List<ObjectStream> streams = new ArrayList<>();
    List<COSBase> objects = numbering.objects();
    for (int from = 0; from < objects.size(); from += MOST_OBJECTS) {
      int to = Math.min(objects.size(), from + MOST_OBJECTS);
      streams.add(of(objects.subList(from, to), numbering));
    }
    return streams;
  }

  private static ObjectStream of(List<COSBase> objects, Numbering numbering) throws IOException {
    Map<Integer, Integer> members = new LinkedHashMap<>();
    StringBuilder offsets = new StringBuilder();
    ObjectText text = new ObjectText(numbering);
    for (COSBase object : objects) {
      int number = numbering.number(object);
      members.put(number, members.size());
      offsets.append(number).append(' ').append(text.size()).append(' ');
      text.object(object);
    }
    byte[] head = offsets.toString().getBytes(StandardCharsets.ISO_8859_1);
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.write(head);
    all.write(text.bytes());
    return new ObjectStream(members, head.length, all.toByteArray());
  }

  COSDictionary dictionary() {
    COSDictionary dictionary = new COSDictionary();
    dictionary.setItem(COSName.TYPE, COSName.OBJ_STM);
    dictionary.setInt(COSName.N, members.size());
    dictionary.setInt(COSName.FIRST, first);
    dictionary.setItem(COSName.FILTER, COSName.FLATE_DECODE);
    return dictionary;
  }
}
