package org.drysill.assess.ventilation.ducts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.flow.DuctSystem;
import org.drysill.physics.flow.FanCurve;
import org.drysill.physics.flow.RoundDuct.Air;
import org.drysill.physics.flow.StackPressure;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.ventilation.DuctTables;
import org.drysill.survey.CurvePoint;
import org.drysill.survey.Duct;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;
import org.drysill.yaml.Quantity;

/**
 * The flow of a fan at the point where its declared curve meets what its duct loses, and of a stack
 * where warmth does. Low, likely and high are three points: with every loss at its highest, likely
 * and lowest.
 */
public final class DuctFlows {
  private static final Air AIR = Air.ROOM;

  /** No stack of a home draws as much [m³/s]; where to stop looking. */
  private static final double MOST_OF_A_STACK = 2;

  private static final String LOSS =
      "Δp = m × L × (f / D) × ρ/2 × v² + (K_bends + K_ends) × ρ/2 × v², with f by Colebrook";

  private static final List<Citation> FRICTION =
      List.of(
          new Citation(
              "ASHRAE Handbook Fundamentals",
              Optional.empty(),
              Optional.of("duct design, Darcy and Colebrook"),
              How.MEMORY));

  private final DuctTables tables;
  private final List<Assumption> assumptions = new ArrayList<>();

  /** Flows through ducts that lose as these tables say. */
  public DuctFlows(DuctTables tables) {
    this.tables = tables;
  }

  /** What was taken for granted so far. */
  public List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  /** True for a fan whose one duct is all that it blows through. */
  public static boolean hasOneDuct(FanKind kind) {
    return switch (kind) {
      case INTERMITTENT_EXTRACT,
          CONTINUOUS_EXTRACT,
          EXTRACT_HOOD,
          ALTERNATING_HEAT_RECOVERY,
          SIMULTANEOUS_HEAT_RECOVERY ->
          true;
      case POSITIVE_INPUT,
          BALANCED_HEAT_RECOVERY,
          PASSIVE_STACK,
          RECIRCULATING_HOOD,
          FITTED_BUT_NOT_WORKING ->
          false;
    };
  }

  /** What must be noted for the flow to be calculated, in words; empty where it can be. */
  public static List<String> missing(Fan fan) {
    Stream<String> curve =
        fan.fanCurve().isEmpty() && fan.kind() != FanKind.PASSIVE_STACK
            ? Stream.of("the curve that its maker declares")
            : Stream.empty();
    return Stream.concat(curve, DuctFacts.missing(fan.duct()).stream()).toList();
  }

  /** The working point of a fan; empty where its curve or its duct is not known. */
  public Optional<FanAtWork> ofFan(Fan fan, String name) {
    if (fan.fanCurve().isEmpty() || !hasOneDuct(fan.kind())) {
      return Optional.empty();
    }
    return DuctFacts.behindFan(fan.duct(), tables).map(duct -> ofFan(fan, name, duct));
  }

  private FanAtWork ofFan(Fan fan, String name, KnownDuct duct) {
    FanCurve curve =
        new FanCurve(
            fan.fanCurve().stream()
                .map(p -> new FanCurve.Point(p.flow().value(), p.pressure().value()))
                .toList());
    assumeUnseen(fan, name, duct);
    Three points =
        new Three(
            duct,
            duct.tightest().flowM3S(curve, AIR),
            duct.likely().flowM3S(curve, AIR),
            duct.freest().flowM3S(curve, AIR));
    boolean atItsEnd = points.freest() == curve.mostM3S();
    String note =
        "Curve of its maker: "
            + fan.fanCurve().stream().map(DuctFlows::words).collect(Collectors.joining(", "))
            + ". Reckoned for a clean fan, without wind."
            + (atItsEnd ? " No more is counted than the last point of the curve." : "");
    return at(fan, name, points, "p_fan(q) = Δp(q); " + LOSS, List.of(), FRICTION, note);
  }

  private static String words(CurvePoint point) {
    return point.flow().written() + " at " + point.pressure().written();
  }

  /**
   * What a stack draws by warmth alone; empty where its duct is not known.
   *
   * @param fan the stack
   * @param name its name in sentences
   * @param indoor usual indoor temperature [°C]
   * @param outdoor mean outdoor temperature of the cold season [°C]
   */
  public Optional<FanAtWork> ofStack(Fan fan, String name, Range indoor, double outdoor) {
    return DuctFacts.ofStack(fan.duct(), tables)
        .filter(duct -> indoor.low() > outdoor)
        .map(duct -> ofStack(fan, name, duct, indoor, outdoor));
  }

