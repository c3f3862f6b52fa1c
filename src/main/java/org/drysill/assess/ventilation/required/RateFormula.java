package org.drysill.assess.ventilation.required;

import java.util.List;
import java.util.stream.Collectors;
import org.drysill.reference.rules.Rate;
import org.drysill.reference.rules.RateStep;
import org.drysill.reference.rules.Term;
import org.drysill.yaml.Quantity;

/** A rate as a formula in the units of its document: A floor area, V volume, N number. */
public final class RateFormula implements Rate.Cases<String> {
  private static final RateFormula INSTANCE = new RateFormula();

  private RateFormula() {}

  /** The formula of a term, without the left side. */
  public static String of(Term term) {
    String rate = term.rate().on(INSTANCE);
    return term.factor().map(f -> f + " × " + rate).orElse(rate);
  }

  @Override
  public String greatestOf(Rate.GreatestOf rate) {
    return all(rate.terms(), "max(", "; ");
  }

  @Override
  public String sumOf(Rate.SumOf rate) {
    return all(rate.terms(), "(", " + ");
  }

  @Override
  public String differenceOf(Rate.DifferenceOf rate) {
    return "max(0; " + all(rate.terms(), "", " − ");
  }

  @Override
  public String byBedrooms(Rate.ByBedrooms rate) {
    String more = rate.perFurther().map(q -> ", " + q.written() + " each further").orElse("");
    return "table(N_bedrooms: " + steps(rate.steps()) + more + ")";
  }

  @Override
  public String byFloorAndBedrooms(Rate.ByFloorAndBedrooms rate) {
    return rate.rows().stream()
        .map(row -> "A > " + row.above().written() + ": " + steps(row.steps()))
        .collect(Collectors.joining("; ", "table(A; N_bedrooms: ", ")"));
  }

  @Override
  public String byMainRooms(Rate.ByMainRooms rate) {
    return "table(N_main rooms: " + steps(rate.steps()) + ")";
  }

  @Override
  public String perPerson(Rate.PerPerson rate) {
    String who =
        switch (rate.counted()) {
          case OCCUPANTS -> "N_persons";
          case BEDROOMS_PLUS_ONE -> "(N_bedrooms + 1)";
          case DESIGN_OCCUPANCY -> "max(N_bedrooms + 1; N_persons)";
        };
    return rate.rate().written() + " × " + who;
  }

  @Override
  public String perFloorArea(Rate.PerFloorArea rate) {
    return rate.rate().written() + " per " + rate.area().written() + " × A";
  }

  @Override
  public String floorPolynomial(Rate.FloorPolynomial rate) {
    return "("
        + rate.constant().written()
        + " + "
        + rate.perM2().written()
        + " × A + "
        + rate.perM4().written()
        + " × A²)";
  }

  @Override
  public String perRoom(Rate.PerRoom rate) {
    String each = rate.each().map(Quantity::written).orElse("");
    String area = rate.perM2().map(q -> q.written() + " per m² × A_room").orElse("");
    String sum = each.isEmpty() || area.isEmpty() ? each + area : each + " + " + area;
    return "Σ_rooms " + rate.least().map(q -> "max(" + sum + "; " + q.written() + ")").orElse(sum);
  }

  @Override
  public String airChange(Rate.AirChange rate) {
    return rate.perHour().written() + " × V";
  }

  @Override
  public String leakageCredit(Rate.LeakageCredit rate) {
    String heights =
        rate.heights().stream()
            .map(row -> row.storeys() + " → " + row.factor())
            .collect(Collectors.joining(", "));
    return rate.share() + " × w × s(N_storeys: " + heights + ") × n50 × V";
  }

  @Override
  public String fixed(Rate.Fixed rate) {
    return rate.rate().written();
  }

  private static String all(List<Term> terms, String start, String between) {
    return terms.stream().map(RateFormula::of).collect(Collectors.joining(between, start, ")"));
  }

  private static String steps(List<RateStep> steps) {
    return steps.stream()
        .map(step -> step.count() + " → " + step.rate().written())
        .collect(Collectors.joining(", "));
  }
}
