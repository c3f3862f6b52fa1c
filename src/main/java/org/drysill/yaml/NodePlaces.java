package org.drysill.yaml;

import java.util.Optional;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Looks places up in the tree of a file. */
final class NodePlaces implements Places {
  private final Lines lines;
  private final Optional<Node> root;

  NodePlaces(Lines lines, Optional<Node> root) {
    this.lines = lines;
    this.root = root;
  }

  @Override
  public Place of(String path) {
    return root.map(node -> nearest(node, path))
        .map(node -> lines.atPoint(node.getStartMark().getIndex()))
        .orElseGet(() -> lines.atPoint(0));
  }

  @Override
  public String line(int number) {
    return lines.line(number);
  }

  private static Node nearest(Node from, String path) {
    Node node = from;
    String rest = path;
    while (!rest.isEmpty()) {
      Step step = Step.first(node, rest);
      if (step == null) {
        return node;
      }
      node = step.node();
      rest = step.rest();
    }
    return node;
  }

  /** One step down the tree, and the path that remains. */
  private record Step(Node node, String rest) {
    static Step first(Node node, String path) {
      if (node instanceof SequenceNode list && path.startsWith("[")) {
        int close = path.indexOf(']');
        int index = Integer.parseInt(path.substring(1, close));
        return index < list.getValue().size()
            ? new Step(list.getValue().get(index), path.substring(close + 1))
            : null;
      }
      String name = path.startsWith(".") ? path.substring(1) : path;
      return node instanceof MappingNode map ? longest(map, name) : null;
    }

    /** The longest key that the path begins with: keys of maps may have dots of their own. */
    private static Step longest(MappingNode map, String path) {
      Step best = null;
      int length = -1;
      for (NodeTuple entry : map.getValue()) {
        String key = NodeReader.text(entry.getKeyNode());
        if (key.length() > length && heads(key, path)) {
          length = key.length();
          best = new Step(entry.getValueNode(), path.substring(length));
        }
      }
      return best;
    }

    private static boolean heads(String key, String path) {
      return path.startsWith(key)
          && (path.length() == key.length() || ".[".indexOf(path.charAt(key.length())) >= 0);
    }
  }
}
