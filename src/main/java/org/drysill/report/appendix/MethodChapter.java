package org.drysill.report.appendix;

import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Block;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;

/** How the figures were reached, in plain words. */
final class MethodChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    return Optional.of(
        new Section(
            "method",
            "How the figures were reached, in plain words",
            "Method",
            false,
            parts(desk)));
  }

  private static List<Block> parts(Desk desk) {
    return List.of(
        part(
            "What is asked.",
            "The rule set of the place, "
                + desk.subject().ventilation().rules().named()
                + ", is applied to the home as it was described. Others are shown beside"
                + " it for comparison only."),
        part(
            "What is provided.",
            "A flow that was measured counts as measured. A declared flow is reduced by"
                + " what ducts and grilles usually cost. Fans count for the share of the"
                + " day in which they run. Air through leaks follows from the leakage of"
                + " the building, measured or assumed."),
        part(
            "Moist air.",
            "Dew point and water content follow from temperature and relative humidity"
                + " by the formulas of ISO 13788. The excess over outdoors is the"
                + " measure of moisture from indoors that weather does not disturb."),
        part(
            "Cold surfaces.",
            "Each surface has a temperature factor, from its own reading where there is"
                + " one. With it the surface temperature of every month follows from the"
                + " climate, and with the moisture of the air the humidity at the"
                + " surface."),
        part(
            "Within walls.",
            "Temperature and vapour run through the layers from the room to the outside. Where"
                + " the vapour would exceed saturation, water settles; month by month it is"
                + " added up and dries by the method of ISO 13788, with the driest and the"
                + " wettest case that the ranges of the layers and of the air allow."),
        part(
            "Heat recovery.",
            "The share of heat that comes back is the warming of the supply air against"
                + " the difference between inside and outside. A small difference tells"
                + " little, and the report says so."),
        part(
            "Measures.",
            "Each measure is studied by itself on this home: what air it adds, what water"
                + " it keeps away, what it costs to buy, to run and to replace."
                + " Comfort, health and the care of the building are listed and not"
                + " turned into money."),
        part(
            "Measures together.",
            "Rooms, doors, leaks, fans and sources make one model of the home, fitted to its"
                + " readings. In it every sensible combination of measures is evaluated; those"
                + " that may turn out best are evaluated again many times with all that is not"
                + " known drawn anew, so that their chances can be told, and hour by hour"
                + " through a year."),
        part(
            "Three answers.",
            "Every figure has a likely value, a lowest and a highest. A comparison meets"
                + " what is asked only if the lowest value does, it is short only if the"
                + " highest is, and in between it is not told. Printed values that are"
                + " compared are rounded towards failing."));
  }

  private static Block part(String lead, String text) {
    return new Prose(List.of(), "", lead, text);
  }
}
