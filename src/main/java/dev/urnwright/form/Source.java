package dev.urnwright.form;

import dev.urnwright.form.Archive.RefusedException;
import dev.urnwright.problem.Location;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** Reads the sheets of a workbook in a stream. */
final class Source {
  private Source() {}

  /**
   * The sheets in their order.
   *
   * @throws RefusedException if the file isn't a workbook that is read
   */
  static List<Grid> grids(Path file) throws RefusedException {
    byte[] bytes = Archive.bytes(file);
    try (OPCPackage parts = OPCPackage.open(new ByteArrayInputStream(bytes))) {
      return grids(file.toString(), parts);
    } catch (IOException
        | OpenXML4JException
        | SAXException
        | ParserConfigurationException
        | RuntimeException damaged) {
      // POI tells of damage by exceptions of many kinds.
      throw new RefusedException("this workbook is damaged", Archive.EXPECTED);
    }
  }

  private static List<Grid> grids(String file, OPCPackage opened)
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    XSSFReader reader = new XSSFReader(opened);
    SheetXml.Parts parts =
        new SheetXml.Parts(
            new ReadOnlySharedStringsTable(opened, false),
            reader.getStylesTable(),
            countsFrom1904(reader));
    List<Grid> grids = new ArrayList<>();
    XSSFReader.SheetIterator sheets = (XSSFReader.SheetIterator) reader.getSheetsData();
    while (sheets.hasNext()) {
      try (InputStream sheet = sheets.next()) {
        SheetXml cells = new SheetXml(parts);
        try {
          parse(sheet, cells);
        } catch (SheetXml.EnoughException enough) {
          // The grid says that it is too long.
        }
        grids.add(cells.grid(file, new Location.Sheet(grids.size() + 1, sheets.getSheetName())));
      }
    }
    return grids;
  }

  private static boolean countsFrom1904(XSSFReader reader)
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    boolean[] from1904 = new boolean[1];
    try (InputStream workbook = reader.getWorkbookData()) {
      parse(
          workbook,
          new DefaultHandler() {
            @Override
            public void startElement(String uri, String local, String name, Attributes attributes) {
              String given = attributes.getValue("date1904");
              if (name.endsWith("workbookPr") && given != null) {
                from1904[0] = given.equals("1") || given.equals("true");
              }
            }
          });
    }
    return from1904[0];
  }

  private static void parse(InputStream xml, DefaultHandler handler)
      throws IOException, SAXException, ParserConfigurationException {
    XMLReader reader = XMLHelper.newXMLReader();
    reader.setContentHandler(handler);
    reader.parse(new InputSource(xml));
  }
}
