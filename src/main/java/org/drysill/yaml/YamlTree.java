package org.drysill.yaml;

import java.io.StringReader;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.drysill.yaml.ProblemList.Finding;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/** Turns a text into the tree of its nodes, within limits that keep a hostile file harmless. */
final class YamlTree {
  private static final int MOST_ALIASES = 20;
  private static final int DEEPEST = 50;
  static final int MOST_CODE_POINTS = 4 * 1024 * 1024;
  private static final String PLAIN = "tag:yaml.org,2002:";
  private static final Set<String> PLAIN_TAGS =
      Set.of("str", "int", "float", "bool", "null", "timestamp", "map", "seq", "merge", "value");

  private final ProblemList problems;

  private YamlTree(ProblemList problems) {
    this.problems = problems;
  }

  /** The root of the tree; empty where the text has none, and then there is a problem. */
  static Optional<Node> of(String text, ProblemList problems) {
    YamlTree tree = new YamlTree(problems);
    if (!tree.isHarmless(text)) {
      return Optional.empty();
    }
    Optional<Node> root = tree.compose(text);
    root.ifPresent(node -> tree.inspect(node, Collections.newSetFromMap(new IdentityHashMap<>())));
    return problems.hasErrors() ? Optional.empty() : root;
  }

  private boolean isHarmless(String text) {
    if (text.codePointCount(0, text.length()) > MOST_CODE_POINTS) {
      problems.add(
          YamlCode.TOO_LARGE,
          problems.lines().atPoint(0),
          "",
          Finding.of("more than " + MOST_CODE_POINTS + " characters", "a smaller file"));
      return false;
    }
    Characters.firstForbidden(text).ifPresent(i -> controlCharacter(text, i));
    return !problems.hasErrors();
  }

  private void controlCharacter(String text, int index) {
    problems.add(
        YamlCode.CONTROL_CHARACTER,
        problems.lines().atChar(index),
        "",
        Finding.of(Characters.name(text.codePointAt(index)), "text without control characters"));
  }

  private Optional<Node> compose(String text) {
    LoaderOptions limits = new LoaderOptions();
    limits.setMaxAliasesForCollections(MOST_ALIASES);
    limits.setNestingDepthLimit(DEEPEST);
    limits.setCodePointLimit(MOST_CODE_POINTS);
    limits.setAllowDuplicateKeys(false);
    try {
      Node root = new Yaml(limits).compose(new StringReader(text));
      if (root == null) {
        add(YamlCode.EMPTY, 0, Finding.of("nothing", "keys and values"));
      }
      return Optional.ofNullable(root);
    } catch (MarkedYAMLException broken) {
      add(broken);
    } catch (YAMLException limit) {
      add(limit, LimitPlace.of(text, limits));
    }
    return Optional.empty();
  }

  private void add(MarkedYAMLException broken) {
    Mark mark = broken.getProblemMark() == null ? broken.getContextMark() : broken.getProblemMark();
    Syntax syntax = Syntax.of(broken);
    add(syntax.code(), mark == null ? 0 : mark.getIndex(), syntax.finding());
  }

  private void add(YAMLException limit, int point) {
    String message = String.valueOf(limit.getMessage()).toLowerCase(Locale.ROOT);
    if (message.contains("depth")) {
      add(
          YamlCode.TOO_DEEP,
          point,
          Finding.of("more than " + DEEPEST + " levels", "at most " + DEEPEST + " levels"));
    } else if (message.contains("aliases")) {
      add(
          YamlCode.TOO_MANY_ALIASES,
          point,
          Finding.of("more than " + MOST_ALIASES + " aliases", "the values written out"));
    } else {
      add(YamlCode.NOT_YAML, point, Finding.of("a text that cannot be taken apart", "YAML"));
    }
  }

  private void add(YamlCode code, int point, Finding finding) {
    problems.add(code, problems.lines().atPoint(point), "", finding);
  }

  /** Looks at every node once, however often it is referred to. */
  private void inspect(Node node, Set<Node> seen) {
    if (!seen.add(node)) {
      return;
    }
    String tag = node.getTag().getValue();
    if (!tag.startsWith(PLAIN) || !PLAIN_TAGS.contains(tag.substring(PLAIN.length()))) {
      add(
          YamlCode.TAG,
          node.getStartMark().getIndex(),
          Finding.of("the tag " + Finding.quote(shown(node.getTag())), "a value without a tag"));
    }
    if (node instanceof ScalarNode scalar) {
      Characters.firstForbidden(scalar.getValue())
          .ifPresent(i -> escaped(scalar, scalar.getValue().codePointAt(i)));
    } else if (node instanceof SequenceNode list) {
      list.getValue().forEach(entry -> inspect(entry, seen));
    } else if (node instanceof MappingNode map) {
      for (NodeTuple entry : map.getValue()) {
        inspect(entry.getKeyNode(), seen);
        inspect(entry.getValueNode(), seen);
      }
    }
  }

  private void escaped(ScalarNode scalar, int point) {
    add(
        YamlCode.CONTROL_CHARACTER,
        scalar.getStartMark().getIndex(),
        Finding.of(
            Characters.name(point) + ", written as an escape", "text without control characters"));
  }

  private static String shown(Tag tag) {
    String value = tag.getValue();
    return value.startsWith(PLAIN) ? "!!" + value.substring(PLAIN.length()) : value;
  }
}
