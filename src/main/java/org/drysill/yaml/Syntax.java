package org.drysill.yaml;

import org.drysill.yaml.ProblemList.Finding;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * What a complaint of the YAML parser means to the person who wrote the file.
 *
 * @param code the sort of problem
 * @param finding the words
 */
record Syntax(YamlCode code, Finding finding) {
  static Syntax of(MarkedYAMLException broken) {
    String problem = text(broken.getProblem());
    String context = text(broken.getContext());
    if (context.contains("expected a single document")) {
      return new Syntax(
          YamlCode.SEVERAL_DOCUMENTS, Finding.of("a second document", "one document in a file"));
    }
    if (problem.contains("tag")) {
      return new Syntax(YamlCode.TAG, Finding.of("a tag", "a value without a tag"));
    }
    if (problem.contains("TAB")) {
      return new Syntax(YamlCode.TAB, Finding.of("a tab", "spaces before keys and values"));
    }
    if (problem.contains("mapping values are not allowed")) {
      return notYaml(
          "a second colon in one line, or a key that is indented too far",
          "one key per line, keys of one level in one column, and quotation marks around a text"
              + " that holds \": \"");
    }
    if (problem.contains("found undefined alias")) {
      return notYaml(
          "an alias without an anchor", "quotation marks around a text that begins with *");
    }
    if (problem.contains("cannot start any token")) {
      return notYaml(
          "a character that begins no value",
          "quotation marks around a text that begins with % @ `");
    }
    if (problem.contains("unexpected end of stream") || problem.contains("<stream end>")) {
      return notYaml("the end of the file", "a closing bracket or quotation mark" + open(broken));
    }
    return notYaml(problem.replace("block end", "end of the indented part"), "YAML: key: value");
  }

  /** Where that began which nothing closes. */
  private static String open(MarkedYAMLException broken) {
    Mark mark = broken.getContextMark();
    return mark == null ? "" : " for what begins on line " + (mark.getLine() + 1);
  }

  private static Syntax notYaml(String found, String expected) {
    return new Syntax(YamlCode.NOT_YAML, Finding.of(found, expected));
  }

  private static String text(String text) {
    return text == null ? "" : text.replaceAll("\\s+", " ").replaceFirst("^(?:but )?found ", "");
  }
}
