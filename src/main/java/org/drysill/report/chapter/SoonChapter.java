package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drysill.assess.Figure;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.options.RankedMeasure;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.CautionBlock;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.Step;
import org.drysill.report.block.Subhead;
import org.drysill.report.subject.Desk;
import org.drysill.report.verdict.WouldChange;
import org.drysill.report.words.Words;

/**
 * The measures by when they can be done, for whoever lives with the house: what costs nothing this
 * week, what is to be watched this winter, the rest when there is money.
 */
final class SoonChapter implements Chapter {
  private static final int READINGS = 4;
  private static final int WATCHED = 3;

  @Override
  public Optional<Section> write(Desk desk) {
    List<RankedMeasure> ranked = desk.subject().options().works();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            List.of(),
            "",
            "",
            "Air in a home carries water: from breath, cooking, washing and drying. Where that air"
                + " meets a surface that is cold enough, the water settles, and where it stays"
                + " moist for weeks, mould can grow. Three things help, and they help together:"
                + " less water, more outdoor air, warmer surfaces."));
    Set<CautionBlock> said = new HashSet<>();
    List<Step> now = new ArrayList<>(FirstSteps.steps(desk, desk.subject().options().first()));
    ranked.stream().filter(m -> free(m)).map(m -> brief(desk, m, said)).forEach(now::add);
    group(blocks, "This week", now);
    List<String> winter = new ArrayList<>(watched(desk.subject().condensation()));
    WouldChange.readings(desk).stream().limit(READINGS).forEach(winter::add);
    if (!winter.isEmpty()) {
      blocks.add(new Subhead(List.of(), "This winter"));
      blocks.add(new Bullets(List.of(), winter));
    }
    group(
        blocks,
        "When there is money",
        ranked.stream().filter(m -> !free(m)).map(m -> brief(desk, m, said)).toList());
    return Optional.of(
        new Section(
            "soon",
            "This week, this winter, and when there is money",
            "What to do and when",
            false,
            blocks));
  }

  /** Places at risk, walls before windows, the worst first, each once. */
  private static List<String> watched(CondensationResult cold) {
    Map<String, ColdPlace> places = new LinkedHashMap<>();
    for (SurfaceClass kind : SurfaceClass.values()) {
      cold.worstFirst().stream()
          .filter(p -> p.surface() == kind && p.months().gravest() != Risk.NONE)
          .forEach(p -> places.putIfAbsent(p.item(), p));
    }
    return places.values().stream().limit(WATCHED).map(SoonChapter::watched).toList();
  }

  private static String watched(ColdPlace place) {
    return ColdChapter.named(place)
        + (place.surface() == SurfaceClass.GLASS
            ? ": wipe the water off on cold mornings, and let the room air."
            : ": look at it in "
                + Words.months(place.months().monthsAtRisk())
                + ", leave air between it and furniture, and write down the day when mould shows.");
  }

  private static boolean free(RankedMeasure measure) {
    return measure.money().firstCost().map(Figure::likely).filter(c -> c <= 0).isPresent();
  }

  /** A measure with the cautions that no step before it in this chapter has told. */
  private static Step brief(Desk desk, RankedMeasure measure, Set<CautionBlock> said) {
    List<String> more = new ArrayList<>();
    measure
        .money()
        .firstCost()
        .filter(c -> c.likely() > 0)
        .ifPresent(
            c ->
                more.add(
                    "It costs about "
                        + desk.numbers().full(c)
                        + measure
                            .money()
                            .runningCost()
                            .map(r -> " and then " + Words.running(desk.numbers(), r))
                            .orElse("")
                        + "."));
    return new Step(
        List.of(),
        "",
        Words.sentence(measure.title()),
        Words.sentence(measure.changes()),
        more,
        MeasureStep.cautions(desk, measure.cautions()).stream().filter(said::add).toList());
  }

  private static void group(List<Block> blocks, String head, List<Step> steps) {
    if (!steps.isEmpty()) {
      blocks.add(new Subhead(List.of(), head));
      blocks.addAll(steps);
    }
  }
}
