package org.drysill.verify;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.ReportWishes;
import org.drysill.report.evidence.FilesInside;
import org.drysill.report.evidence.InputRole;
import org.drysill.report.evidence.NotAReport;
import org.drysill.report.evidence.ReportFile;
import org.drysill.report.json.JsonTree;
import org.drysill.report.language.Language;

/**
 * What a report says of itself, in the results inside.
 *
 * @param version the version of the program that made it
 * @param data the digest of the data of that program
 * @param edition the edition that was asked for
 * @param language the language that it is written in
 * @param inputs the files that it was made from
 * @param nameOfResults the name of the results among the files inside
 * @param results the results as they were read back
 */
record Claim(
    String version,
    String data,
    String edition,
    Language language,
    List<Input> inputs,
    String nameOfResults,
    Map<?, ?> results) {
  /** One file that a report says it was made from. */
  record Input(String name, String role, String sha256, boolean inside) {
    /** No figure rests on a picture. */
    boolean isPicture() {
      return role.equals(InputRole.PHOTOGRAPH.word());
    }
  }

  /** Whether its pages were made by templates of a user's own. */
  boolean hasTemplates() {
    return inputs.stream().anyMatch(i -> i.role().equals(InputRole.TEMPLATE.word()));
  }

  static Claim of(ReportFile file) throws NotAReport {
    String name = nameOfResults(file);
    Map<?, ?> results = object(tree(file, name), "results");
    Map<?, ?> provenance = object(results.get("provenance"), "provenance");
    List<Input> inputs = new ArrayList<>();
    if (provenance.get("inputs") instanceof List<?> all) {
      for (Object one : all) {
        inputs.add(input(object(one, "provenance")));
      }
    }
    return new Claim(
        text(provenance, "version"),
        text(object(provenance.get("data"), "provenance"), "sha256"),
        edition(text(provenance, "edition")),
        language(provenance.get("language")),
        inputs,
        name,
        results);
  }

  /** A user's file may have the usual name; the results then have a longer one. */
  private static String nameOfResults(ReportFile file) throws NotAReport {
    return file.files().keySet().stream()
        .filter(name -> name.matches("(report-)*" + FilesInside.RESULTS))
        .max(Comparator.comparingInt(String::length))
        .orElseThrow(
            () -> new NotAReport("has no results inside (" + FilesInside.RESULTS + " is missing)"));
  }

  private static String edition(String word) throws NotAReport {
    if (!ReportWishes.editions().contains(word)) {
      throw new NotAReport("has results inside that do not tell its edition");
    }
    return word;
  }

  /** Reports from before there was more than one are in English and do not say so. */
  private static Language language(Object tag) throws NotAReport {
    return tag == null
        ? Language.ENGLISH
        : Language.of(String.valueOf(tag))
            .orElseThrow(
                () -> new NotAReport("has results inside that name a language not known here"));
  }

  private static Object tree(ReportFile file, String name) throws NotAReport {
    try {
      return JsonTree.read(file.files().get(name));
    } catch (IOException broken) {
      throw new NotAReport("has results inside that are no JSON");
    }
  }

  private static Input input(Map<?, ?> input) throws NotAReport {
    String name = text(input, "name");
    if (!ReportFile.isSafe(name)) {
      throw new NotAReport("names a file that lies elsewhere");
    }
    return new Input(
        name,
        text(input, "role"),
        text(input, "sha256"),
        "true".equals(String.valueOf(input.get("inside"))));
  }

  private static Map<?, ?> object(Object value, String what) throws NotAReport {
    if (value instanceof Map<?, ?> map) {
      return map;
    }
    throw new NotAReport("has results inside that do not tell its " + what);
  }

  private static String text(Map<?, ?> from, String key) throws NotAReport {
    if (from.get(key) instanceof String text) {
      return text;
    }
    throw new NotAReport("has results inside that do not tell its " + key);
  }

  /** The one file of a role. */
  Optional<Input> only(InputRole role) {
    return inputs.stream().filter(input -> input.role().equals(role.word())).findFirst();
  }
}
