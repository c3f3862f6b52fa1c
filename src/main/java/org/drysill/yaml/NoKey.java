package org.drysill.yaml;

/** The annotation of what has no key of its own: the root of a file, a number used as a key. */
final class NoKey {
  private record Holder(@Key(about = "") String nothing) {}

  private static final Key INSTANCE =
      Holder.class.getRecordComponents()[0].getAnnotation(Key.class);

  private NoKey() {}

  static Key instance() {
    return INSTANCE;
  }
}
