package org.drysill.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** How long each stage took: from when it was told of until the next one, or until asked. */
final class StageTimes implements Consumer<String> {
  private final List<String> stages = new ArrayList<>();
  private final List<Long> begins = new ArrayList<>();

  @Override
  public void accept(String stage) {
    stages.add(stage);
    begins.add(System.nanoTime());
  }

  /** A line for each stage, in their order. */
  List<String> lines() {
    long now = System.nanoTime();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < stages.size(); i++) {
      long end = i + 1 < begins.size() ? begins.get(i + 1) : now;
      long milliseconds = Math.round((end - begins.get(i)) / 1e6);
      lines.add(String.format(Locale.ROOT, "%6d ms  %s", milliseconds, stages.get(i)));
    }
    return lines;
  }
}
