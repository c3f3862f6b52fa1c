package org.drysill.report.page;

import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;

/**
 * The templates of the folder {@code templates}, filled with a model of maps, lists, words, numbers
 * and records. A template can reach nothing else: no class, no file, no address.
 */
public final class Templates {
  private final Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);

  /** The templates that come with the program. */
  public Templates() {
    configuration.setClassLoaderForTemplateLoading(Templates.class.getClassLoader(), "templates");
    configuration.setDefaultEncoding("UTF-8");
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setRecognizeStandardFileExtensions(true);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setObjectWrapper(new RecordWrapper());
    configuration.setLocale(Locale.ROOT);
    configuration.setNumberFormat("c");
    configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setWrapUncheckedExceptions(true);
    configuration.setLocalizedLookup(false);
  }

  /**
   * Fills a template.
   *
   * @param template its name within the folder, such as "report.ftlh"
   * @param model what it may show
   * @return the text, every value escaped for HTML
   */
  public String render(String template, Map<String, Object> model) {
    try {
      Template loaded = configuration.getTemplate(template);
      StringWriter text = new StringWriter();
      loaded.process(model, text);
      return text.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException("the template " + template + " cannot be filled", e);
    }
  }
}
