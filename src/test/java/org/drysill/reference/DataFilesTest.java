package org.drysill.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DataFilesTest {
  private static final Path FOLDER = Path.of("src/main/resources/reference");

  @Test
  void the_index_names_every_bundled_file_in_name_order() throws IOException {
    assertThat(DataFiles.index()).isEqualTo(filesOnDisk());
  }

  @Test
  void a_missing_bundled_file_is_a_defect_and_says_which() {
    assertThatThrownBy(() -> DataFiles.read("rules/nowhere.yaml", Citation.class))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("reference/rules/nowhere.yaml");
  }

  @Test
  void a_bundled_file_that_does_not_read_shows_its_problems() {
    assertThatThrownBy(() -> DataFiles.read("../broken-data.yaml", Citation.class))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("broken-data.yaml:2:1: error Y013")
        .hasMessageContaining("did you mean \"edition\"?");
  }

  private static List<String> filesOnDisk() throws IOException {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> FOLDER.relativize(file).toString().replace('\\', '/'))
          .filter(path -> !path.equals("index.txt"))
          .sorted()
          .toList();
    }
  }
}
