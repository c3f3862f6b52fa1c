package org.drysill.survey.check;

import static org.drysill.survey.check.CheckList.each;

import java.util.Optional;
import org.drysill.survey.CondensationSeen;
import org.drysill.survey.Survey;
import org.drysill.survey.Window;
import org.drysill.yaml.Quantity;

/** A window holds its opening and its ventilator, and what is wet has been measured. */
final class WindowChecks {
  private WindowChecks() {}

  static void check(Survey survey, CheckList list) {
    each(
        survey.rooms(),
        "rooms",
        (room, path) -> each(room.windows(), path + ".windows", (w, at) -> window(w, at, list)));
  }

  private static void window(Window window, String path, CheckList list) {
    window
        .opening()
        .ifPresent(
            opening -> {
              within(opening.width(), window.width(), path + ".opening.width", list);
              within(opening.height(), window.height(), path + ".opening.height", list);
            });
    ventilator(window, path, list);
    boolean wet = window.condensationSeen().filter(s -> s != CondensationSeen.NEVER).isPresent();
    if (wet && window.readings().isEmpty()) {
      list.add(
          SurveyCode.WET_WINDOW_UNMEASURED,
          path + ".condensation_seen",
          "no surface temperature of this window",
          "a reading at its coldest point");
    }
  }

  private static void within(
      Optional<Quantity> part, Optional<Quantity> whole, String key, CheckList list) {
    if (part.isPresent() && whole.isPresent() && part.get().low() > whole.get().high()) {
      list.add(
          SurveyCode.OPENING_EXCEEDS_WINDOW,
          key,
          part.get().written(),
          "at most " + whole.get().written() + " of the window");
    }
  }

  private static void ventilator(Window window, String path, CheckList list) {
    if (window.width().isEmpty() || window.height().isEmpty()) {
      return;
    }
    double whole = window.width().get().high() * window.height().get().high();
    window
        .backgroundVentilator()
        .filter(area -> area.low() > whole)
        .ifPresent(
            area ->
                list.add(
                    SurveyCode.VENTILATOR_EXCEEDS_WINDOW,
                    path + ".background_ventilator",
                    area.written(),
                    "less than the area of the window"));
  }
}
