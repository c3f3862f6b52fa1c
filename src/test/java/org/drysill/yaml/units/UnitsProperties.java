package org.drysill.yaml.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Quantity;

class UnitsProperties {
  /** A kind of quantity and one of its spellings. */
  record Spelled(Dimension dimension, String unit) {}

  @Provide
  Arbitrary<Spelled> spellings() {
    List<Spelled> all =
        Arrays.stream(Dimension.values())
            .flatMap(d -> Units.spellings(d).stream().map(unit -> new Spelled(d, unit)))
            .filter(s -> !s.unit().equals("1"))
            .toList();
    return Arbitraries.of(all);
  }

  @Provide
  Arbitrary<Double> numbers() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 999_999), Arbitraries.integers().between(0, 5))
        .as((digits, places) -> digits / Math.pow(10, places));
  }

  @Property
  void a_number_printed_with_any_spelling_reads_as_itself(
      @ForAll("spellings") Spelled s, @ForAll("numbers") double number) throws QuantityException {
    Quantity read = QuantityText.of(number + " " + s.unit(), s.dimension(), "").quantity();
    assertThat(Units.fromKept(s.dimension(), s.unit(), read.value()))
        .isCloseTo(number, within(number * 1e-9 + 1e-9));
  }

  @Property
  void a_unit_that_is_written_means_the_same_as_the_default_unit(
      @ForAll("spellings") Spelled s, @ForAll("numbers") double number) throws QuantityException {
    Quantity written = QuantityText.of(number + " " + s.unit(), s.dimension(), "").quantity();
    Quantity bare = QuantityText.of(String.valueOf(number), s.dimension(), s.unit()).quantity();
    assertThat(written.value()).isEqualTo(bare.value());
  }

  @Property
  void a_comma_means_what_a_dot_means_where_it_is_not_ambiguous(
      @ForAll("spellings") Spelled s, @ForAll("numbers") double number) throws QuantityException {
    String dotted = Double.toString(number);
    if (dotted.contains("E") || dotted.matches("[1-9]\\d{0,2}\\.\\d{3}")) {
      return;
    }
    assertThat(
            QuantityText.of(dotted.replace('.', ','), s.dimension(), s.unit()).quantity().value())
        .isEqualTo(QuantityText.of(dotted, s.dimension(), s.unit()).quantity().value());
  }

  @Property
  void a_range_holds_its_ends_and_its_middle_whatever_the_separator(
      @ForAll("spellings") Spelled s,
      @ForAll("numbers") double one,
      @ForAll("numbers") double other)
      throws QuantityException {
    double low = Math.min(one, other);
    double high = Math.max(one, other);
    Quantity dots =
        QuantityText.of(low + ".." + high + " " + s.unit(), s.dimension(), "").quantity();
    Quantity words =
        QuantityText.of(low + " to " + high + " " + s.unit(), s.dimension(), "").quantity();
    assertThat(dots.low()).isEqualTo(Units.toKept(s.dimension(), s.unit(), low));
    assertThat(dots.high()).isEqualTo(Units.toKept(s.dimension(), s.unit(), high));
    assertThat(dots.range()).isEqualTo(words.range());
  }
}
