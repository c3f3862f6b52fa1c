package org.drysill.options.rank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drysill.options.SurfaceChange;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private static final SurfaceChange DRY_WALL = place("dry wall", false, 0, 0);
  private static final SurfaceChange DAMP_WALL = place("damp wall", false, 12, 3);
  private static final SurfaceChange DRY_PANE = place("dry pane", true, 0, 0);
  private static final SurfaceChange WET_PANE = place("wet pane", true, 8, 0);

  private static SurfaceChange place(String id, boolean glass, int before, double after) {
    return new SurfaceChange(id, "Room, " + id, glass, before, Range.exactly(after));
  }

  private static Progress of(double lacks, double still, SurfaceChange... places) {
    return new Progress(Entries.effect(List.of(places), lacks, still, List.of()));
  }

  @Test
  void places_that_are_at_risk_in_no_month_today_are_none_to_make_progress_at() {
    Progress progress = of(0, 0, DRY_WALL, DAMP_WALL, DRY_PANE, WET_PANE);
    assertThat(progress.walls()).containsExactly(DAMP_WALL);
    assertThat(progress.glass()).containsExactly(WET_PANE);
    assertThat(progress.share()).isEqualTo(0.75);
  }

  @Test
  void where_walls_and_air_are_open_each_counts_half() {
    assertThat(of(10, 8, DAMP_WALL).share()).isCloseTo((0.75 + 0.2) / 2, within(1e-12));
    assertThat(of(10, 8, DRY_WALL, WET_PANE).share()).isCloseTo(0.2, within(1e-12));
  }

  @Test
  void where_nothing_is_open_nothing_is_closed() {
    assertThat(of(0, 0, DRY_WALL, WET_PANE).share()).isZero();
  }

  /** Air taken away closes less than nothing of the lack; it counts as none. */
  @Test
  void what_takes_air_away_makes_no_progress() {
    assertThat(of(10, 12).share()).isZero();
  }
}
