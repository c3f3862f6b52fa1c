package org.drysill;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What was made lately, kept for those tests that ask for the same again: a few, so that memory
 * does not grow with the number of tests. Only for what nobody can change. Two threads that ask at
 * once may both make it.
 */
public final class Lately<K, V> {
  private final Map<K, V> made;

  /** Keeps so many. */
  public Lately(int keep) {
    this.made =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > keep;
          }
        };
  }

  /** That of a key, made where it is not there. */
  public V of(K key, Supplier<V> make) {
    synchronized (made) {
      V known = made.get(key);
      if (known != null) {
        return known;
      }
    }
    // Not under the lock: what is made may itself wait for threads that ask here.
    V fresh = make.get();
    synchronized (made) {
      made.put(key, fresh);
    }
    return fresh;
  }
}
