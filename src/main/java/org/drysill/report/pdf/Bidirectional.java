package org.drysill.report.pdf;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import org.drysill.report.font.VisualOrder;

/** Text of both directions for the layout, by the algorithm that comes with Java. */
final class Bidirectional implements BidiSplitter, BidiReorderer {
  private Bidi bidi = new Bidi("", Bidi.DIRECTION_LEFT_TO_RIGHT);

  @Override
  public void setParagraph(String paragraph, byte defaultDirection) {
    int direction =
        defaultDirection == RTL ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT;
    bidi = new Bidi(paragraph, direction);
  }

  @Override
  public int countTextRuns() {
    return bidi.getLength() == 0 ? 0 : bidi.getRunCount();
  }

  @Override
  public BidiTextRun getVisualRun(int index) {
    int start = bidi.getRunStart(index);
    byte direction = bidi.getRunLevel(index) % 2 == 0 ? LTR : RTL;
    return new BidiTextRun(start, bidi.getRunLimit(index) - start, direction);
  }

  @Override
  public byte getBaseDirection(String paragraph) {
    return new Bidi(paragraph, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight()
        ? LTR
        : RTL;
  }

  @Override
  public String reorderRTLTextToLTR(String text) {
    return VisualOrder.reversed(text);
  }

  @Override
  public String shapeText(String text) {
    return text;
  }

  @Override
  public String deshapeText(String text) {
    return text;
  }

  @Override
  public boolean isLiveImplementation() {
    return true;
  }
}
