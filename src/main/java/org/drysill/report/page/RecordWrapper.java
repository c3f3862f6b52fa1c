package org.drysill.report.page;

import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.util.Optional;
import org.drysill.yaml.Worded;

/**
 * Shows a template maps, lists, words, numbers, truth values, records by their components, optional
 * values as present or missing, and enums as words. Every other object is refused.
 */
final class RecordWrapper extends SimpleObjectWrapper {
  RecordWrapper() {
    super(Configuration.VERSION_2_3_34);
  }

  @Override
  protected TemplateModel handleUnknownType(Object value) throws TemplateModelException {
    if (value instanceof Record record) {
      return new RecordModel(record, this);
    }
    if (value instanceof Optional<?> optional) {
      return wrap(optional.orElse(null));
    }
    if (value instanceof Worded worded) {
      return wrap(worded.word());
    }
    if (value instanceof Enum<?> constant) {
      return wrap(constant.name());
    }
    return super.handleUnknownType(value);
  }
}
