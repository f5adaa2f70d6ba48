package fourpin.sheets.pages;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * What a PDF says about itself round its pages: title, language, bookmarks, colour space, standards
 * kept.
 */
final class PdfFrame {

  private static final String LANGUAGE = "en";
  private static final String SRGB = "sRGB IEC61966-2.1";
  private static final float VERSION = 1.7f;

  private final PDDocument document;
  private final Booklet booklet;

  PdfFrame(PDDocument document, Booklet booklet) {
    this.document = document;
    this.booklet = booklet;
  }

  void build(PDStructureTreeRoot root, List<PdfWriter.Place> places) throws IOException {
    document.setVersion(VERSION);
    document.getDocumentInformation().setTitle(title());
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage(LANGUAGE);
    catalog.setStructureTreeRoot(root);
    catalog.setMarkInfo(marked());
    catalog.setViewerPreferences(preferences());
    catalog.setPageMode(PageMode.USE_OUTLINES);
    catalog.setPageLabels(labels());
    catalog.setDocumentOutline(bookmarks(places));
    catalog.setMetadata(metadata());
    catalog.addOutputIntent(colours());
  }

  private String title() {
    return booklet.title() + ", revision " + booklet.revision();
  }

  private static PDMarkInfo marked() {
    PDMarkInfo info = new PDMarkInfo();
    info.setMarked(true);
    return info;
  }

  private static PDViewerPreferences preferences() {
    PDViewerPreferences preferences =
        new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
    preferences.setDisplayDocTitle(true);
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    return preferences;
  }

  private PDPageLabels labels() {
    PDPageLabelRange decimal = new PDPageLabelRange();
    decimal.setStyle(PDPageLabelRange.STYLE_DECIMAL);
    PDPageLabels labels = new PDPageLabels(document);
    labels.setLabelItem(0, decimal);
    return labels;
  }

  private static PDDocumentOutline bookmarks(List<PdfWriter.Place> places) {
    PDDocumentOutline outline = new PDDocumentOutline();
    for (PdfWriter.Place place : places) {
      PDOutlineItem item = new PDOutlineItem();
      item.setTitle(place.anchor().title());
      item.setDestination(place.destination());
      if (place.anchor().level() == 1) {
        outline.addLast(item);
      } else {
        outline.getLastChild().addLast(item);
      }
    }
    outline.openNode();
    return outline;
  }

  private PDMetadata metadata() throws IOException {
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(xmp().getBytes(StandardCharsets.UTF_8));
    return metadata;
  }

  /** The standards that the file keeps, in the terms of XMP (ISO 16684-1). */
  private String xmp() {
    return """
        <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
         xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">TITLE</rdf:li></rdf:Alt></dc:title>
        <pdfaid:part>2</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance>
        <pdfuaid:part>1</pdfuaid:part>
        </rdf:Description>
        <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
         xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
        <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
        <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
        <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
        <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
        <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
        <pdfaProperty:name>part</pdfaProperty:name>
        <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
        <pdfaProperty:category>internal</pdfaProperty:category>
        <pdfaProperty:description>Part of ISO 14289</pdfaProperty:description>
        </rdf:li></rdf:Seq></pdfaSchema:property>
        </rdf:li></rdf:Bag></pdfaExtension:schemas>
        </rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="w"?>
        """
        .replace("TITLE", fourpin.sheets.paint.SvgWriter.escaped(title()));
  }

  /** sRGB, with the profile that the Java platform carries. */
  private PDOutputIntent colours() throws IOException {
    byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
    intent.setInfo(SRGB);
    intent.setOutputCondition(SRGB);
    intent.setOutputConditionIdentifier(SRGB);
    intent.setRegistryName("");
    return intent;
  }
}
