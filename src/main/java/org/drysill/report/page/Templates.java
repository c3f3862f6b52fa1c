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
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.function.Supplier;
import org.drysill.report.font.Fonts;

/**
 * The templates of the folder {@code templates}, filled with a model of maps, lists, words, numbers
 * and records. A template can reach nothing else: no class, no file, no address.
 */
public final class Templates {
  /** The variable that lists, where a template reads it, the characters replaced until then. */
  public static final String MISSING_CHARACTERS = "missing_characters";

  private final Configuration configuration = configuration();
  private final Fonts fonts;

  /** The templates that come with the program. */
  public Templates() {
    this(new Fonts());
  }

  /** The same, sharing fonts with others of its thread. */
  public Templates(Fonts fonts) {
    this.fonts = fonts;
  }

  /**
   * Fills a template. Every word of the model goes through a {@link GlyphCheck} on its way; what
   * was replaced so far stands in {@value #MISSING_CHARACTERS}, a list of maps with {@code code}
   * and {@code name}.
   *
   * @param template its name within the folder, such as "report.ftlh"
   * @param model what it may show
   * @return the text, every value escaped for HTML
   */
  public String render(String template, Map<String, Object> model) {
    GlyphCheck glyphs = new GlyphCheck(fonts);
    Map<String, Object> root = new HashMap<>(model);
    Supplier<List<Map<String, String>>> missing = glyphs::missing;
    root.put(MISSING_CHARACTERS, missing);
    try {
      Template loaded = configuration.getTemplate(template);
      StringWriter text = new StringWriter();
      loaded.process(root, text, new PlainWrapper(glyphs));
      return text.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException("the template " + template + " cannot be filled", e);
    }
  }

  /** A style sheet as it stands. */
  public String style(String name) {
    return render(name, Map.of());
  }

  private static Configuration configuration() {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setClassLoaderForTemplateLoading(Templates.class.getClassLoader(), "templates");
    configuration.setDefaultEncoding("UTF-8");
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setRecognizeStandardFileExtensions(true);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setLocale(Locale.ROOT);
    configuration.setNumberFormat("c");
    configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setLocalizedLookup(false);
    return configuration;
  }
}
