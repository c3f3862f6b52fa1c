package org.drysill.assess.ventilation.required;

import java.util.List;
import org.drysill.reference.rules.Rate;

/** The facts that a rate needs and that the survey lacks, as instructions. */
record FactsNeeded(RuleFacts facts) implements Rate.Cases<List<String>> {
  @Override
  public List<String> greatestOf(Rate.GreatestOf rate) {
    return List.of();
  }

  @Override
  public List<String> sumOf(Rate.SumOf rate) {
    return List.of();
  }

  @Override
  public List<String> differenceOf(Rate.DifferenceOf rate) {
    return List.of();
  }

  @Override
  public List<String> byFloorAndBedrooms(Rate.ByFloorAndBedrooms rate) {
    return List.of();
  }

  @Override
  public List<String> leakageCredit(Rate.LeakageCredit rate) {
    return facts.weatherFactor().isPresent()
        ? List.of()
        : List.of(
            "the weather and shielding factor of the place: give it with the airtightness, as the"
                + " standard tabulates it for North American stations");
  }

  @Override
  public List<String> byBedrooms(Rate.ByBedrooms rate) {
    return List.of();
  }

  @Override
  public List<String> byMainRooms(Rate.ByMainRooms rate) {
    return facts.mainRooms().isPresent()
        ? List.of()
        : List.of("the number of main rooms: list every room of the home with its floor area");
  }

  @Override
  public List<String> perPerson(Rate.PerPerson rate) {
    return List.of();
  }

  @Override
  public List<String> perFloorArea(Rate.PerFloorArea rate) {
    return List.of();
  }

  @Override
  public List<String> floorPolynomial(Rate.FloorPolynomial rate) {
    return List.of();
  }

  @Override
  public List<String> perRoom(Rate.PerRoom rate) {
    return facts.rooms().isPresent()
        ? List.of()
        : List.of("the floor area of every room: list every room of the home with it");
  }

  @Override
  public List<String> airChange(Rate.AirChange rate) {
    return List.of();
  }

  @Override
  public List<String> fixed(Rate.Fixed rate) {
    return List.of();
  }
}
