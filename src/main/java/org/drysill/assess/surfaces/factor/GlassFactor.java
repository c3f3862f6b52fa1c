package org.drysill.assess.surfaces.factor;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.reference.glazing.Glazing;
import org.drysill.reference.glazing.GlazingCatalogue;
import org.drysill.survey.Frame;
import org.drysill.survey.Window;

/** The kind of glazing of a window, and the temperature factor of its edge. */
final class GlassFactor {
  private GlassFactor() {}

  /**
   * The edge of a pane.
   *
   * @param factor its temperature factor
   * @param kind the kind of glazing
   * @param frame the frame, where it governs
   * @param source where the factor comes from
   */
  record Edge(Range factor, String kind, Optional<Frame> frame, Citation source) {}

  /** The kind of glazing that the survey names; unknown where it names none. */
  static Glazing kind(Window window, GlazingCatalogue catalogue) {
    return window.glazing().flatMap(catalogue::find).orElseGet(catalogue::unknown);
  }

  /** The lower edge; empty where no glazing is named or it has no spacer and no metal frame. */
  static Optional<Edge> edge(Window window, GlazingCatalogue catalogue) {
    Optional<Glazing> named = window.glazing().flatMap(catalogue::find);
    if (named.isEmpty()) {
      return Optional.empty();
    }
    return edge(named.get(), window.frame(), catalogue);
  }

  /** The lower edge of a kind of glazing in a frame. */
  static Optional<Edge> edge(Glazing kind, Optional<Frame> frame, GlazingCatalogue catalogue) {
    return frame.map(f -> inFrame(kind, f, catalogue)).orElseGet(() -> inWood(kind, catalogue));
  }

  private static Optional<Edge> inFrame(Glazing kind, Frame frame, GlazingCatalogue catalogue) {
    Citation source = catalogue.edges().source();
    return switch (frame) {
      case TIMBER, PVC -> inWood(kind, catalogue);
      case METAL ->
          kind.edge()
              .map(
                  e ->
                      new Edge(
                          catalogue.edges().metalFrame().range(),
                          kind.name(),
                          Optional.of(frame),
                          source));
      case METAL_WITH_THERMAL_BREAK ->
          kind.edge()
              .map(e -> new Edge(lowered(e, catalogue), kind.name(), Optional.of(frame), source));
    };
  }

  private static Range lowered(Spread edge, GlazingCatalogue catalogue) {
    double by = catalogue.edges().metalFrameWithBreakLowersBy().range().likely();
    return edge.range().minus(Range.exactly(by));
  }

  private static Optional<Edge> inWood(Glazing kind, GlazingCatalogue catalogue) {
    return kind.edge()
        .map(e -> new Edge(e.range(), kind.name(), Optional.empty(), catalogue.edges().source()));
  }
}
