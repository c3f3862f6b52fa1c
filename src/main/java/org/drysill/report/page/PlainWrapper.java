package org.drysill.report.page;

import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.util.Optional;
import java.util.function.Supplier;
import org.drysill.yaml.Worded;

/**
 * Shows a template maps, lists, words, numbers, truth values, records by their components, optional
 * values as present or missing, suppliers by what they supply when read, and enums as words. Every
 * other object is refused. Words pass the glyph check.
 */
final class PlainWrapper extends SimpleObjectWrapper {
  private final GlyphCheck glyphs;

  PlainWrapper(GlyphCheck glyphs) {
    super(Configuration.VERSION_2_3_34);
    this.glyphs = glyphs;
  }

  @Override
  public TemplateModel wrap(Object value) throws TemplateModelException {
    if (value instanceof CharSequence text) {
      return new SimpleScalar(glyphs.printable(text.toString()));
    }
    return super.wrap(value);
  }

  @Override
  protected TemplateModel handleUnknownType(Object value) throws TemplateModelException {
    if (value instanceof Record record) {
      return new RecordModel(record, this);
    }
    if (value instanceof Optional<?> optional) {
      return wrap(optional.orElse(null));
    }
    if (value instanceof Supplier<?> supplier) {
      return wrap(supplier.get());
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
