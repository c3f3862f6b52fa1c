package org.drysill.report.pdf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drysill.report.page.HtmlPage;
import org.drysill.report.page.Templates;

/** Writes the sample document to a folder, to be looked at. */
final class WriteSample {
  private WriteSample() {}

  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    Files.write(folder.resolve("sample.pdf"), Sample.pdf());
    Files.writeString(
        folder.resolve("sample.html"),
        new HtmlPage().render(Sample.page(), Sample.charts(), new Templates().style("screen.css")));
  }
}
