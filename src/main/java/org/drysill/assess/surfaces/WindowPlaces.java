package org.drysill.assess.surfaces;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.surfaces.factor.FactorFinder;
import org.drysill.assess.surfaces.factor.ReadingFactor;
import org.drysill.assess.surfaces.factor.TemperatureFactor;
import org.drysill.reference.glazing.Glazing;
import org.drysill.reference.glazing.GlazingCatalogue;
import org.drysill.survey.Frame;
import org.drysill.survey.Orientation;
import org.drysill.survey.SurfaceMaterial;
import org.drysill.survey.Window;

/** The places of a window: as read, the middle of its pane, its lower edge, a frame of metal. */
final class WindowPlaces {
  private final GlazingCatalogue catalogue;
  private final FactorFinder factors;

  WindowPlaces(GlazingCatalogue catalogue, FactorFinder factors) {
    this.catalogue = catalogue;
    this.factors = factors;
  }

  void each(RoomFacts room, Window window, Consumer<Draft> place) {
    List<ReadingFactor> read = factors.readings(room, window.readings());
    Optional<TemperatureFactor> asRead = factors.ofReadings(window.id() + ".read", read);
    boolean named = window.glazing().isPresent() || window.uValue().isPresent();
    Optional<Window> whole = Optional.of(window);
    asRead
        .map(f -> draft(window, Part.READ, f, read, named ? Optional.empty() : whole))
        .ifPresent(place);
    if (named || asRead.isEmpty()) {
      List<ReadingFactor> refused = asRead.isPresent() ? List.of() : read;
      TemperatureFactor centre = factors.ofPaneCentre(window.id() + ".centre", window, refused);
      place.accept(draft(window, Part.CENTRE, centre, refused, whole));
    }
    factors
        .ofPaneEdge(window.id() + ".edge", window)
        .map(f -> draft(window, Part.EDGE, f, List.of(), Optional.empty()))
        .ifPresent(place);
    factors
        .ofMetalFrame(window.id() + ".frame", window)
        .map(f -> draft(window, Part.FRAME, f, List.of(), Optional.empty()))
        .ifPresent(place);
  }

  private enum Part {
    READ("read", "coldest point read", PlaceKind.WINDOW_AS_READ),
    CENTRE("centre", "middle of the pane", PlaceKind.PANE_CENTRE),
    EDGE("edge", "lower edge of the pane", PlaceKind.PANE_EDGE),
    FRAME("frame", "frame", PlaceKind.FRAME);

    private final String suffix;
    private final String words;
    private final PlaceKind kind;

    Part(String suffix, String words, PlaceKind kind) {
      this.suffix = suffix;
      this.words = words;
      this.kind = kind;
    }
  }

  private Draft draft(
      Window window,
      Part part,
      TemperatureFactor factor,
      List<ReadingFactor> read,
      Optional<Window> wholePane) {
    return new Draft(
        window.id() + "." + part.suffix,
        window.id(),
        name(window) + ", " + part.words,
        part.kind,
        part == Part.FRAME ? frameWords(window) : glazingWords(window),
        SurfaceClass.GLASS,
        new Seen(Optional.empty(), Optional.empty(), window.condensationSeen()),
        Optional.of(SurfaceMaterial.GLASS.word()),
        factor,
        read,
        Optional.empty(),
        wholePane);
  }

  private static String name(Window window) {
    return window
        .name()
        .or(() -> window.orientation().map(WindowPlaces::facing))
        .orElse("window " + window.id());
  }

  private static String facing(Orientation orientation) {
    return "window facing " + orientation.word();
  }

  private static String frameWords(Window window) {
    return "a frame of " + window.frame().map(Frame::word).orElse("unknown material");
  }

  private String glazingWords(Window window) {
    return window
        .glazing()
        .flatMap(catalogue::find)
        .map(Glazing::words)
        .or(() -> window.uValue().map(u -> "glazing of " + u.written()))
        .orElseGet(() -> catalogue.unknown().words());
  }
}
