package org.drysill.report.pdf.pack;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSString;

/** Objects as they are written, with a space only where two words would run together. */
final class ObjectText {
  private final Numbering numbering;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  /** True where a word was written last, which must not run into another. */
  private boolean afterWord;

  ObjectText(Numbering numbering) {
    this.numbering = numbering;
  }

  byte[] bytes() {
    return out.toByteArray();
  }

  int size() {
    return out.size();
  }

  /** Writes an object itself, though it has a number. */
  void object(COSBase object) throws IOException {
    afterWord = false;
    if (object instanceof COSDictionary dictionary) {
      dictionary(dictionary);
    } else {
      array((COSArray) object);
    }
  }

  void dictionary(COSDictionary dictionary) throws IOException {
    mark("<<");
    for (Map.Entry<COSName, COSBase> entry : dictionary.entrySet()) {
      value(entry.getKey());
      value(entry.getValue());
    }
    mark(">>");
  }

  private void value(COSBase value) throws IOException {
    COSBase known = value instanceof COSObject reference ? reference.getObject() : value;
    int number = numbering.number(known);
    if (number > 0) {
      word(number + " 0 R");
    } else if (known instanceof COSDictionary dictionary) {
      dictionary(dictionary);
    } else if (known instanceof COSArray array) {
      array(array);
    } else if (known instanceof COSString string) {
      string(string.getBytes());
    } else {
      simple(known);
    }
  }

  private void simple(COSBase value) throws IOException {
    if (value instanceof COSName name) {
      name(name);
    } else if (value instanceof COSInteger integer) {
      word(Long.toString(integer.longValue()));
    } else if (value instanceof COSFloat number) {
      ByteArrayOutputStream text = new ByteArrayOutputStream();
      number.writePDF(text);
      word(text.toString(StandardCharsets.ISO_8859_1));
    } else if (value instanceof COSBoolean truth) {
      word(Boolean.toString(truth.getValue()));
    } else {
      word("null");
    }
  }

  private void array(COSArray array) throws IOException {
    mark("[");
    for (COSBase value : array) {
      value(value);
    }
    mark("]");
  }

  private void name(COSName name) throws IOException {
    name.writePDF(out);
    afterWord = true;
  }

  /** As characters: two hexadecimal digits for each would take twice the place. */
  private void string(byte[] bytes) {
    mark("(");
    for (byte character : bytes) {
      switch (character) {
        case '\r' -> mark("\\r");
        case '(', ')', '\\' -> {
          out.write('\\');
          out.write(character);
        }
        default -> out.write(character);
      }
    }
    mark(")");
  }

  private void word(String word) {
    if (afterWord) {
      out.write(' ');
    }
    mark(word);
    afterWord = true;
  }

  private void mark(String mark) {
    byte[] bytes = mark.getBytes(StandardCharsets.ISO_8859_1);
    out.write(bytes, 0, bytes.length);
    afterWord = false;
  }
}
