package org.drysill.report.json;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;

/**
 * Takes what the comments of records say of their components, for the schema of the results. Run as
 * a program it writes the file anew.
 */
public final class ResultMeanings {
  static final Path FILE =
      Path.of("src/main/resources/org/drysill/report/json/meanings.properties");

  private static final Path SOURCES = Path.of("src/main/java");
  private static final Pattern INLINE = Pattern.compile("\\{@\\w+ (?:[\\w.]*#)?([^}]*)\\}");

  private ResultMeanings() {}

  /** Writes the file. */
  public static void main(String[] arguments) throws IOException {
    Files.createDirectories(FILE.getParent());
    Files.writeString(FILE, text());
  }

  /** The file as it should be. */
  static String text() throws IOException {
    Map<String, String> comments = comments();
    StringBuilder text = new StringBuilder();
    text.append("# What the keys of the results mean: the comments of the records, taken by\n");
    text.append("# report.json.ResultMeanings. Change the comments and run it again.\n");
    for (String key : asked()) {
      String said = comments.get(key);
      if (said == null) {
        throw new IllegalStateException("no comment says what " + key + " is");
      }
      text.append(key).append('=').append(said).append('\n');
    }
    return text.toString();
  }

  /** The types and components of which the schema has something to say, sorted. */
  private static SortedSet<String> asked() {
    TreeSet<String> asked = new TreeSet<>();
    Properties noting =
        new Properties() {
          @Override
          public String getProperty(String key) {
            asked.add(key);
            return key;
          }
        };
    Properties units =
        new Properties() {
          @Override
          public String getProperty(String key) {
            return "COUNT";
          }
        };
    ResultsSchema.of(Results.class, new ResultTexts(noting, units));
    return asked;
  }

  private static Map<String, String> comments() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    Map<String, String> comments = new HashMap<>();
    try (Stream<Path> files = Files.walk(SOURCES);
        var manager = compiler.getStandardFileManager(null, null, null)) {
      List<Path> sources = files.filter(f -> f.toString().endsWith(".java")).toList();
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  manager,
                  null,
                  List.of("-proc:none"),
                  null,
                  manager.getJavaFileObjectsFromPaths(sources));
      DocTrees trees = DocTrees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        new Reader(trees, unit.getPackageName().toString(), comments).scan(unit, "");
      }
    }
    return comments;
  }

  /** Goes through the types of a file; what is handed down is the name of the type around. */
  private static final class Reader extends TreePathScanner<Void, String> {
    private final DocTrees trees;
    private final String folder;
    private final Map<String, String> comments;

    Reader(DocTrees trees, String folder, Map<String, String> comments) {
      this.trees = trees;
      this.folder = folder.equals("org.drysill") ? "" : folder.substring("org.drysill.".length());
      this.comments = comments;
    }

    @Override
    public Void visitClass(ClassTree type, String around) {
      String name = (around.isEmpty() ? folder : around) + "." + type.getSimpleName();
      DocCommentTree comment = trees.getDocCommentTree(getCurrentPath());
      if (comment != null) {
        comments.put(name, plain(comment.getFirstSentence()));
        comment.getBlockTags().stream()
            .filter(ParamTree.class::isInstance)
            .map(ParamTree.class::cast)
            .forEach(p -> comments.put(name + "." + p.getName(), plain(p.getDescription())));
      }
      return super.visitClass(type, name);
    }

    private static String plain(List<?> comment) {
      String text = String.join("", comment.stream().map(String::valueOf).toList());
      return INLINE.matcher(text).replaceAll("$1").replaceAll("\\s+", " ").strip();
    }
  }
}
