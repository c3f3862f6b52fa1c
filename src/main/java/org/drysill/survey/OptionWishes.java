package org.drysill.survey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * What the client wants of the recommendations.
 *
 * @param exclude measures to leave out
 * @param budget money at hand
 * @param prices own prices of measures, by measure
 * @param measures a file of own measures
 */
public record OptionWishes(
    @Key(
            about = "Measures to leave out",
            example = "[balanced heat recovery]",
            vocabulary = "measure")
        List<String> exclude,
    @Key(about = "Money at hand", dimension = Dimension.MONEY, unit = "", min = 0, example = "4000")
        Optional<Quantity> budget,
    @Key(
            about = "Own prices of measures, by measure",
            dimension = Dimension.MONEY,
            unit = "",
            min = 0,
            example = "{single-room heat recovery pair: 900..1400}",
            vocabulary = "measure")
        Map<String, Quantity> prices,
    @Renamed(Renamed.As.FILE)
        @Key(
            about = "A file of measures of your own, or of bundled ones that you change",
            example = "my-measures.yaml",
            file = true)
        Optional<String> measures) {
  /** Copies the lists. */
  public OptionWishes {
    exclude = List.copyOf(exclude);
  }
}
