package org.drysill.report.page;

import freemarker.template.ObjectWrapper;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * A record as a template sees it: its components, and the public methods without parameters that it
 * declares itself, read like components.
 */
final class RecordModel implements TemplateHashModel {
  private static final Set<String> NOT_SHOWN = Set.of("toString", "hashCode");

  /** What each record shows, by name: found once, since a page asks for the same ones often. */
  private static final ClassValue<Map<String, Method>> SHOWN =
      new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> type) {
          Map<String, Method> shown = new HashMap<>();
          for (Method method : type.getDeclaredMethods()) {
            if (isShown(method)) {
              // A package-private record has public components that only reflection with leave
              // can read.
              method.setAccessible(true);
              shown.put(method.getName(), method);
            }
          }
          return shown;
        }
      };

  private final Record record;
  private final ObjectWrapper wrapper;

  RecordModel(Record record, ObjectWrapper wrapper) {
    this.record = record;
    this.wrapper = wrapper;
  }

  @Override
  public TemplateModel get(String key) throws TemplateModelException {
    Method method = SHOWN.get(record.getClass()).get(key);
    if (method == null) {
      return null;
    }
    try {
      return wrapper.wrap(method.invoke(record));
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new TemplateModelException("cannot read " + key + " of " + record.getClass(), e);
    }
  }

  private static boolean isShown(Method method) {
    return method.getParameterCount() == 0
        && Modifier.isPublic(method.getModifiers())
        && !Modifier.isStatic(method.getModifiers())
        && !method.isBridge()
        && !NOT_SHOWN.contains(method.getName());
  }

  @Override
  public boolean isEmpty() {
    return false;
  }
}
