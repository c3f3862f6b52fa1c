package org.drysill.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.font.Face;
import org.drysill.report.font.Fonts;
import org.drysill.report.font.VisualOrder;
import org.drysill.report.pdf.economy.Economy;
import org.drysill.report.pdf.pack.PackedFile;

/** Lays out a page text and its charts and writes the PDF. Not for use by two threads at once. */
public final class PdfRenderer {
  private static final float PDF_VERSION = 1.7f;

  private final Fonts fonts;
  private final Consumer<String> stages;

  static {
    // The layout library reports to a logger what the caller learns from the result.
    XRLog.setLoggingEnabled(false);
    // Small pictures need no temporary files.
    ImageIO.setUseCache(false);
  }

  /** A renderer that reads its fonts when they are first asked for. */
  public PdfRenderer() {
    this(new Fonts());
  }

  /** A renderer that shares fonts with others of its thread. */
  public PdfRenderer(Fonts fonts) {
    this(fonts, stage -> {});
  }

  /**
   * The same, telling what it is about to do.
   *
   * @param stages told of each stage as it begins, in one or two words
   */
  public PdfRenderer(Fonts fonts, Consumer<String> stages) {
    this.fonts = fonts;
    this.stages = stages;
  }

  /**
   * Renders a document.
   *
   * @param xhtml well-formed XHTML, as the templates make it; charts stand in it as {@code <object
   *     type="chart/kind" data="id" alt="…" style="width: …; height: …">}
   * @param charts the charts by id
   * @param metadata what the file says of itself
   * @param attachments the files that travel inside, in the order of their listing
   * @return the bytes of a PDF/A-3a and PDF/UA-1 file
   */
  public byte[] render(
      String xhtml,
      Map<String, ChartSpec> charts,
      PdfMetadata metadata,
      List<Attachment> attachments) {
    stages.accept("reading the page");
    try (PDDocument document = new PDDocument()) {
      EmbeddedFonts embedded = new EmbeddedFonts(document, fonts);
      try (PdfBoxRenderer renderer =
          builder(document, embedded, xhtml, charts).buildPdfRenderer()) {
        stages.accept("layout");
        renderer.layout();
        stages.accept("painting");
        renderer.createPDFKeepOpen();
        stages.accept("saving");
        embedded.subset();
        Economy.apply(document);
        Provenance.write(document, metadata);
        Attachments.attach(document, attachments, metadata.date());

        return PackedFile.of(document, Provenance.id(xhtml, charts, metadata, attachments));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private PdfRendererBuilder builder(
      PDDocument document, EmbeddedFonts embedded, String xhtml, Map<String, ChartSpec> charts) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePDDocument(document).toStream(OutputStream.nullOutputStream());
    builder.usePdfVersion(PDF_VERSION);
    builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_3_A);
    builder.usePdfUaAccessibility(true);
    builder.useColorProfile(SrgbProfile.bytes());
    builder.withHtmlContent(xhtml, null);
    builder.useObjectDrawerFactory(new ChartDrawers(charts, embedded));
    for (Face face : Face.values()) {
      FontStyle style = face.italic() ? FontStyle.ITALIC : FontStyle.NORMAL;
      builder.useFont(embedded.supplier(face), face.family(), face.weight(), style, true);
    }
    if (VisualOrder.matters(xhtml)) {
      builder.useUnicodeBidiSplitter(Bidirectional::new);
      builder.useUnicodeBidiReorderer(new Bidirectional());
    }
    shut(builder);
    return builder;
  }

  /** Nothing is fetched from anywhere; a picture must stand in the text itself. */
  private static void shut(PdfRendererBuilder builder) {
    for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl(
          (address, type) -> Doors.isOpen(address, type), when);
    }
    builder.useProtocolsStreamImplementation(Doors::refuse, Doors.PROTOCOLS);
    builder.useHttpStreamImplementation(Doors::refuse);
  }
}
