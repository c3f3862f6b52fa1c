package org.drysill.assess.ventilation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drysill.assess.AirChanges;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.assess.ventilation.required.Demand;
import org.drysill.assess.ventilation.required.Demands;
import org.drysill.assess.ventilation.required.RateFormula;
import org.drysill.assess.ventilation.required.RuleFacts;
import org.drysill.physics.Range;
import org.drysill.reference.rules.Confidence;
import org.drysill.reference.rules.Counts;
import org.drysill.reference.rules.RuleCatalogue;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.rules.Standing;
import org.drysill.reference.rules.Term;
import org.drysill.reference.rules.WholeHomeRate;

/** What rule sets ask of a home, side by side in the same units. */
final class Comparisons {
  private final Home home;
  private final RuleFacts facts;
  private final ProvidedAir air;

  Comparisons(Home home, RuleFacts facts, ProvidedAir air) {
    this.home = home;
    this.facts = facts;
    this.air = air;
  }

  /** Every rule set and variant, the governing one first. */
  List<RuleComparison> all(RuleSet governing, RuleCatalogue rules) {
    Stream<RuleSet> others = rules.all().stream().filter(set -> !set.id().equals(governing.id()));
    return Stream.concat(Stream.of(governing), others)
        .flatMap(
            set ->
                set.wholeHome().stream()
                    .map(rate -> row(set, rate, set.equals(governing) && isFirst(rate, set))))
        .toList();
  }

  private static boolean isFirst(WholeHomeRate rate, RuleSet set) {
    return rate.equals(set.governing());
  }

  /** What the governing rule set asks, as a figure; empty where a fact is missing. */
  Optional<Figure> required(RuleSet rules, Demand demand) {
    return demand
        .rate()
        .map(
            rate ->
                figure(
                    "ventilation.whole_home.required",
                    "outdoor air asked of the whole home",
                    rate,
                    rules.governing().rate(),
                    demand));
  }

  /** The same with each of its terms. */
  RequiredAir asked(RuleSet rules, Demand demand, Optional<Figure> required) {
    List<RequiredAir.Term> terms = new ArrayList<>();
    for (Demand.Part part : demand.parts()) {
      String id = "ventilation.whole_home.required.term_" + (terms.size() + 1);
      terms.add(
          new RequiredAir.Term(
              part.name(),
              figure(id, "rate by " + part.name(), part.rate(), part.term(), demand),
              part.governs()));
    }
    List<String> notes =
        Stream.concat(rules.governing().note().stream(), demand.notes().stream()).toList();
    return new RequiredAir(required, demand.governedBy(), terms, notes);
  }

  private RuleComparison row(RuleSet set, WholeHomeRate rate, boolean governing) {
    Demand demand = Demands.of(rate.rate(), facts);
    String id = set.id() + rate.id().map(v -> "/" + v).orElse("");
    String figure = "ventilation.rule." + id.replace('/', '.');
    Optional<Figure> required =
        demand
            .rate()
            .map(q -> figure(figure, "outdoor air by " + set.title(), q, rate.rate(), demand));
    return new RuleComparison(
        id,
        set.title(),
        set.edition(),
        set.place(),
        rate.name(),
        rate.purpose(),
        governing,
        rate.counts(),
        required,
        required.map(q -> airChange(figure, q)),
        required.map(
            q -> per(figure + ".per_person", "by person", q, home.occupants(), Unit.AIRFLOW)),
        required.map(
            q ->
                per(
                    figure + ".per_floor_area",
                    "by floor area",
                    q,
                    home.floorArea(),
                    Unit.AIRFLOW_PER_AREA)),
        demand.governedBy(),
        demand.fromMemory(),
        demand.confidence(),
        status(set, demand, governing),
        required.map(q -> verdict(rate, q, demand)).orElse(Verdict.UNKNOWN),
        demand.missing(),
        demand.sources());
  }

  /** As for the governing one: a doubtful remembered figure tells nothing. */
  private Verdict verdict(WholeHomeRate rate, Figure asked, Demand demand) {
    Figure provided = rate.counts() == Counts.ALL_OUTDOOR_AIR ? air.wholeHome() : air.byFans();
    return demand.confidence().filter(c -> c == Confidence.LOW).isPresent()
        ? Verdict.UNKNOWN
        : Verdict.atLeast(provided.value(), asked.value());
  }

  private static String status(RuleSet set, Demand demand, boolean governing) {
    if (!demand.missing().isEmpty()) {
      return "Needs " + String.join("; ", demand.missing());
    }
    String use = governing ? "Governs here" : "For comparison";
    String past = set.standing() == Standing.SUPERSEDED ? ", superseded" : "";
    String known =
        demand.fromMemory()
            ? "; from memory, unconfirmed"
                + demand.confidence().map(c -> " (" + sure(c) + ")").orElse("")
            : "";
    return use + past + known;
  }

  private static String sure(Confidence confidence) {
    return confidence.word() + " confidence";
  }

  private Figure figure(String id, String name, Range rate, Term term, Demand demand) {
    return new Figure(
        id,
        name,
        rate,
        Unit.AIRFLOW,
        Basis.CALCULATED,
        () ->
            new Working(
                "q = " + RateFormula.of(term),
                inputs(RateFormula.of(term)),
                demand.sources(),
                demand.notes().isEmpty()
                    ? Optional.empty()
                    : Optional.of(String.join(" ", demand.notes()))));
  }

  /** The facts whose symbols stand in a formula. */
  private List<Input> inputs(String formula) {
    return Stream.of(
            Stream.of(
                Input.of("A", home.floorArea()),
                Input.of("V", home.volume()),
                Input.of("n50", home.n50()),
                count("N_bedrooms", "number of bedrooms", home.bedrooms()),
                count("N_storeys", "number of storeys", home.storeys()),
                Input.of("N_persons", home.occupants())),
            facts.mainRooms().stream().map(n -> count("N_main rooms", "number of main rooms", n)),
            facts.weatherFactor().stream()
                .map(
                    w ->
                        Input.of(
                            "w", "weather and shielding factor", w, Unit.RATIO, Basis.DECLARED)))
        .flatMap(inputs -> inputs)
        .filter(input -> Pattern.compile("\\b" + input.symbol() + "\\b").matcher(formula).find())
        .toList();
  }

  private static Input count(String symbol, String name, int number) {
    return Input.of(symbol, name, Range.exactly(number), Unit.COUNT, Basis.DECLARED);
  }

  private Figure airChange(String id, Figure flow) {
    return AirChanges.of(id + ".air_change", flow.name() + ", as air changes", flow, home.volume());
  }

  private static Figure per(String id, String how, Figure flow, Figure divisor, Unit unit) {
    return new Figure(
        id,
        flow.name() + ", " + how,
        flow.value().times(1 / divisor.likely()),
        unit,
        flow.basis(),
        () ->
            new Working(
                "q / x",
                List.of(Input.of("q", flow), Input.of("x", divisor)),
                List.of(),
                Optional.empty()));
  }
}
