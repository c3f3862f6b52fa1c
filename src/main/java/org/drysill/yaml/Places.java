package org.drysill.yaml;

/** Where each key of a file stands, by its path such as {@code rooms[0].doors[1].to}. */
public interface Places {
  /** The place of the value at a path; of its nearest parent that exists, where it is missing. */
  Place of(String path);

  /** The text of a line, from 1; empty past the end. */
  String line(int number);
}
