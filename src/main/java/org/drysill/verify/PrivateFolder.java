package org.drysill.verify;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;

/** A folder for the time of one check; on systems that know owners, its owner alone may enter. */
final class PrivateFolder implements AutoCloseable {
  private final Path root;

  PrivateFolder() throws IOException {
    root = Files.createTempDirectory("drysill-verify");
  }

  Path resolve(String name) {
    return root.resolve(name);
  }

  /** Writes a file whose name is known to stay within its folder. */
  void write(String name, byte[] content) throws IOException {
    Path file = root.resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, content);
  }

  @Override
  public void close() throws IOException {
    Files.walkFileTree(
        root,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path folder, IOException failed)
              throws IOException {
            Files.delete(folder);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
