package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Rounding;
import org.drysill.survey.RunMode;

/** Fresh air: the whole home and each comparison of its ventilation, with the fans behind it. */
final class AirSection implements BriefChapter {
  @Override
  public Optional<Section> write(BriefDesk desk) {
    VentilationResult air = desk.subject().ventilation();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            desk.notes(
                Stream.of(
                    air.provided().airChange(),
                    air.provided().byFans(),
                    air.provided().infiltration())),
            "",
            "",
            parts(desk, air)));
    List<Finding> flows = new ArrayList<>(List.of(air.wholeHome()));
    flows.addAll(air.extract());
    flows.addAll(air.supply());
    Openings.ofHome(air).forEach(flows::add);
    blocks.add(Compared.of(desk, desk.say("air.flows"), flows).densely());
    if (!air.provided().fans().isEmpty()) {
      blocks.add(fans(desk, air.provided()));
    }
    Openings.of(desk, air).ifPresent(blocks::add);
    String verdict = air.wholeHome().verdict().name().toLowerCase(Locale.ROOT);
    return Optional.of(
        new Section(
            "air", desk.say("air.heading." + verdict), desk.say("air.running"), false, blocks));
  }

  /** The flow as in the table of what is asked: rounded towards what fails. */
  private static String parts(BriefDesk desk, VentilationResult air) {
    ProvidedAir provided = air.provided();
    String asked =
        air.required()
            .wholeHome()
            .map(f -> desk.say("air.asked", air.rules().named(), desk.numbers().asked(f)))
            .orElseGet(() -> desk.say("air.not-asked", air.rules().named()));
    return asked
        + " "
        + desk.say(
            "air.parts",
            desk.numbers().full(provided.wholeHome(), Rounding.DOWN),
            desk.numbers().full(provided.airChange()),
            desk.numbers().full(provided.byFans()),
            desk.numbers().full(provided.infiltration(), Rounding.DOWN));
  }

  private static Grid fans(BriefDesk desk, ProvidedAir provided) {
    return Grid.wide(
            desk.say("fans.title"),
            List.of(
                desk.words("fans.fan", 0),
                desk.words("fans.kind", 38),
                desk.words("fans.run", 20),
                desk.numbers("fans.flow", Unit.AIRFLOW, 30),
                desk.words("fans.basis", 18),
                desk.numbers("fans.power", Unit.SPECIFIC_FAN_POWER, 31)),
            provided.fans().stream().map(f -> row(desk, f)).toList(),
            "")
        .densely();
  }

  private static Row row(BriefDesk desk, FanFlow fan) {
    return Cells.row(
        Cells.text(desk.names().place(fan.fan().id()).orElse(fan.fan().id())),
        Cells.text(desk.terms().word("fan", fan.fan().kind().word())),
        Cells.text(
            fan.fan().run().map((RunMode r) -> desk.terms().word("run", r.word())).orElse("")),
        desk.value(fan.running()),
        Cells.text(desk.basis(fan.running())),
        fan.specificFanPower()
            .map(power -> desk.value(power, Rounding.UP))
            .orElse(Cells.text(Cells.NOTHING)));
  }
}
