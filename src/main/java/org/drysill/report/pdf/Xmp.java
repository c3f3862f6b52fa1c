package org.drysill.report.pdf;

import java.util.stream.Collectors;

/**
 * The metadata packet of a file that claims PDF/A-3a (ISO 19005-3) and PDF/UA-1 (ISO 14289-1), with
 * the description of the second schema that the first asks for.
 */
final class Xmp {
  private Xmp() {}

  static String packet(PdfMetadata metadata) {
    String day = metadata.date() + "T00:00:00Z";
    return """
        <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
            xmlns:dc="http://purl.org/dc/elements/1.1/"
            xmlns:xmp="http://ns.adobe.com/xap/1.0/"
            xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
            xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
            xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
        <dc:format>application/pdf</dc:format>
        """
        + alternative("dc:title", metadata.title())
        + alternative("dc:description", metadata.subject())
        + creator(metadata.author())
        + keywords(metadata)
        + "<dc:language><rdf:Bag><rdf:li>"
        + escaped(metadata.language())
        + "</rdf:li></rdf:Bag></dc:language>\n"
        + property("xmp:CreatorTool", metadata.producer())
        + property("xmp:CreateDate", day)
        + property("xmp:ModifyDate", day)
        + property("xmp:MetadataDate", day)
        + property("pdf:Producer", metadata.producer())
        + property("pdfaid:part", "3")
        + property("pdfaid:conformance", "A")
        + property("pdfuaid:part", "1")
        + "</rdf:Description>\n"
        + EXTENSION
        + "</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>";
  }

  /** Names the one property that PDF/A does not know by itself. */
  private static final String EXTENSION =
      """
      <rdf:Description rdf:about=""
          xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
          xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
          xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
      <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
      <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
      <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
      <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
      <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
      <pdfaProperty:name>part</pdfaProperty:name>
      <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
      <pdfaProperty:category>internal</pdfaProperty:category>
      <pdfaProperty:description>The part of ISO 14289 that the file follows</pdfaProperty:description>
      </rdf:li></rdf:Seq></pdfaSchema:property>
      </rdf:li></rdf:Bag></pdfaExtension:schemas>
      </rdf:Description>
      """;

  private static String alternative(String name, String text) {
    return text.isEmpty()
        ? ""
        : "<%1$s><rdf:Alt><rdf:li xml:lang=\"x-default\">%2$s</rdf:li></rdf:Alt></%1$s>\n"
            .formatted(name, escaped(text));
  }

  private static String creator(String author) {
    return author.isEmpty()
        ? ""
        : "<dc:creator><rdf:Seq><rdf:li>%s</rdf:li></rdf:Seq></dc:creator>\n"
            .formatted(escaped(author));
  }

  private static String keywords(PdfMetadata metadata) {
    return metadata.keywords().isEmpty()
        ? ""
        : property("pdf:Keywords", String.join(", ", metadata.keywords()));
  }

  private static String property(String name, String text) {
    return "<%1$s>%2$s</%1$s>\n".formatted(name, escaped(text));
  }

  /** Escapes what XML reads as markup and drops what it may not hold at all. */
  private static String escaped(String text) {
    return text.codePoints()
        .filter(Xmp::isAllowed)
        .mapToObj(
            codePoint ->
                switch (codePoint) {
                  case '&' -> "&amp;";
                  case '<' -> "&lt;";
                  case '>' -> "&gt;";
                  default -> Character.toString(codePoint);
                })
        .collect(Collectors.joining());
  }

  private static boolean isAllowed(int codePoint) {
    return codePoint == '\t'
        || codePoint == '\n'
        || codePoint == '\r'
        || (codePoint >= ' ' && codePoint < 0xD800)
        || (codePoint >= 0xE000 && codePoint < 0xFFFE)
        || codePoint > 0xFFFF;
  }
}
