package org.drysill.yaml;

import org.yaml.snakeyaml.nodes.Node;

/**
 * A value in a file, with what its key says about it.
 *
 * @param node the value
 * @param path its path, such as {@code rooms[0].use}
 * @param key what the record says about its key
 */
record Spot(Node node, String path, Key key) {
  Spot at(Node child, String childPath) {
    return new Spot(child, childPath, key);
  }
}
