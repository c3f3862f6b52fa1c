package org.drysill.report.brief;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.drysill.report.language.Phrases;
import org.drysill.report.words.Typeset;

/**
 * Formulas in a language. Symbols stay; what is said in words is said in those of the language: the
 * whole where it is a phrase, else word by word, as in an index such as {@code N_bedrooms}.
 */
final class Formulas {
  private static final Pattern WORD =
      Pattern.compile("(?<![A-Za-z])[A-Za-z]?[a-z]{2,}(?![A-Za-z])");

  /** Shorter words are symbols, unless the language has a word for them. */
  private static final int LEAST_LETTERS = 4;

  private static final int LONGEST_KEY = 60;

  private final Phrases phrases;
  private final Terms terms;

  Formulas(Phrases phrases, Terms terms) {
    this.phrases = phrases;
    this.terms = terms;
  }

  /** A formula. */
  String of(String formula) {
    String key = "formula." + slug(formula);
    return phrases.find(key).orElseGet(() -> byWord(Typeset.units(formula)));
  }

  /** A symbol; the name of a room or place in its brackets stays, a source of water has a word. */
  String symbol(String symbol) {
    int bracket = symbol.indexOf('(');
    if (bracket < 0) {
      return byWord(symbol);
    }
    String within = symbol.substring(bracket).replaceAll("^\\(|\\)$", "");
    String named =
        phrases.find("source." + within.replace(' ', '-')).map(s -> "(" + s + ")").orElse("");
    return byWord(symbol.substring(0, bracket))
        + (named.isEmpty() ? symbol.substring(bracket) : named);
  }

  private String byWord(String text) {
    return WORD.matcher(text).replaceAll(this::word);
  }

  private String word(MatchResult found) {
    String word = found.group();
    Optional<String> own = phrases.find("symbol." + word.toLowerCase(Locale.ROOT));
    if (own.isEmpty() && !terms.english() && word.length() >= LEAST_LETTERS) {
      terms.lacking("symbol." + word.toLowerCase(Locale.ROOT), word);
    }
    return own.orElse(word);
  }

  static String slug(String formula) {
    String slug =
        formula.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return slug.substring(0, Math.min(LONGEST_KEY, slug.length()));
  }
}
