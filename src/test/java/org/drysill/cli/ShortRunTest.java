package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
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
  void the_optimising_compiler_is_left_out() throws Exception {
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
    String optimising = said.substring(said.indexOf("c2 directives"));
    assertThat(optimising.lines().limit(3)).anyMatch(line -> line.contains("Exclude:true"));
  }
}
