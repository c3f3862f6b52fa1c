package org.drysill.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FileTroubleTest {
  static Stream<Arguments> troubles() {
    return Stream.of(
        arguments(new NoSuchFileException("a.csv"), "a.csv: no such file or folder"),
        arguments(new AccessDeniedException("a.csv"), "a.csv: no permission"),
        arguments(new NotDirectoryException("a.csv"), "a.csv: not a folder"),
        arguments(new FileSystemLoopException("a"), "a: a link that leads back to itself"),
        arguments(new MalformedInputException(1), "not UTF-8 text"),
        arguments(
            new FileSystemException("a.csv", null, "Too many open files"),
            "a.csv: too many open files"),
        arguments(new FileSystemException("a.csv"), "a.csv: the machine gives no reason"),
        arguments(new IOException("Is a directory"), "is a directory"),
        arguments(new IOException("IO went wrong"), "IO went wrong"),
        arguments(new IOException(), "the machine gives no reason"));
  }

  @ParameterizedTest
  @MethodSource("troubles")
  void every_trouble_is_told_with_its_reason(IOException failed, String told) {
    assertThat(FileTrouble.of(failed)).isEqualTo(told);
  }
}
