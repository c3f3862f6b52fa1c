package org.drysill.options.site;

import java.util.Locale;
import java.util.regex.Pattern;
import org.drysill.assess.Home;
import org.drysill.survey.Construction;

/**
 * What the survey says of the walls of a home.
 *
 * @param words as they were written; empty where nothing was said
 */
public record WallsTold(String words) {
  /** Said to be filled or insulated; "unfilled" and "not insulated" are not. */
  private static final Pattern INSULATED =
      Pattern.compile("(?<!not |un-|non-)\\b(?:filled|insulated)\\b");

  /** Those of a home. */
  public static WallsTold of(Home home) {
    return new WallsTold(
        home.survey().dwelling().construction().flatMap(Construction::walls).orElse(""));
  }

  /** True where they are said to be filled or insulated. */
  public boolean areInsulated() {
    return INSULATED.matcher(lower()).find();
  }

  /** True where they are called so, such as {@code solid}. */
  public boolean are(String word) {
    return lower().contains(word);
  }

  private String lower() {
    return words.toLowerCase(Locale.ROOT);
  }
}