  private FanAtWork ofStack(Fan fan, String name, KnownDuct duct, Range indoor, double outdoor) {
    Optional<Range> measured = fan.duct().flatMap(Duct::height).map(Quantity::range);
    Range height = measured.orElse(duct.length());
    assumeUnseen(fan, name, duct);
    Three points =
        new Three(
            duct,
            drawn(duct.tightest(), height.low(), indoor.low(), outdoor),
            drawn(duct.likely(), height.likely(), indoor.likely(), outdoor),
            drawn(duct.freest(), height.high(), indoor.high(), outdoor));
    return at(
        fan,
        name,
        points,
        "ρ × g × h × (Ti − Te) / T = Δp(q); " + LOSS,
        List.of(
            Input.of(
                "h",
                measured.isPresent() ? "height" : "height, taken as its length",
                height,
                Unit.METRE,
                measured.isPresent() ? Basis.MEASURED : Basis.ASSUMED),
            Input.of("Ti", "indoor temperature", indoor, Unit.CELSIUS, Basis.DECLARED),
            Input.of(
                "Te",
                "mean outdoor temperature of the cold season",
                Range.exactly(outdoor),
                Unit.CELSIUS,
                Basis.PUBLISHED)),
        FRICTION,
        "By warmth alone, air free to come in; wind mostly adds, and may stop it.");
  }

  private static double drawn(DuctSystem duct, double height, double indoor, double outdoor) {
    double pressure = StackPressure.pa(AIR.densityKgM3(), height, indoor, outdoor);
    return duct.flowM3S(pressure, MOST_OF_A_STACK, AIR);
  }

  private void assumeUnseen(Fan fan, String name, KnownDuct duct) {
    if (!duct.unseen().isEmpty()) {
      String what = String.join(", ", duct.unseen());
      assumptions.add(
          new Assumption(
              "fan." + fan.id() + ".duct",
              "duct of " + name,
              "from none to the worst: " + what,
              "The survey does not tell of it, and the flow is reckoned through this duct.",
              "Look at the duct of " + name + " and note " + what + ", or that there is none.",
              tables.bends().get(tables.bends().size() - 1).source()));
    }
  }

  /** The three points of a duct: flows [m³/s] with its losses highest, likely and lowest. */
  private record Three(KnownDuct duct, double tightest, double likely, double freest) {
    Range flow() {
      return new Range(tightest, likely, freest);
    }

    /** A loss at the three points [Pa]; less flow may come with more loss. */
    Range loss(Loss part) {
      double likelyPa = part.pa(duct.likely(), likely, AIR);
      double[] others = {
        part.pa(duct.tightest(), tightest, AIR), part.pa(duct.freest(), freest, AIR)
      };
      return new Range(
          Math.min(likelyPa, Math.min(others[0], others[1])),
          likelyPa,
          Math.max(likelyPa, Math.max(others[0], others[1])));
    }
  }

  /** A part of what a duct loses. */
  private interface Loss {
    double pa(DuctSystem duct, double flowM3S, Air air);
  }

  private static FanAtWork at(
      Fan fan,
      String name,
      Three points,
      String formula,
      List<Input> driving,
      List<Citation> method,
      String note) {
    KnownDuct duct = points.duct();
    Range friction = points.loss(DuctSystem::frictionPa);
    Range bends = points.loss(DuctSystem::bendsPa);
    Range ends = points.loss(DuctSystem::endsPa);
    Figure pressure = pressure(fan, name, points, friction, bends, ends);
    Figure flow =
        new Figure(
            "fan." + fan.id() + ".running",
            "flow of " + name + " while it runs",
            points.flow(),
            Unit.AIRFLOW,
            Basis.CALCULATED,
            () ->
                new Working(
                    formula,
                    Stream.of(driving, duct.inputs(), List.of(Input.of("Δp", pressure)))
                        .flatMap(List::stream)
                        .toList(),
                    Stream.concat(method.stream(), duct.sources().stream()).toList(),
                    Optional.of(note)));
    return new FanAtWork(flow, pressure, friction, bends, ends);
  }

  private static Figure pressure(
      Fan fan, String name, Three points, Range friction, Range bends, Range ends) {
    return new Figure(
        "fan." + fan.id() + ".pressure",
        "pressure that " + name + " works against",
        points.loss(DuctSystem::lossPa),
        Unit.PASCAL,
        Basis.CALCULATED,
        () ->
            new Working(
                "Δp = Δp_friction + Δp_bends + Δp_ends",
                List.of(
                    part("Δp_friction", "lost along the duct", friction),
                    part("Δp_bends", "lost in its bends", bends),
                    part("Δp_ends", "lost at its ends and in what stands in it", ends)),
                FRICTION,
                Optional.of(
                    "The ranges are of three working points; they do not add end by end.")));
  }

  private static Input part(String symbol, String name, Range value) {
    return Input.of(symbol, name, value, Unit.PASCAL, Basis.CALCULATED);
  }
}
