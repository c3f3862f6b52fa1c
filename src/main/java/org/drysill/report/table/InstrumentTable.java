package org.drysill.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Grid;
import org.drysill.report.words.Words;
import org.drysill.survey.Instrument;
import org.drysill.yaml.Quantity;

/** Instruments with their accuracy and the day of their calibration. */
public final class InstrumentTable {
  private InstrumentTable() {}

  /** The table. */
  public static Grid of(String title, List<Instrument> instruments) {
    return new Grid(
        List.of(),
        title,
        List.of(
            Cells.words("name", 22),
            Cells.words("kind"),
            Cells.words("accuracy stated", 44),
            Cells.words("calibrated", 28)),
        instruments.stream()
            .map(
                i ->
                    Cells.row(
                        Cells.text(i.id()),
                        Cells.text(Words.capital(i.kind().label())),
                        Cells.text(accuracy(i)),
                        Cells.text(i.calibrated().map(Words::date).orElse("not stated"))))
            .toList(),
        "");
  }

  private static String accuracy(Instrument instrument) {
    List<String> stated = new ArrayList<>();
    for (Optional<Quantity> accuracy :
        List.of(
            instrument.temperatureAccuracy(),
            instrument.humidityAccuracy(),
            instrument.flowAccuracy(),
            instrument.co2Accuracy())) {
      accuracy.ifPresent(a -> stated.add("±\u00a0" + a.written().replace(' ', '\u00a0')));
    }
    return stated.isEmpty() ? "not stated" : String.join(", ", stated);
  }
}
