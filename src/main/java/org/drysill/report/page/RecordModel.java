package org.drysill.report.page;

import freemarker.template.ObjectWrapper;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Set;

/**
 * A record as a template sees it: its components, and the public methods without parameters that it
 * declares itself, read like components.
 */
final class RecordModel implements TemplateHashModel {
  private static final Set<String> NOT_SHOWN = Set.of("toString", "hashCode");

  private final Record record;
  private final ObjectWrapper wrapper;

  RecordModel(Record record, ObjectWrapper wrapper) {
    this.record = record;
    this.wrapper = wrapper;
  }

  @Override
  public TemplateModel get(String key) throws TemplateModelException {
    if (NOT_SHOWN.contains(key)) {
      return null;
    }
    try {
      Method method = record.getClass().getDeclaredMethod(key);
      if (!Modifier.isPublic(method.getModifiers()) || Modifier.isStatic(method.getModifiers())) {
        return null;
      }
      // A package-private record has public components that only reflection with leave can read.
      method.setAccessible(true);
      return wrapper.wrap(method.invoke(record));
    } catch (NoSuchMethodException e) {
      return null;
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new TemplateModelException("cannot read " + key + " of " + record.getClass(), e);
    }
  }

  @Override
  public boolean isEmpty() {
    return false;
  }
}
