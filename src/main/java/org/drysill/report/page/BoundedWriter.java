package org.drysill.report.page;

import java.io.StringWriter;

/** Takes the text of a page, up to a limit. */
final class BoundedWriter extends StringWriter {
  private final int most;

  BoundedWriter(int most) {
    this.most = most;
  }

  @Override
  public void write(int character) {
    room(1);
    super.write(character);
  }

  @Override
  public void write(char[] characters, int offset, int length) {
    room(length);
    super.write(characters, offset, length);
  }

  @Override
  public void write(String text) {
    room(text.length());
    super.write(text);
  }

  @Override
  public void write(String text, int offset, int length) {
    room(length);
    super.write(text, offset, length);
  }

  private void room(int length) {
    if (getBuffer().length() + (long) length > most) {
      throw new TemplateProblem(
          "own templates write more than " + most + " characters; is there a loop without end?");
    }
  }
}
