package org.drysill.report.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceType;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.util.Set;

/** What a page text may pull in: pictures that stand in the text itself, and nothing else. */
final class Doors {
  /** The kinds of address that lead out of the text. */
  static final Set<String> PROTOCOLS =
      Set.of("http", "https", "file", "jar", "ftp", "jrt", "mailto");

  private Doors() {}

  static boolean isOpen(String address, ExternalResourceType type) {
    return type == ExternalResourceType.IMAGE_RASTER
        && address != null
        && address.startsWith("data:image/");
  }

  /** An empty stream, should a request get past the first door. */
  static FSStream refuse(String address) {
    return new FSStream() {
      @Override
      public InputStream getStream() {
        return new ByteArrayInputStream(new byte[0]);
      }

      @Override
      public Reader getReader() {
        return new StringReader("");
      }
    };
  }
}
