package org.drysill.report.page;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.StringTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateNotFoundException;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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

  private static final int LONGEST_PAGE = 1 << 25;
  private static final Duration LONGEST_RUN = Duration.ofSeconds(30);

  private final Configuration configuration;
  private final Fonts fonts;
  private final OwnTemplates own;
  private final BoundedRun run;

  /** The templates that come with the program. */
  public Templates() {
    this(new Fonts());
  }

  /** The same, sharing fonts with others of its thread. */
  public Templates(Fonts fonts) {
    this(fonts, OwnTemplates.NONE);
  }

  /** The same, with those of a user's own before the bundled ones. */
  public Templates(Fonts fonts, OwnTemplates own) {
    this(fonts, own, LONGEST_RUN);
  }

  Templates(Fonts fonts, OwnTemplates own, Duration longestRun) {
    this.fonts = fonts;
    this.own = own;
    this.run = new BoundedRun(longestRun);
    this.configuration = configuration(own);
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
    if (own.isEmpty()) {
      return filled(template, model, new StringWriter());
    }
    String page = run.of(() -> filled(template, model, new BoundedWriter(LONGEST_PAGE)));
    if (!template.endsWith(".css")) {
      PageCheck.check(page, charts(model));
    }
    return page;
  }

  private static Set<String> charts(Map<String, Object> model) {
    Set<String> ids = new HashSet<>();
    if (model.get("charts") instanceof Map<?, ?> charts) {
      charts.keySet().forEach(id -> ids.add((String) id));
    }
    return ids;
  }

  private String filled(String template, Map<String, Object> model, StringWriter text) {
    GlyphCheck glyphs = new GlyphCheck(fonts);
    Map<String, Object> root = new HashMap<>(model);
    Supplier<List<Map<String, String>>> missing = glyphs::missing;
    root.put(MISSING_CHARACTERS, missing);
    try {
      guard();
      Template loaded = configuration.getTemplate(template);
      loaded.process(root, text, new PlainWrapper(glyphs));
      return text.toString();
    } catch (ParseException e) {
      throw problem(e.getTemplateName(), e.getLineNumber(), e.getEditorMessage(), e);
    } catch (TemplateNotFoundException e) {
      throw problem(e.getTemplateName(), 0, "there is no such template", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      String said = e.getMessageWithoutStackTop().lines().findFirst().orElse("");
      throw problem(
          e.getTemplateSourceName(), e.getLineNumber() == null ? 0 : e.getLineNumber(), said, e);
    }
  }

  /** A fault of a user's template is theirs to mend; one of ours is a defect. */
  private RuntimeException problem(String file, int line, String said, Exception cause) {
    if (own.isEmpty()) {
      return new IllegalStateException("the template " + file + " cannot be filled", cause);
    }
    TemplateProblem problem = new TemplateProblem(file, line, said.replace('\n', ' '));
    problem.initCause(cause);
    return problem;
  }

  /** A style sheet as it stands. */
  public String style(String name) {
    try {
      StringWriter text = new StringWriter();
      configuration.getTemplate(name, Locale.ROOT, "UTF-8", false).process(Map.of(), text);
      return text.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException("text without directives cannot fail: " + name, e);
    }
  }

  /** Lets the loops of a user's templates be interrupted. */
  private void guard() throws IOException {
    for (String name : own.texts().keySet()) {
      if (name.endsWith(".ftlh")) {
        _CoreAPI.addThreadInterruptedChecks(configuration.getTemplate(name));
      }
    }
  }

  private static Configuration configuration(OwnTemplates own) {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setTemplateLoader(loader(own));
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

  private static TemplateLoader loader(OwnTemplates own) {
    TemplateLoader bundled = new ClassTemplateLoader(Templates.class.getClassLoader(), "templates");
    StringTemplateLoader before = new StringTemplateLoader();
    own.texts().forEach(before::putTemplate);
    return own.isEmpty()
        ? bundled
        : new MultiTemplateLoader(new TemplateLoader[] {before, bundled});
  }
}
