package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drysill.report.pdf.Validator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Homes at the ends of what the survey allows. */
class ExtremesTest {
  private static final String START =
      """
      drysill: 1
      visit: {date: 2026-01-22}
      dwelling: {floor_area: %d m2, jurisdiction: england}
      outdoor_readings: [{at: 2026-01-22T09:00, temperature: 3 C, humidity: 85 %%}]
      rooms:
      """;

  private static final String ROOM =
      """
        - id: room-%1$d
          name: "%2$s"
          use: bedroom
          floor_area: 10 m2
          readings: [{at: 2026-01-22T10:00, temperature: 18 C, humidity: 70 %%}]
          windows:
            - id: window-%1$d
              name: "%2$s"
              width: 1200 mm
              height: 1050 mm
              glazing: single
              readings: [{at: 2026-01-22T10:10, surface: 8.9 C, at_point: lower edge}]
          cold_spots:
            - id: spot-%1$d
              name: "%2$s"
              kind: external corner
              readings: [{at: 2026-01-22T10:12, surface: 11.4 C, air: 18 C, outdoor: 3 C}]
      """;

  @TempDir private Path folder;

  @Test
  void one_room_and_nothing_more_makes_a_report() throws IOException {
    Rendered report =
        Rendered.of(
            Files.writeString(
                folder.resolve("one.yaml"),
                """
                drysill: 1
                visit: {date: 2026-01-22}
                dwelling: {floor_area: 20 m2, jurisdiction: england}
                rooms: [{id: "No", use: living}]
                """));
    assertThat(report.outside()).isEmpty();
    assertThat(report.text()).contains("Oneroom").contains("takenforgranted");
    assertThat(report.pages()).hasSizeLessThan(25);
  }

  @Test
  void thirty_rooms_with_names_of_300_letters_stay_on_their_pages()
      throws IOException, InterruptedException {
    StringBuilder survey = new StringBuilder(String.format(START, 300));
    for (int room = 1; room <= 30; room++) {
      survey.append(String.format(ROOM, room, name(room)));
    }
    Rendered report =
        Rendered.of(Files.writeString(folder.resolve("thirty.yaml"), survey.toString()));
    assertThat(report.outside()).isEmpty();
    assertThat(report.pages()).allMatch(p -> p.length() > 100);
    assertThat(report.text()).contains("Roomnumber30");
    assertThat(Validator.broken(report.report().pdf(), "ua1")).isEmpty();
  }

  @Test
  void names_of_three_letters_and_awkward_ones_are_printed_faithfully() throws IOException {
    String survey =
        String.format(START, 40)
            + String.format(ROOM, 1, "Den")
            + String.format(ROOM, 2, "<script>alert(1)</script> ${1+1} 'x' & co")
            + String.format(ROOM, 3, "غرفة 🛁 ванная");
    Rendered report = Rendered.of(Files.writeString(folder.resolve("names.yaml"), survey));
    assertThat(report.outside()).isEmpty();
    assertThat(report.text()).contains("Den", "<script>alert(1)</script>${1+1}'x'&co", "ванная");
    assertThat(report.report().html()).doesNotContain("<script>alert");
  }

  @Test
  void a_log_of_one_row_is_printed_and_not_leaned_on() throws IOException {
    Files.writeString(folder.resolve("log.csv"), "Date,Temp,RH\n2026-01-01 00:00,18,60\n");
    Rendered report =
        Rendered.of(
            Files.writeString(
                folder.resolve("aside.yaml"),
                """
                drysill: 1
                visit: {date: 2026-01-22}
                dwelling: {floor_area: 40 m2, jurisdiction: england}
                rooms:
                  - id: living
                    use: living
                    logger: {file: log.csv, columns: {time: Date, temperature: Temp, humidity: RH}}
                """));
    assertThat(report.text())
        .contains("Theloggersrecordedtoolittletobeleanedon", "1of1")
        .doesNotContain("notevaluated");
    assertThat(report.outside()).isEmpty();
  }

  /** 300 letters, half of them without a space. */
  private static String name(int number) {
    String start = "Room number " + number + " ";
    String words = "with a long name ".repeat(8);
    return start + words + "x".repeat(300 - start.length() - words.length());
  }
}
