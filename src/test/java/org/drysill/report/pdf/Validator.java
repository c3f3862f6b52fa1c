package org.drysill.report.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.verapdf.apps.GreenfieldCliWrapper;

/** A validator of PDF/A and PDF/UA that is not ours. */
public final class Validator {
  private Validator() {}

  /**
   * What it says of files.
   *
   * <p>In a process of its own: the validator ends its process and keeps settings in static fields.
   *
   * @param flavour such as 3a, 3u or ua1
   * @param files the files
   */
  public static String verdict(String flavour, Path... files)
      throws IOException, InterruptedException {
    Path jar =
        Path.of(
            GreenfieldCliWrapper.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .getPath());
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-cp",
                jar.toString(),
                GreenfieldCliWrapper.class.getName(),
                "-f",
                flavour,
                "--format",
                "text",
                "-v"));
    for (Path file : files) {
      command.add(file.toString());
    }
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String words = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return words;
  }
}
