package org.drysill.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class ProvenanceTest {
  @Test
  void the_metadata_packet_holds_any_words() throws Exception {
    byte[] packet = Xmp.packet(Sample.metadata()).getBytes(java.nio.charset.StandardCharsets.UTF_8);
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(packet));
    assertThat(document.getElementsByTagName("dc:title").item(0).getTextContent())
        .isEqualTo("Air & water: \"4 <Sample> Terrace\"");
    assertThat(document.getElementsByTagName("pdf:Keywords").item(0).getTextContent())
        .isEqualTo("ventilation, condensation & mould");
    assertThat(document.getElementsByTagName("xmp:CreateDate").item(0).getTextContent())
        .isEqualTo("2026-01-22T00:00:00Z");
  }

  /**
   * Against the profile that comes with Java, and the D50 primaries that ICC publishes for sRGB.
   */
  @Test
  void our_profile_is_srgb() {
    ICC_Profile profile = ICC_Profile.getInstance(SrgbProfile.bytes());
    ICC_ColorSpace ours = new ICC_ColorSpace(profile);
    ColorSpace javas = ColorSpace.getInstance(ColorSpace.CS_sRGB);
    for (float[] color :
        new float[][] {{1, 1, 1}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {.5f, .25f, .75f}}) {
      float[] expected = javas.toCIEXYZ(color);
      float[] actual = ours.toCIEXYZ(color);
      for (int i = 0; i < 3; i++) {
        assertThat(actual[i]).isCloseTo(expected[i], within(0.003f));
      }
    }
  }
}
