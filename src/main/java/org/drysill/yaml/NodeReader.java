package org.drysill.yaml;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drysill.yaml.ProblemList.Finding;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Reads the nodes of a file as values of the shapes that the records want. */
final class NodeReader {
  private final Complaints complaints;
  private final ScalarReader scalars;
  private final RecordFiller records;
  private final Set<Node> open = Collections.newSetFromMap(new IdentityHashMap<>());

  NodeReader(Complaints complaints, Vocabularies vocabularies, Folder folder) {
    this.complaints = complaints;
    this.scalars = new ScalarReader(complaints, new TextReader(complaints, vocabularies, folder));
    this.records = new RecordFiller(complaints, this);
  }

  /** A value of the shape; empty after at least one complaint. */
  Optional<Object> read(Shape shape, Spot spot) {
    // A scalar cannot contain itself; as a shorthand it is read twice, as record and as value.
    boolean canRecur = shape.kind() == Shape.Kind.RECORD || !(spot.node() instanceof ScalarNode);
    if (shape.kind() == Shape.Kind.OPTIONAL || !canRecur) {
      return value(shape, spot);
    }
    if (!open.add(spot.node())) {
      return complaints.add(
          YamlCode.CONTAINS_ITSELF, spot, Finding.of("an alias of itself", "the value itself"));
    }
    try {
      return value(shape, spot);
    } finally {
      open.remove(spot.node());
    }
  }

  private Optional<Object> value(Shape shape, Spot spot) {
    return switch (shape.kind()) {
      case OPTIONAL -> read(shape.unwrapped(), spot).map(Optional::of);
      case LIST -> list(shape, spot);
      case MAP -> map(shape, spot);
      case RECORD -> records.read(shape, spot);
      case TEXT, FLAG, WHOLE, DECIMAL, DAY, MOMENT, QUANTITY, WORD -> scalar(shape, spot);
    };
  }

  private Optional<Object> scalar(Shape shape, Spot spot) {
    if (!(spot.node() instanceof ScalarNode node)) {
      return complaints.wrong(YamlCode.WRONG_SHAPE, spot, shape, describe(spot.node()));
    }
    if (isBlank(node)) {
      return complaints.wrong(YamlCode.BLANK, spot, shape, "nothing");
    }
    return scalars.read(shape, node.getValue().strip(), spot);
  }

  private Optional<Object> list(Shape shape, Spot spot) {
    if (!(spot.node() instanceof SequenceNode sequence)) {
      return complaints.wrong(YamlCode.WRONG_SHAPE, spot, shape, describe(spot.node()));
    }
    List<Node> nodes = sequence.getValue();
    if (!hasRightSize(nodes.size(), spot)) {
      return Optional.empty();
    }
    List<Object> values = new ArrayList<>();
    for (int i = 0; i < nodes.size(); i++) {
      read(shape.content(), spot.at(nodes.get(i), spot.path() + "[" + i + "]"))
          .ifPresent(values::add);
    }
    return values.size() == nodes.size() ? Optional.of(List.copyOf(values)) : Optional.empty();
  }

  private boolean hasRightSize(int size, Spot spot) {
    int wanted = spot.key().size();
    boolean right = wanted == 0 ? size > 0 || !spot.key().required() : size == wanted;
    if (!right) {
      complaints.add(
          YamlCode.WRONG_COUNT,
          spot,
          Finding.of(
              size == 1 ? "1 entry" : size + " entries",
              Expectation.about(spot.key())
                  + (wanted == 0 ? "one entry at least" : wanted + " entries")));
    }
    return right;
  }

  private Optional<Object> map(Shape shape, Spot spot) {
    if (!(spot.node() instanceof MappingNode mapping)) {
      return complaints.wrong(YamlCode.WRONG_SHAPE, spot, shape, describe(spot.node()));
    }
    Map<Object, Object> values = new LinkedHashMap<>();
    boolean complete = true;
    for (NodeTuple entry : mapping.getValue()) {
      String path = child(spot.path(), text(entry.getKeyNode()));
      Optional<Object> name = read(shape.parts().get(0), mapKey(shape, spot, entry, path));
      Optional<Object> value = read(shape.content(), spot.at(entry.getValueNode(), path));
      complete &= name.isPresent() && value.isPresent();
      if (name.isPresent() && value.isPresent() && values.put(name.get(), value.get()) != null) {
        complete = false;
        complaints.add(
            YamlCode.DUPLICATE_KEY,
            spot.at(entry.getKeyNode(), path),
            Finding.quoted(text(entry.getKeyNode()), "each key once"));
      }
    }
    return complete ? Optional.of(Collections.unmodifiableMap(values)) : Optional.empty();
  }

  /** A vocabulary speaks of the keys; bounds, units and paths speak of the values. */
  private static Spot mapKey(Shape shape, Spot spot, NodeTuple entry, String path) {
    boolean plain = shape.parts().get(0).kind() != Shape.Kind.TEXT;
    return new Spot(entry.getKeyNode(), path, plain ? NoKey.instance() : spot.key());
  }

  static String child(String path, String name) {
    return path.isEmpty() ? name : path + "." + name;
  }

  static String text(Node node) {
    return node instanceof ScalarNode scalar ? scalar.getValue().strip() : "?";
  }

  static boolean isBlank(Node node) {
    return node instanceof ScalarNode scalar
        && (scalar.getValue().isBlank() || (scalar.isPlain() && scalar.getValue().equals("~")));
  }

  static String describe(Node node) {
    if (node instanceof SequenceNode) {
      return "a list";
    }
    if (node instanceof MappingNode) {
      return "keys with values";
    }
    return isBlank(node) ? "nothing" : Finding.quote(text(node));
  }
}
