package org.drysill.report.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.drysill.reference.ReferenceData;
import org.drysill.survey.Survey;
import org.drysill.yaml.Folder;
import org.drysill.yaml.RecordReader;
import org.junit.jupiter.api.Test;

/** What two surveys say otherwise, and nothing where one of them says nothing. */
class DifferencesTest {
  private static Survey survey(String kitchen) {
    return RecordReader.read(
            Survey.class,
            "drysill: 1\nvisit: {date: 2026-01-22}\n"
                + "dwelling: {floor_area: 40 m2, jurisdiction: england}\n"
                + "rooms:\n  - {id: kitchen, use: kitchen, "
                + kitchen
                + "}\n  - {id: hall, use: hall}\n",
            "survey.yaml",
            ReferenceData.bundled().vocabularies(),
            Folder.unknown())
        .value()
        .orElseThrow();
  }

  private static List<Difference> between(String before, String after) {
    return Differences.between(survey(before), survey(after), id -> id);
  }

  @Test
  void fans_come_go_and_change() {
    assertThat(
            between(
                "fans: [{id: a, name: Old fan, kind: intermittent extract},"
                    + " {id: b, kind: intermittent extract, declared_flow: 21 l/s},"
                    + " {id: c, kind: continuous extract}]",
                "fans: [{id: b, kind: continuous extract, declared_flow: 10 l/s},"
                    + " {id: c, kind: continuous extract}, {id: d, kind: positive input}]"))
        .containsExactly(
            new Difference("Old fan", "intermittent extract", "none"),
            new Difference(
                "Fan in the kitchen",
                "intermittent extract, 21\u00a0l/s declared",
                "continuous extract, 10\u00a0l/s declared"),
            new Difference("Fan in the kitchen", "none", "positive input"));
  }

  @Test
  void windows_and_cold_places_change() {
    assertThat(
            between(
                "windows: [{id: w, glazing: single, frame: timber, background_ventilator: 0 mm2}],"
                    + " cold_spots: [{id: s, kind: sill, material: wallpaper}]",
                "windows: [{id: w, name: North window, glazing: double 16 mm, frame: pvc,"
                    + " background_ventilator: 4000 mm2}],"
                    + " cold_spots: [{id: s, kind: sill, material: painted plaster, notes: lined}]"))
        .containsExactly(
            new Difference("Kitchen, north window: glazing", "single", "double 16 mm"),
            new Difference("Kitchen, north window: frame", "timber", "pvc"),
            new Difference("Kitchen, north window: ventilator", "none", "4000\u00a0mm2"),
            new Difference("Kitchen, sill: room side", "wallpaper", "painted plaster"),
            new Difference("Kitchen, sill", "–", "Lined."));
  }

  @Test
  void doors_cut_alike_stand_in_one_row() {
    String doors = "doors: [{to: hall, undercut: %1$s mm}, {to: bath, undercut: %1$s mm}]";
    assertThat(between(doors.formatted("3"), doors.formatted("10")))
        .containsExactly(
            new Difference(
                "Gaps under the doors kitchen–hall and kitchen–bath", "3\u00a0mm", "10\u00a0mm"));
    assertThat(
            between("doors: [{to: hall, undercut: 3 mm}]", "doors: [{to: hall, undercut: 9 mm}]"))
        .extracting(Difference::what)
        .containsExactly("Gap under the door kitchen–hall");
  }

  @Test
  void what_one_survey_does_not_say_is_no_difference() {
    assertThat(
            between(
                "windows: [{id: w}], doors: [{to: hall}], cold_spots: [{id: s, kind: sill}]",
                "windows: [{id: w, glazing: single}, {id: v}], doors: [{to: hall, undercut: 9 mm}],"
                    + " cold_spots: [{id: s, kind: sill, material: wallpaper}]"))
        .isEmpty();
    assertThat(between("notes: a", "notes: b")).isEmpty();
  }
}
