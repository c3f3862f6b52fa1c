package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.report.block.Block;
import org.drysill.report.block.Note;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.verdict.FoundTable;

/** The first page: what was found, in a table, and the charts that matter. */
final class FirstPage {
  private FirstPage() {}

  static Section of(BriefDesk desk) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            List.of(Note.led(desk.say("long.lead"), desk.say("long.text"))),
            "lead",
            "",
            lead(desk)));
    blocks.add(Compared.of(desk, "", FoundTable.rows(desk.subject())));
    BriefCharts charts = new BriefCharts(desk);
    charts.air().ifPresent(blocks::add);
    desk.subject().options().packages().flatMap(charts::months).ifPresent(blocks::add);
    return new Section("verdict", heading(desk), desk.say("found"), false, blocks);
  }

  /** The finding in one sentence. */
  static String heading(BriefDesk desk) {
    Verdict air = desk.subject().ventilation().wholeHome().verdict();
    int risky =
        (int)
            desk.subject().condensation().places().stream()
                .filter(p -> p.months().gravest() != Risk.NONE)
                .map(ColdPlace::item)
                .distinct()
                .count();
    String state = desk.say("heading." + air.name().toLowerCase(Locale.ROOT));
    if (risky > 0) {
      return desk.say("heading.with", state, desk.phrases().count("heading.places", risky));
    }
    return desk.subject().condensation().places().isEmpty()
        ? state
        : desk.say("heading.with", state, desk.say("heading.dry"));
  }

  /** How many comparisons there are, and what each page of this report is. */
  private static String lead(BriefDesk desk) {
    List<Finding> all = desk.desk().found().findings();
    String lead =
        desk.say(
            "lead",
            Integer.toString(all.size()),
            count(all, Verdict.MEETS),
            count(all, Verdict.SHORT),
            count(all, Verdict.UNKNOWN));
    return desk.subject().file().shared() ? lead + " " + desk.say("shared") : lead;
  }

  private static String count(List<Finding> all, Verdict verdict) {
    return Long.toString(all.stream().filter(f -> f.verdict() == verdict).count());
  }
}
