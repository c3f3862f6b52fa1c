package org.drysill.cli;

import org.drysill.Drysill;
import picocli.CommandLine.IVersionProvider;

/** The version for {@code --version}. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"drysill " + Drysill.version()};
  }
}
