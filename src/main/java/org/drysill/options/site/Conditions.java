package org.drysill.options.site;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.options.OptionsBasis;
import org.drysill.reference.measures.Condition;
import org.drysill.reference.measures.Measure;
import org.drysill.survey.MoistureSource;
import org.drysill.survey.Shelter;
import org.drysill.survey.Window;
import org.drysill.survey.YesNo;

/** Evaluates the data words of {@link Condition} against an assessment. */
record Conditions(Assessment assessment, OptionsBasis basis) {
  Held of(Condition condition, Measure measure, Site site) {
    AirConditions air = new AirConditions(assessment, basis.defaults());
    VentilationResult found = assessment.ventilation();
    return switch (condition) {
      case HOME_AIR_NOT_MET -> air.homeAir();
      case EXTRACT_NOT_MET ->
          AirConditions.notMet(found.extract(), site, "extract", "its extract suffices");
      case TRANSFER_NOT_MET ->
          AirConditions.notMet(
              found.transfer(), site, "gap under its door", "air passes its doors");
      case BACKGROUND_NOT_MET ->
          AirConditions.notMet(
              found.background(),
              site,
              "area of background ventilators",
              "its background ventilators suffice");
      case NO_HOOD_TO_OUTSIDE -> AirConditions.noHood(site);
      case METAL_SLEEVE -> AirConditions.metalSleeve(site);
      case FLOW_LOST -> air.flowLost(site);
      case FAN_OUT_OF_USE -> AirConditions.fanOut(site);
      case NO_SUCH_FAN -> air.noSuchFan(measure, site);
      case COOKS_WITHOUT_LIDS -> cooks(site);
      case DRIES_CLOTHES_INDOORS -> dries(measure);
      case AIR_MOIST -> airMoist();
      case PLACE_AT_RISK -> placeAtRisk(site);
      case SINGLE_GLAZED -> singleGlazed(site);
      case ROOM_COLD -> roomCold(site);
      case CAVITY_WALLS -> walls("cavity");
      case SOLID_WALLS -> walls("solid");
      case HOME_LEAKY -> air.homeLeaky();
      case HOME_EXPOSED -> exposed();
      case SOURCE_LISTED -> listed(measure, site);
      case WATER_INGRESS -> ingress(site);
      case MOISTURE_UNEXPLAINED ->
          Held.of(
              assessment.moisture().balance() == MoistureResult.Balance.MORE_THAN_ITEMISED,
              "The readings imply more water than the listed sources give.",
              "the listed sources explain the readings, or the readings cannot tell");
    };
  }

  private static Held cooks(Site site) {
    boolean open =
        site.room().stream()
            .flatMap(r -> r.room().moistureSources().stream())
            .filter(s -> s.kind().toLowerCase(Locale.ROOT).startsWith("cook"))
            .map(MoistureSource::lidsAndHood)
            .anyMatch(l -> !l.equals(Optional.of(YesNo.YES)));
    return Held.of(
        open,
        "Cooking here does without lids and hood, or nobody has said.",
        "lids and hood are in use already, or nothing is cooked");
  }

  private Held dries(Measure measure) {
    List<String> kinds = measure.moisture().map(m -> m.sources()).orElse(List.of());
    return Held.of(
        assessment.moisture().items().stream()
            .filter(i -> i.production().likely() > 0)
            .anyMatch(i -> kinds.contains(i.kind())),
        "Clothes dry in the home.",
        "no clothes are said to dry in the home");
  }

  private Held listed(Measure measure, Site site) {
    List<String> kinds = measure.moisture().map(m -> m.sources()).orElse(List.of());
    List<String> there =
        site.room().stream()
            .flatMap(r -> r.room().moistureSources().stream())
            .map(MoistureSource::kind)
            .filter(kinds::contains)
            .distinct()
            .toList();
    return Held.of(
        !there.isEmpty(),
        "The survey lists it: " + String.join(", ", there) + ".",
        "no such source of water is listed");
  }

  private Held exposed() {
    return Held.of(
        assessment.home().survey().dwelling().shelter().equals(Optional.of(Shelter.EXPOSED)),
        "The home stands exposed, so that wind drives rain at its walls.",
        "the home is not said to stand exposed");
  }

  private Held airMoist() {
    return Held.of(
        assessment.condensation().places().stream().anyMatch(Conditions::atRisk),
        "At least one surface is too cold for the moisture of the air.",
        "no surface that was seen is at risk");
  }

  private Held placeAtRisk(Site site) {
    return Held.of(
        assessment.condensation().places().stream()
            .filter(p -> p.item().equals(site.id()))
            .anyMatch(Conditions::atRisk),
        "Mould or condensation is to be expected there.",
        "nothing is at risk there");
  }

  static boolean atRisk(ColdPlace place) {
    return !place.months().monthsAtRisk().isEmpty();
  }

  private Held singleGlazed(Site site) {
    return Held.of(
        site.window().map(this::single).orElse(false),
        "The window has a single pane.",
        "the window is not single glazed");
  }

  private boolean single(Window window) {
    double limit = basis.defaults().singlePaneU().likely();
    return window
        .uValue()
        .map(u -> u.value())
        .or(
            () ->
                window
                    .glazing()
                    .flatMap(g -> basis.glazing().find(g))
                    .map(g -> g.ug().range().likely()))
        .map(u -> u > limit)
        .orElse(false);
  }

  private Held roomCold(Site site) {
    double limit = basis.defaults().coldRoom().likely();
    return Held.of(
        assessment.home().rooms().stream()
            .filter(r -> site.room().map(s -> s.id().equals(r.id())).orElse(true))
            .anyMatch(r -> r.heated() && r.setpoint().likely() < limit),
        "The room is kept below " + Math.round(limit) + " °C.",
        "no such room is kept below " + Math.round(limit) + " °C");
  }

  private Held walls(String word) {
    WallsTold walls = WallsTold.of(assessment.home());
    return walls.areInsulated()
        ? Held.of(false, "", "the walls are filled or insulated already: " + walls.words())
        : Held.of(
            walls.are(word),
            "The walls are " + walls.words() + ".",
            "no " + word + " walls were named");
  }

  private Held ingress(Site site) {
    Optional<String> word = site.room().flatMap(basis.cautions()::ingressWord);
    return Held.of(
        word.isPresent(),
        "The notes on the "
            + site.room().map(RoomFacts::name).orElse("home")
            + " speak of \""
            + word.orElse("")
            + "\".",
        "nothing in the notes points to water from outside, from the ground or from a pipe");
  }
}
