package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import javax.management.JMException;
import javax.management.ObjectName;
import org.junit.jupiter.api.Test;

/** In a process of its own, since the machine that runs the tests should keep its compiler. */
class ShortRunTest {
  /** Tells the machine, then prints what it was told. */
  public static final class Told {
    private Told() {}

    public static void main(String[] arguments) throws JMException {
      ShortRun.tell();
      System.out.println(
          ManagementFactory.getPlatformMBeanServer()
              .invoke(
                  new ObjectName("com.sun.management:type=DiagnosticCommand"),
                  "compilerDirectivesPrint",
                  new Object[0],
                  new String[0]));
    }
  }

  @Test
  void the_optimising_compiler_is_left_out_but_for_what_runs_for_seconds() throws Exception {
    Process told =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp",
                    System.getProperty("java.class.path"),
                    Told.class.getName()))
            .redirectErrorStream(true)
            .start();
    String said = new String(told.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(told.waitFor()).isZero();
    List<String> directives = List.of(said.split("Directive:"));
    assertThat(directives).hasSize(4);
    assertThat(directives.get(1)).contains("matching: org/drysill/");
    assertThat(optimising(directives.get(1))).contains("Exclude:false");
    assertThat(directives.get(2)).contains("matching: *.*");
    assertThat(optimising(directives.get(2))).contains("Exclude:true");
    // A class by another name would be left out without a word.
    List<String> named =
        Pattern.compile("org/drysill/[\\w/]+\\w")
            .matcher(directives.get(1))
            .results()
            .map(r -> r.group().replace('/', '.'))
            .toList();
    assertThat(named).hasSize(3);
    for (String name : named) {
      assertThat(Class.forName(name)).isNotNull();
    }
  }

  private static String optimising(String directive) {
    return directive.substring(directive.indexOf("c2 directives"));
  }
}
