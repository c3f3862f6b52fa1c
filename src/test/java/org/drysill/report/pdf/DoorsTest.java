package org.drysill.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a page text asks for, nothing comes in from outside. */
class DoorsTest {
  private static final String SECRET = "open sesame";

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<link rel=\"stylesheet\" href=\"%s\"/>",
        "<style>@import url(%s);</style>",
        "<style>@font-face { font-family: F; src: url(%s); } p { font-family: F, Body; }</style>",
      })
  void a_head_that_asks_for_a_file_gets_nothing(String head) throws IOException {
    Path file =
        Files.writeString(folder.resolve("secret.css"), "p::after { content: '" + SECRET + "' }");
    String page = page(head.formatted(file.toUri()), "");
    assertThat(text(page)).contains("text").doesNotContain(SECRET);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<p><img src=\"%s\" alt=\"a\"/></p>",
        "<p><object data=\"%s\" type=\"text/plain\"></object></p>",
        "<iframe src=\"%s\"></iframe>",
        "<p style=\"background-image: url(%s)\">b</p>",
        "<p><a href=\"%s\" download=\"x\" title=\"t\">b</a></p>",
        "<p><img src=\"jar:%s!/a\" alt=\"a\"/></p>",
        "<p><embed src=\"%s\"/></p>",
      })
  void a_body_that_asks_for_a_file_gets_nothing(String body) throws IOException {
    Path file = Files.writeString(folder.resolve("secret.txt"), SECRET.repeat(20_000));
    byte[] pdf = render(page("", body.formatted(file.toUri())));
    assertThat(text(pdf)).contains("text").doesNotContain(SECRET);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getDocumentCatalog().getNames()).isNull();
    }
  }

  /** Were anyone to call, the call would wait in the server's queue and be accepted at once. */
  @Test
  void nothing_is_asked_of_the_net() throws IOException {
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      String address = "http://127.0.0.1:" + server.getLocalPort() + "/x";
      String head =
          "<link rel=\"stylesheet\" href=\"%1$s\"/><style>@import url(%1$s);</style>"
              .formatted(address);
      String body =
          "<p><img src=\"%1$s\" alt=\"a\"/></p><iframe src=\"%1$s\"></iframe>".formatted(address);
      assertThat(text(page(head, body))).contains("text");
      server.setSoTimeout(200);
      assertThatThrownBy(server::accept).isInstanceOf(SocketTimeoutException.class);
    }
  }

  @Test
  void an_external_entity_stays_empty() throws IOException {
    Path file = Files.writeString(folder.resolve("secret.txt"), SECRET);
    String page =
        "<!DOCTYPE html [<!ENTITY e SYSTEM \""
            + file.toUri()
            + "\">]>\n"
            + page("", "<p>[&e;]</p>");
    assertThat(text(page)).doesNotContain(SECRET);
  }

  private static String page(String head, String body) {
    return "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>t</title>"
        + "<style>body { font-family: Body, Symbols; }</style>"
        + head
        + "</head><body><p>text</p>"
        + body
        + "</body></html>";
  }

  private static byte[] render(String page) {
    return new PdfRenderer().render(page, Map.of(), Sample.metadata(), List.of());
  }

  private static String text(String page) throws IOException {
    return text(render(page));
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }
}
