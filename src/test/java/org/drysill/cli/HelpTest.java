package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;

/** What the program says of itself. */
class HelpTest {
  static Stream<Class<?>> commands() {
    return Arrays.stream(Main.class.getAnnotation(Command.class).subcommands())
        .filter(command -> command != HelpCommand.class);
  }

  /** The list of commands shows the first entry of each description alone. */
  @ParameterizedTest
  @MethodSource("commands")
  void a_command_is_told_in_one_whole_sentence(Class<?> command) {
    assertThat(command.getAnnotation(Command.class).description()[0]).matches("[A-Z].*[a-z]\\.");
  }

  @Test
  void the_list_of_commands_has_them_all() {
    StringWriter out = new StringWriter();
    PrintWriter nowhere = new PrintWriter(new StringWriter(), true);
    assertThat(Main.run(new PrintWriter(out, true), nowhere, Map.of(), false, "help")).isZero();
    commands()
        .map(command -> command.getAnnotation(Command.class).name())
        .forEach(name -> assertThat(out.toString()).containsPattern("\\n +" + name + " +[A-Z]"));
  }
}
