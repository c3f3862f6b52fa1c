package org.drysill.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.drysill.report.sign.KeyRefused;
import org.drysill.report.sign.Signer;
import org.drysill.report.sign.SigningKey;
import org.drysill.yaml.FileTrouble;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** With which key a report is signed, and where its password is. */
final class SignOptions {
  @Option(
      names = "--sign",
      paramLabel = "<key.p12>",
      description =
          "Sign the PDF with your own key, of a PKCS#12 file. The password is asked for at the"
              + " terminal.")
  private Path key;

  @Option(
      names = "--sign-password-file",
      paramLabel = "<file>",
      description = "Take the password from the first line of a file.")
  private Path passwordFile;

  @Option(
      names = "--sign-password-env",
      paramLabel = "<variable>",
      description = "Take the password from a variable of the environment.")
  private String passwordVariable;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  /**
   * The key, before anything is computed or written; empty where none is asked for.
   *
   * @throws IOException where a file cannot be read
   * @throws ParameterException where the key or its password is not usable
   */
  Optional<SigningKey> key(Secrets secrets) throws IOException {
    if (key == null) {
      if (passwordFile != null || passwordVariable != null) {
        throw new ParameterException(
            spec.commandLine(), "a password without a key signs nothing; name the key with --sign");
      }
      return Optional.empty();
    }
    try {
      return Optional.of(SigningKey.read(bytes(), password(secrets), Instant.now()));
    } catch (KeyRefused refused) {
      throw new ParameterException(spec.commandLine(), key + " " + refused.getMessage());
    }
  }

  /** A PDF signed now, or as it is where no key was asked for. */
  byte[] signed(byte[] pdf, Optional<SigningKey> with) throws IOException, KeyRefused {
    return with.isEmpty() ? pdf : Signer.sign(pdf, with.get(), Instant.now());
  }

  /** True where a key was asked for. */
  boolean asked() {
    return key != null;
  }

  private byte[] bytes() throws IOException {
    try {
      return Files.readAllBytes(key);
    } catch (IOException closed) {
      throw FileTrouble.about(key, closed);
    }
  }

  private char[] password(Secrets secrets) throws IOException {
    if (passwordFile != null) {
      return Secrets.inFile(passwordFile);
    }
    Optional<char[]> password =
        passwordVariable == null
            ? secrets.asked("Password of " + key + ": ")
            : secrets.inVariable(passwordVariable);
    return password.orElseThrow(
        () ->
            new ParameterException(
                spec.commandLine(),
                passwordVariable == null
                    ? "nobody is there to be asked for the password of "
                        + key
                        + "; give it with --sign-password-file or --sign-password-env"
                    : "no variable " + passwordVariable + " in the environment"));
  }
}
