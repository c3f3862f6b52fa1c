package org.drysill.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.drysill.report.Report;
import org.drysill.report.json.ResultsShape;
import org.drysill.report.pdf.Validator;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Reports of made-up homes whose pages must be clean: one room with nothing told, everything told,
 * 30 rooms, each edition, letter paper in inch-pound, names of 300 letters. {@link MadeUpReports}
 * does the same for as many as wanted.
 */
class MadeUpReportsTest {
  @TempDir private static Path folder;

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3, 4, 6, 8, 11, 12, 25, 30, 44, 92})
  void nothing_is_cut_or_overlaps_every_reference_leads_somewhere_and_no_rule_is_broken(int seed)
      throws IOException, InterruptedException {
    Report report = MadeUpReports.made(MadeUpSurvey.write(folder, seed));
    assertThat(ProofReader.faults(report)).isEmpty();
    assertThat(ResultsShape.faults(report.json())).isEmpty();
    assertThat(Validator.broken(report.pdf(), "3a", "ua1")).isEmpty();
  }
}
