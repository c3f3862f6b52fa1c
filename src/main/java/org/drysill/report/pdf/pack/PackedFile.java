package org.drysill.report.pdf.pack;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Writes a document; equal documents with equal identifiers give equal bytes. */
public final class PackedFile {
  /** The length of an identifier. */
  public static final int IDENTIFIER_BYTES = 16;

  /** The second line tells programs that the file is binary. */
  private static final String HEAD = "%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n";

  private final ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 20);
  private final Numbering numbering;
  private final CrossReferences references = new CrossReferences();

  private PackedFile(Numbering numbering) {
    this.numbering = numbering;
  }

  /**
   * The bytes of a document, which is not encrypted.
   *
   * @param document the document; its fonts are subset already
   * @param identifier what tells it from others, the same for the same document
   */
  public static byte[] of(PDDocument document, byte[] identifier) throws IOException {
    COSDictionary trailer = document.getDocument().getTrailer();
    COSDictionary ends = new COSDictionary();
    ends.setDirect(true);
    for (COSName key : List.of(COSName.ROOT, COSName.INFO)) {
      if (trailer.containsKey(key)) {
        ends.setItem(key, trailer.getDictionaryObject(key));
      }
    }
    PackedFile file = new PackedFile(Numbering.of(ends));
    file.write(ends, identifier);
    return file.out.toByteArray();
  }

  private void write(COSDictionary ends, byte[] identifier) throws IOException {
    put(HEAD);
    List<ObjectStream> objects = ObjectStream.of(numbering);
    List<Raw> raw = new ArrayList<>();
    for (COSStream stream : numbering.streams()) {
      raw.add(Raw.of(stream));
    }
    objects.forEach(stream -> raw.add(Raw.ofContent(stream.content())));
    Iterator<byte[]> packed = raw.parallelStream().map(Raw::packed).toList().iterator();
    for (COSStream stream : numbering.streams()) {
      object(numbering.number(stream), stream, packed.next());
    }
    // A file that is cut off shall not pass for a whole one: what leads to the rest comes last.
    for (ObjectStream stream : objects) {
      int number = numbering.next();
      stream.members().forEach((member, index) -> references.within(member, number, index));
      object(number, stream.dictionary(), packed.next());
    }
    end(ends, identifier);
  }

  private void object(int number, COSDictionary dictionary, byte[] content) throws IOException {
    references.at(number, out.size());
    put(number + " 0 obj\n");
    dictionary.setInt(COSName.LENGTH, content.length);
    ObjectText text = new ObjectText(numbering);
    text.dictionary(dictionary);
    out.write(text.bytes());
    put("stream\n");
    out.write(content);
    put("\nendstream\nendobj\n");
  }

  private void end(COSDictionary ends, byte[] identifier) throws IOException {
    int number = numbering.next();
    int start = out.size();
    references.at(number, start);
    COSDictionary dictionary = references.dictionary();
    ends.entrySet().forEach(entry -> dictionary.setItem(entry.getKey(), entry.getValue()));
    dictionary.setItem(COSName.ID, identifiers(identifier));
    object(number, dictionary, references.packed());
    put("startxref\n" + start + "\n%%EOF\n");
  }

  private static COSArray identifiers(byte[] identifier) {
    COSArray both = new COSArray();
    both.add(new COSString(identifier));
    both.add(new COSString(identifier));
    both.setDirect(true);
    return both;
  }

  private void put(String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.ISO_8859_1));
  }

  static COSArray integers(int... numbers) {
    COSArray array = new COSArray();
    for (int number : numbers) {
      array.add(COSInteger.get(number));
    }
    return array;
  }
}
