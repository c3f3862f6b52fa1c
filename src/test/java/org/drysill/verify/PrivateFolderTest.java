package org.drysill.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;

class PrivateFolderTest {
  @Test
  void it_is_for_its_owner_alone_and_leaves_nothing() throws IOException {
    Path file;
    try (PrivateFolder folder = new PrivateFolder()) {
      folder.write("a/b/c.yaml", "x".getBytes(StandardCharsets.UTF_8));
      file = folder.resolve("a/b/c.yaml");
      assertThat(file).hasContent("x");
      Path root = file.getParent().getParent().getParent();
      if (Files.getFileStore(root).supportsFileAttributeView("posix")) {
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(root)))
            .isEqualTo("rwx------");
      }
    }
    assertThat(file.getParent().getParent().getParent()).doesNotExist();
  }
}
