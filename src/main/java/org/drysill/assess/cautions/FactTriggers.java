package org.drysill.assess.cautions;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.reference.cautions.CautionFacts;
import org.drysill.reference.cautions.Trigger;
import org.drysill.survey.ApplianceKind;
import org.drysill.survey.CombustionAppliance;
import org.drysill.survey.Construction;
import org.drysill.survey.FanKind;
import org.drysill.survey.YesNo;

/** Which triggers the home calls up as it stands, before any work on it. */
record FactTriggers(Home home, CautionFacts facts) {

  Optional<Reason> of(Trigger trigger) {
    return switch (trigger) {
      case OPEN_FLUE_WITH_EXTRACT -> openFlueWithExtract();
      case OPEN_FLUE -> appliances(Appliances.openFlued(home));
      case UNFLUED_HEATER -> unflued();
      case GAS_HOB -> appliances(Appliances.of(home, ApplianceKind.GAS_HOB));
      case COMBUSTION -> combustion();
      case ASBESTOS_POSSIBLE -> known(Construction::asbestos, "Asbestos is known or suspected.");
      case RADON_POSSIBLE -> known(Construction::radonArea, "The home is in a radon area.");
      case LISTED_POSSIBLE -> known(Construction::listed, "The building is protected.");
      case MOULD_EXTENSIVE -> extensiveMould();
      case MOULD -> inRooms(Signs.mouldyRooms(home), "Mould was seen.");
      case VULNERABLE_OCCUPANTS -> vulnerable();
      case FAN_OFF ->
          inRooms(Signs.roomsWithFansOff(home, facts), "A fan is fitted but out of use.");
      case POSITIVE_INPUT -> positiveInput();
      case WATER_INGRESS -> ingress();
      case BATH_OR_SHOWER, FLAT, WORK -> Optional.empty();
    };
  }

  private Optional<Reason> openFlueWithExtract() {
    List<CombustionAppliance> open = Appliances.openFlued(home);
    if (open.isEmpty() || !Signs.takesAirOut(home)) {
      return Optional.empty();
    }
    return Reason.rooms(
        "The home has " + Appliances.words(open) + " and a fan that takes air out.",
        Appliances.rooms(open));
  }

  private static Optional<Reason> appliances(List<CombustionAppliance> found) {
    return found.isEmpty()
        ? Optional.empty()
        : Reason.rooms("The home has " + Appliances.words(found) + ".", Appliances.rooms(found));
  }

  private Optional<Reason> unflued() {
    Optional<Reason> listed = appliances(Appliances.of(home, ApplianceKind.UNFLUED_HEATER));
    return listed.or(
        () ->
            inRooms(
                Appliances.unfluedSources(home, facts),
                "A heater without a flue is among the moisture sources."));
  }

  private Optional<Reason> combustion() {
    return Appliances.openFlued(home).isEmpty() && unflued().isEmpty()
        ? Optional.empty()
        : Reason.home("Something in the home burns fuel with the air of the room.");
  }

  private Optional<Reason> known(Function<Construction, Optional<YesNo>> fact, String because) {
    return home.survey().dwelling().construction().flatMap(fact).equals(Optional.of(YesNo.YES))
        ? Reason.home(because)
        : Optional.empty();
  }

  private Optional<Reason> extensiveMould() {
    List<String> rooms =
        home.rooms().stream().filter(r -> Signs.extensive(r, facts)).map(RoomFacts::id).toList();
    return inRooms(
        rooms, "The mould covers more than a person should clean, or was called extensive.");
  }

  private Optional<Reason> vulnerable() {
    YesNo told = home.survey().dwelling().vulnerableOccupants().orElse(YesNo.UNKNOWN);
    return switch (told) {
      case YES -> Reason.home("The survey says that someone vulnerable lives here.");
      case NO -> Optional.empty();
      case UNKNOWN ->
          Signs.mouldyRooms(home).isEmpty()
              ? Optional.empty()
              : Reason.home(
                  "Mould was seen, and the survey does not say whether someone vulnerable lives"
                      + " here.");
    };
  }

  private Optional<Reason> positiveInput() {
    return Signs.has(home, FanKind.POSITIVE_INPUT)
        ? Reason.home("Positive input ventilation is fitted.")
        : Optional.empty();
  }

  private Optional<Reason> ingress() {
    List<RoomFacts> wet =
        home.rooms().stream().filter(r -> Signs.ingress(r, facts).isPresent()).toList();
    if (wet.isEmpty()) {
      return Optional.empty();
    }
    String word = Signs.ingress(wet.get(0), facts).orElseThrow();
    return Reason.rooms(
        "The notes on the " + wet.get(0).name() + " speak of \"" + word + "\".",
        wet.stream().map(RoomFacts::id).toList());
  }

  private static Optional<Reason> inRooms(List<String> rooms, String because) {
    return rooms.isEmpty() ? Optional.empty() : Reason.rooms(because, rooms);
  }
}
