package org.drysill.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.report.chart.AirSketch.Flow;
import org.drysill.report.chart.AirSketch.Kind;
import org.drysill.report.chart.AirSketch.Room;
import org.drysill.report.chart.AirSketch.Storey;
import org.drysill.report.font.Face;
import org.drysill.report.font.Fonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sketch of a home stays legible from one room to thirty, with names short and long. */
class AirSketchTest {
  private static final double WIDTH = AirSketchLayout.USUAL_WIDTH;
  private static final Fonts FONTS = new Fonts();

  private static Flow flow(Kind kind, boolean in, double size, String words) {
    return new Flow(kind, in, size, words);
  }

  private static Room room(int i, String name, boolean door) {
    List<Flow> outside = new ArrayList<>();
    if (i % 3 == 0) {
      outside.add(flow(Kind.SUPPLY, true, 8, "supply 8.0"));
    }
    outside.add(flow(Kind.LEAKS, true, 2, "leaks 2.0"));
    if (i % 5 == 0) {
      outside.add(flow(Kind.TRANSFER, false, 1, "1.0 to " + name));
    }
    outside.add(flow(Kind.LEAKS, false, 2, "leaks 2.0"));
    if (i % 4 == 0) {
      outside.add(flow(Kind.EXTRACT, false, 12, "extract 12"));
    }
    return new Room(
        name + ", 9 m²",
        1 + i % 7 * 5,
        outside,
        door ? Optional.of(flow(Kind.TRANSFER, i % 2 == 0, 3, "3.0")) : Optional.empty());
  }

  private static Storey storey(int rooms, String name, boolean hall) {
    List<Room> others = IntStream.range(0, rooms).mapToObj(i -> room(i, name, hall)).toList();
    return new Storey(
        "One floor up",
        hall ? Optional.of(room(5, name, false)) : Optional.empty(),
        others,
        Optional.of(flow(Kind.TRANSFER, true, 4, "4.0")));
  }

  private static Noted painted(List<Storey> storeys) {
    AirSketch sketch = new AirSketch(new ChartText("t", "l/s", "s", "a"), storeys);
    Noted canvas = Noted.painted(sketch, WIDTH);
    canvas.assertThatNoWordsOverlap();
    return canvas;
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 5, 8, 13, 24, 30})
  void noWordsOverlapWhateverTheNumberOfRooms(int rooms) {
    for (String name : List.of("WC", "Kitchen", "Bedroom at the back ".repeat(15))) {
      for (boolean hall : new boolean[] {true, false}) {
        painted(List.of(storey(rooms, name, hall)));
        painted(List.of(storey(rooms, name, true), storey(rooms / 2, name, hall)));
      }
    }
  }

  @Test
  void longNamesAreCutAndFlowsAreNot() {
    Noted canvas = painted(List.of(storey(2, "Bedroom at the back ".repeat(15), true)));
    assertThat(canvas.words()).anyMatch(word -> word.startsWith("Bedroom") && word.endsWith("…"));
    assertThat(canvas.words()).contains("supply 8.0", "leaks 2.0", "extract 12", "3.0");
  }

  @Test
  void roomsAreDrawnInProportionToTheirFloorArea() {
    AirSketch sketch =
        new AirSketch(new ChartText("t", "l/s", "s", "a"), List.of(storey(9, "Room", true)));
    List<AirSketchLayout.Floor> floors = new AirSketchLayout(sketch, WIDTH).floors();
    AirSketchLayout.Box first = floors.get(0).rooms().get(1);
    double scale = first.width() * first.height() / first.room().area();
    for (AirSketchLayout.Box box : floors.get(0).rooms()) {
      assertThat(box.width() * box.height() / box.room().area())
          .isBetween(scale * 0.999, scale * 1.001);
    }
    AirSketchLayout.Box hall = floors.get(0).hall().get(0);
    assertThat(hall.width() * hall.height() / hall.room().area())
        .isBetween(scale * 0.999, scale * 1.001);
  }

  @Test
  void kindsDifferInShapeAndNotInColourAlone() {
    StringBuilder solid = new StringBuilder();
    for (Kind kind : Kind.values()) {
      StringBuilder out = new StringBuilder();
      SvgGraphics graphics = new SvgGraphics(out);
      Canvas canvas =
          new Canvas() {
            @Override
            public Graphics2D graphics() {
              return graphics;
            }

            @Override
            public void text(String text, double x, double y, Face face, double size, Ink ink) {
              throw new AssertionError("arrows have no words of their own");
            }
          };
      new Arrow(new Setter(canvas, FONTS), 10).across(flow(kind, true, 5, ""), 0, 60, 10);
      solid
          .append(kind)
          .append(' ')
          .append(out.toString().split("<path", -1).length - 1)
          .append(' ');
    }
    assertThat(solid.toString()).isEqualTo("SUPPLY 2 EXTRACT 2 LEAKS 10 TRANSFER 2 ");
  }
}
