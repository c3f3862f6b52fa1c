package org.drysill.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.yaml.ProblemList.Finding;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** Fills records from mappings, or from a scalar that stands for one key. */
final class RecordFiller {
  private final Complaints complaints;
  private final NodeReader values;

  RecordFiller(Complaints complaints, NodeReader values) {
    this.complaints = complaints;
    this.values = values;
  }

  Optional<Object> read(Shape shape, Spot spot) {
    RecordType type = RecordType.of(shape.type());
    if (spot.node() instanceof MappingNode mapping) {
      return fill(type, entries(type, mapping, spot), spot);
    }
    if (spot.node() instanceof ScalarNode scalar && type.shorthand().isPresent()) {
      return fill(type, Map.of(type.shorthand().get(), scalar), spot);
    }
    return complaints.wrong(YamlCode.WRONG_SHAPE, spot, shape, NodeReader.describe(spot.node()));
  }

  /** The known keys of a mapping; complains about unknown ones and about the same one twice. */
  private Map<String, Node> entries(RecordType type, MappingNode mapping, Spot spot) {
    List<String> known = type.names();
    Map<String, Node> entries = new LinkedHashMap<>();
    Map<String, Node> keys = new LinkedHashMap<>();
    for (NodeTuple entry : mapping.getValue()) {
      Node key = entry.getKeyNode();
      String name = NodeReader.text(key);
      Spot at = spot.at(key, NodeReader.child(spot.path(), name));
      Node earlier = keys.putIfAbsent(name, key);
      if (earlier != null) {
        int line = complaints.place(spot.at(earlier, "")).line();
        complaints.add(
            YamlCode.DUPLICATE_KEY,
            at,
            Finding.quoted(name, "each key once; it stands on line " + line + " already"));
      } else if (known.contains(name)) {
        entries.put(name, entry.getValueNode());
      } else {
        unknown(name, known, at);
      }
    }
    return entries;
  }

  private void unknown(String name, List<String> known, Spot at) {
    String expected =
        name.equals("<<") ? "the keys written out" : "one of " + Expectation.some(known);
    complaints.add(
        YamlCode.UNKNOWN_KEY,
        at,
        Finding.of("the key " + Finding.quote(name), expected).meant(Nearest.of(name, known)));
  }

  private Optional<Object> fill(RecordType type, Map<String, Node> entries, Spot spot) {
    boolean scalar = spot.node() instanceof ScalarNode;
    List<Field> fields = type.fields();
    Object[] arguments = new Object[fields.size()];
    boolean whole = true;
    boolean usable = true;
    for (int i = 0; i < arguments.length; i++) {
      Field field = fields.get(i);
      String path = scalar ? spot.path() : NodeReader.child(spot.path(), field.name());
      Optional<Object> value = component(field, entries.get(field.name()), spot, path);
      boolean absorbed = field.shape().kind() == Shape.Kind.OPTIONAL;
      whole &= value.isPresent();
      usable &= value.isPresent() || absorbed;
      arguments[i] = value.orElse(absorbed ? Optional.empty() : null);
    }
    return usable ? construct(type, arguments, whole, spot) : Optional.empty();
  }

  private Optional<Object> component(Field field, Node node, Spot parent, String path) {
    if (node != null && !NodeReader.isBlank(node)) {
      return values.read(field.shape(), new Spot(node, path, field.key()));
    }
    if (!field.isRequired()) {
      return Optional.of(nothing(field.shape()));
    }
    boolean missing = node == null;
    Spot at = new Spot(missing ? parent.node() : node, path, field.key());
    String found = missing ? "no key \"" + field.name() + "\"" : "nothing";
    return complaints.wrong(
        missing ? YamlCode.MISSING_KEY : YamlCode.BLANK, at, field.shape(), found);
  }

  private static Object nothing(Shape shape) {
    return switch (shape.kind()) {
      case LIST -> List.of();
      case MAP -> Map.of();
      case OPTIONAL -> Optional.empty();
      case TEXT, FLAG, WHOLE, DECIMAL, DAY, MOMENT, QUANTITY, WORD, RECORD ->
          throw new IllegalStateException("required: " + shape.type());
    };
  }

  /**
   * The record. Where an optional part was refused it is made without that part, so that further
   * checks can look at the rest; its own rules are not held against it then.
   */
  private Optional<Object> construct(
      RecordType type, Object[] arguments, boolean whole, Spot spot) {
    try {
      return Optional.of(type.make(arguments));
    } catch (IllegalArgumentException reason) {
      return whole ? refused(reason, spot) : Optional.empty();
    }
  }

  private Optional<Object> refused(IllegalArgumentException reason, Spot spot) {
    return complaints.add(
        YamlCode.REFUSED,
        spot,
        Finding.of("values that do not go together", String.valueOf(reason.getMessage())));
  }
}
