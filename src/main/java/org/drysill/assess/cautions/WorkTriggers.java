package org.drysill.assess.cautions;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.reference.cautions.CautionFacts;
import org.drysill.reference.cautions.Trigger;
import org.drysill.survey.CombustionAppliance;
import org.drysill.survey.Construction;
import org.drysill.survey.DwellingType;
import org.drysill.survey.RoomUse;
import org.drysill.survey.YesNo;

/**
 * Which triggers work in a home calls up, for measures that name the caution. Here what nobody has
 * looked at counts as if it were so.
 */
record WorkTriggers(Home home, CautionFacts facts) {

  Optional<Reason> of(Trigger trigger, List<RoomFacts> rooms) {
    return switch (trigger) {
      case OPEN_FLUE_WITH_EXTRACT, OPEN_FLUE -> openFlue();
      case COMBUSTION -> combustion();
      case BATH_OR_SHOWER -> bathOrShower(rooms);
      case ASBESTOS_POSSIBLE -> asbestos();
      case RADON_POSSIBLE -> radon();
      case LISTED_POSSIBLE -> listed();
      case FLAT -> flat();
      case POSITIVE_INPUT, WORK -> Reason.home("The work itself calls for it.");
      case UNFLUED_HEATER,
          GAS_HOB,
          MOULD_EXTENSIVE,
          MOULD,
          VULNERABLE_OCCUPANTS,
          FAN_OFF,
          WATER_INGRESS ->
          new FactTriggers(home, facts).of(trigger);
    };
  }

  private Optional<Reason> openFlue() {
    List<CombustionAppliance> open = Appliances.openFlued(home);
    if (!open.isEmpty()) {
      return Reason.rooms("The home has " + Appliances.words(open) + ".", Appliances.rooms(open));
    }
    return Appliances.notTold(home)
        ? Reason.home("The survey does not say what in the home burns fuel.")
        : Optional.empty();
  }

  private Optional<Reason> combustion() {
    return Appliances.all(home).isEmpty() && !Appliances.notTold(home)
        ? Optional.empty()
        : Reason.home("The home may burn fuel.");
  }

  private static Optional<Reason> bathOrShower(List<RoomFacts> rooms) {
    List<String> wet =
        rooms.stream().filter(WorkTriggers::bathOrShower).map(RoomFacts::id).toList();
    return wet.isEmpty()
        ? Optional.empty()
        : Reason.rooms("The work is in a room with a bath or shower.", wet);
  }

  private static boolean bathOrShower(RoomFacts room) {
    return room.room().use() == RoomUse.BATHROOM || room.room().use() == RoomUse.SHOWER_ROOM;
  }

  private Optional<Reason> asbestos() {
    return switch (told(Construction::asbestos)) {
      case YES -> Reason.home("Asbestos is known or suspected.");
      case NO -> Optional.empty();
      case UNKNOWN ->
          builtBefore(facts.asbestosBefore())
              ? Reason.home(
                  "The building may be from before "
                      + facts.asbestosBefore()
                      + ", and nobody has looked for asbestos.")
              : Optional.empty();
    };
  }

  private Optional<Reason> radon() {
    return switch (told(Construction::radonArea)) {
      case YES -> Reason.home("The home is in a radon area.");
      case NO -> Optional.empty();
      case UNKNOWN -> Reason.home("Nobody has looked up whether this is a radon area.");
    };
  }

  private Optional<Reason> listed() {
    return switch (told(Construction::listed)) {
      case YES -> Reason.home("The building is protected.");
      case NO -> Optional.empty();
      case UNKNOWN ->
          builtBefore(facts.protectedBefore())
              ? Reason.home("The building may be old enough to be protected.")
              : Optional.empty();
    };
  }

  private Optional<Reason> flat() {
    return home.survey().dwelling().type().map(WorkTriggers::isFlat).orElse(false)
        ? Reason.home("The home is a flat.")
        : Optional.empty();
  }

  private static boolean isFlat(DwellingType type) {
    return switch (type) {
      case GROUND_FLOOR_FLAT, MID_FLOOR_FLAT, TOP_FLOOR_FLAT, MAISONETTE, STUDIO -> true;
      case DETACHED_HOUSE, SEMI_DETACHED_HOUSE, END_TERRACE_HOUSE, MID_TERRACE_HOUSE, BUNGALOW ->
          false;
    };
  }

  private YesNo told(Function<Construction, Optional<YesNo>> fact) {
    return home.survey().dwelling().construction().flatMap(fact).orElse(YesNo.UNKNOWN);
  }

  private boolean builtBefore(int year) {
    return home.survey().dwelling().built().map(b -> b < year).orElse(true);
  }
}
