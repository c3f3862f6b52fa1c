package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackagesResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Prose;
import org.drysill.report.words.Numbers;

/**
 * How packages are called and told.
 *
 * @param numbers puts values into words
 * @param baseline the home that all are held against, in a word
 * @param packages what was studied
 */
record PackageWords(Numbers numbers, String baseline, PackagesResult packages) {
  /** Package A. */
  MeasurePackage best() {
    return packages.best().get(0);
  }

  /** The package without steps is the home that all are held against. */
  String name(MeasurePackage one) {
    return one.steps().isEmpty() ? baseline : one.name();
  }

  /** The measures of a package; where most are those of the best one, what differs. */
  String measures(MeasurePackage one) {
    if (one.steps().isEmpty()) {
      return "nothing";
    } else if (packages.best().isEmpty()) {
      return String.join("; ", one.titles());
    }
    MeasurePackage best = best();
    List<String> more = new ArrayList<>(one.titles());
    more.removeAll(best.titles());
    List<String> less = new ArrayList<>(best.titles());
    less.removeAll(one.titles());
    boolean like = !one.equals(best) && more.size() + less.size() < one.titles().size();
    return like
        ? "as "
            + best.name()
            + (less.isEmpty() ? "" : ", without: " + String.join("; ", less))
            + (more.isEmpty()
                ? ""
                : (less.isEmpty() ? ", with: " : "; but with: ") + String.join("; ", more))
        : String.join("; ", one.titles());
  }

  /** Why a package stands where it does. */
  static String why(MeasurePackage one) {
    return String.join(" ", one.reasons());
  }

  /** Why, without what was said of the best one already. */
  String apart(MeasurePackage one) {
    List<String> own = new ArrayList<>(one.reasons());
    packages.best().stream().findFirst().ifPresent(best -> own.removeAll(best.reasons()));
    return String.join(" ", own);
  }

  /** A paragraph with the words that it begins with. */
  static Block said(String lead, String text) {
    return new Prose(List.of(), "", lead, text);
  }
}
