package org.drysill.assess.ventilation.ducts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.ventilation.DuctBend;
import org.drysill.reference.ventilation.DuctEnd;
import org.drysill.reference.ventilation.DuctSurface;
import org.drysill.reference.ventilation.DuctTables;
import org.drysill.reference.ventilation.DuctTables.Bend;
import org.drysill.reference.ventilation.DuctTables.End;
import org.drysill.reference.ventilation.DuctTables.Surface;
import org.drysill.survey.BendKind;
import org.drysill.survey.Duct;
import org.drysill.survey.DuctMaterial;
import org.drysill.survey.DuctTerminal;
import org.drysill.survey.YesNo;
import org.drysill.yaml.Quantity;

/** What is known of a duct, and what is missing to reckon with it. */
final class DuctFacts {
  private final Duct duct;
  private final DuctTables tables;
  private final List<String> unseen = new ArrayList<>();
  private final List<Citation> sources = new ArrayList<>();

  private DuctFacts(Duct duct, DuctTables tables) {
    this.duct = duct;
    this.tables = tables;
  }

  /** What must be noted before the duct can be reckoned with; none where it can. */
  static List<String> missing(Optional<Duct> duct) {
    List<String> missing = new ArrayList<>();
    need(missing, "the inner diameter", duct.flatMap(Duct::diameter).filter(q -> q.low() > 0));
    need(missing, "the length", duct.flatMap(Duct::length));
    need(missing, "the number of bends", duct.flatMap(Duct::bends));
    need(missing, "the material", duct.flatMap(Duct::material));
    need(missing, "what covers the outer end", duct.flatMap(Duct::cowl));
    return missing;
  }

  private static void need(List<String> missing, String what, Optional<?> fact) {
    if (fact.isEmpty()) {
      missing.add(what);
    }
  }

  /** The duct of a fan; its inlet is the fan's own, which is within the declared curve. */
  static Optional<KnownDuct> behindFan(Optional<Duct> duct, DuctTables tables) {
    return duct.filter(d -> missing(duct).isEmpty())
        .map(d -> new DuctFacts(d, tables).known(Optional.empty()));
  }

  /** A duct without fan, into which air must enter by itself. */
  static Optional<KnownDuct> ofStack(Optional<Duct> duct, DuctTables tables) {
    return duct.filter(d -> missing(duct).isEmpty())
        .map(d -> new DuctFacts(d, tables).known(Optional.of(DuctEnd.ENTRY)));
  }

  private KnownDuct known(Optional<DuctEnd> entry) {
    Surface surface = tables.surface(surface(duct.material().orElseThrow()));
    sources.add(surface.source());
    Range bends = bends(duct.bends().orElseThrow());
    Range ends = loss(end(duct.cowl().orElseThrow())).plus(grille(entry)).plus(shutter());
    return new KnownDuct(
        duct.diameter().map(Quantity::range).orElseThrow(),
        duct.length().map(Quantity::range).orElseThrow(),
        surface.roughness().range(),
        surface.slackness().range(),
        bends,
        ends,
        List.copyOf(unseen),
        sources.stream().distinct().toList());
  }

  private Range bends(int number) {
    if (number == 0) {
      return Range.exactly(0);
    }
    if (duct.bend().isEmpty()) {
      unseen.add("how its bends are made");
    }
    Bend bend = tables.bend(duct.bend().map(DuctFacts::bend).orElse(DuctBend.NOT_KNOWN));
    sources.add(bend.source());
    return bend.loss().range().times(number);
  }

  private Range grille(Optional<DuctEnd> entry) {
    if (duct.grille().isEmpty()) {
      unseen.add("a grille at its end in the room");
      Range bare = entry.map(this::loss).orElse(Range.exactly(0));
      return new Range(bare.low(), bare.likely(), loss(DuctEnd.WALL_GRILLE).high());
    }
    return duct.grille()
        .filter(g -> g != DuctTerminal.NONE)
        .map(DuctFacts::end)
        .or(() -> entry)
        .map(this::loss)
        .orElse(Range.exactly(0));
  }

  /** A terminal with flaps needs no shutter. */
  private Range shutter() {
    boolean flaps = duct.cowl().equals(Optional.of(DuctTerminal.GRAVITY_FLAP));
    return switch (duct.backdraughtShutter().orElse(flaps ? YesNo.NO : YesNo.UNKNOWN)) {
      case YES -> loss(DuctEnd.SHUTTER);
      case NO -> Range.exactly(0);
      case UNKNOWN -> {
        unseen.add("a backdraught shutter");
        yield new Range(0, 0, loss(DuctEnd.SHUTTER).high());
      }
    };
  }

  private Range loss(DuctEnd of) {
    End end = tables.end(of);
    sources.add(end.source());
    return end.loss().range();
  }

  private static DuctSurface surface(DuctMaterial material) {
    return switch (material) {
      case SMOOTH_PLASTIC -> DuctSurface.SMOOTH_PLASTIC;
      case METAL_SLEEVE, GALVANISED_STEEL -> DuctSurface.METAL;
      case FLEXIBLE_TAUT -> DuctSurface.TAUT_FLEXIBLE;
      case FLEXIBLE_SLACK -> DuctSurface.SLACK_FLEXIBLE;
    };
  }

  private static DuctBend bend(BendKind kind) {
    return switch (kind) {
      case SWEPT -> DuctBend.SWEPT;
      case SHARP -> DuctBend.SHARP;
    };
  }

  private static DuctEnd end(DuctTerminal terminal) {
    return switch (terminal) {
      case NONE -> DuctEnd.OPEN_END;
      case WALL_GRILLE -> DuctEnd.WALL_GRILLE;
      case ROOF_COWL -> DuctEnd.ROOF_COWL;
      case GRAVITY_FLAP -> DuctEnd.GRAVITY_FLAP;
    };
  }
}
