package dev.urnwright.xlsx;

import dev.urnwright.xlsx.ChartSheet.Frame;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFLegendEntry;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTDLbls;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTValAx;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDLblPos;

/** A native scatter chart. Every series has line properties of its own, or it may not show. */
final class ControlChart {
  private static final byte[][] COFFEE_COLOURS = {
    rgb(0x8A, 0x3B, 0x12), rgb(0x1F, 0x5E, 0x8C), rgb(0x3D, 0x6B, 0x35), rgb(0x6B, 0x3F, 0x7D)
  };
  private static final MarkerStyle[] MARKERS = {
    MarkerStyle.CIRCLE, MarkerStyle.TRIANGLE, MarkerStyle.SQUARE, MarkerStyle.X
  };
  private static final byte[] RATIO_COLOUR = rgb(0xA8, 0xAE, 0xB2);
  private static final byte[] WINDOW_COLOUR = rgb(0x30, 0x38, 0x3C);

  private final XSSFSheet sheet;
  private final XSSFChart chart;
  private final XDDFScatterChartData data;

  ControlChart(XSSFSheet sheet, Frame frame, int rows) {
    this.sheet = sheet;
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    chart =
        drawing.createChart(
            drawing.createAnchor(
                0, 0, 0, 0, 0, Page.FIRST_ITEM - 1, 4, Page.FIRST_ITEM + rows - 2));
    chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
    XDDFValueAxis across = chart.createValueAxis(AxisPosition.BOTTOM);
    across.setTitle("Extraction");
    XDDFValueAxis up = chart.createValueAxis(AxisPosition.LEFT);
    up.setTitle("Strength");
    bounds(across, frame.leastExtraction(), frame.mostExtraction(), 2, "0%");
    double unit = frame.strongest() - frame.weakest() > 1.5 ? 0.2 : 0.1;
    bounds(up, frame.weakest(), frame.strongest(), unit, "0.0%");
    data = (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, across, up);
    data.setStyle(ScatterStyle.LINE_MARKER);
    data.setVaryColors(false);
    chart.displayBlanksAs(DisplayBlanks.GAP); // or shorter series would end in (0, 0)
  }

  private static void bounds(
      XDDFValueAxis axis, double leastPercent, double mostPercent, double unit, String format) {
    axis.setMinimum(leastPercent / 100);
    axis.setMaximum(mostPercent / 100);
    axis.setMajorUnit(unit / 100);
    axis.setNumberFormat(format);
    axis.setCrosses(AxisCrosses.MIN);
  }

  /** A brew ratio, from one end of the frame to the other. */
  void ratioLine(Grid lines, int item) {
    XDDFScatterChartData.Series series =
        series(
            cells(lines, "x1", item, "x2", item),
            cells(lines, "y1", item, "y2", item),
            lines,
            "name",
            item);
    look(series, RATIO_COLOUR, 0.75, false);
    series.setMarkerStyle(MarkerStyle.NONE);
    hideInLegend();
    XDDFScatterChartData.Series name =
        series(
            cells(lines, "x2", item, "x2", item),
            cells(lines, "y2", item, "y2", item),
            lines,
            "name",
            item);
    XDDFShapeProperties invisible = new XDDFShapeProperties();
    invisible.setLineProperties(new XDDFLineProperties(new XDDFNoFillProperties()));
    name.setShapeProperties(invisible);
    name.setMarkerStyle(MarkerStyle.NONE);
    label(name);
    hideInLegend();
  }

  /** Leaves the last series out of the legend. */
  private void hideInLegend() {
    XDDFLegendEntry entry = chart.getOrAddLegend().addEntry();
    entry.setIndex(data.getSeriesCount() - 1L);
    entry.setDelete(true);
  }

  /** The window: five corners. */
  void window(Grid lines, int first) {
    XDDFScatterChartData.Series series =
        series(
            cells(lines, "x1", first, "x1", first + 4),
            cells(lines, "y1", first, "y1", first + 4),
            lines,
            "name",
            first);
    look(series, WINDOW_COLOUR, 1.5, true);
    series.setMarkerStyle(MarkerStyle.NONE);
  }

  /** A coffee: straight down from its concentrate to the cups of its groups. */
  void coffee(Grid points, int coffee, int first, int count) {
    byte[] colour = COFFEE_COLOURS[coffee % COFFEE_COLOURS.length];
    XDDFScatterChartData.Series cups =
        series(
            cells(points, "extraction", first, "extraction", first + count - 1),
            cells(points, "strength", first, "strength", first + count - 1),
            points,
            "coffee",
            first);
    look(cups, colour, 1.25, false);
    mark(cups, MARKERS[coffee % MARKERS.length], colour);
    XDDFScatterChartData.Series concentrate =
        series(
            cells(points, "extraction", first, "extraction", first),
            cells(points, "strength", first, "strength", first),
            points,
            "name",
            first);
    look(concentrate, colour, 1.25, false);
    mark(concentrate, MarkerStyle.DIAMOND, colour);
  }

  private static void mark(XDDFScatterChartData.Series series, MarkerStyle style, byte[] colour) {
    series.setMarkerStyle(style);
    series
        .getCTScatterSer()
        .getMarker()
        .addNewSpPr()
        .addNewSolidFill()
        .addNewSrgbClr()
        .setVal(colour);
  }

  void draw() {
    chart.plot(data);
    // Else spreadsheets show the axes in the format of the cells behind the first series.
    for (CTValAx axis : chart.getCTChart().getPlotArea().getValAxArray()) {
      axis.getNumFmt().setSourceLinked(false);
    }
  }

  private XDDFScatterChartData.Series series(
      CellRangeAddress x, CellRangeAddress y, Grid titles, String key, int item) {
    XDDFScatterChartData.Series series =
        (XDDFScatterChartData.Series)
            data.addSeries(new CellFigures(sheet, x), new CellFigures(sheet, y));
    int row = titles.row(key, item);
    int column = titles.columnNumber(key, item);
    series.setTitle(
        sheet.getRow(row).getCell(column).getStringCellValue(),
        new CellReference(sheet.getSheetName(), row, column, true, true));
    series.setSmooth(false);
    return series;
  }

  private static void look(
      XDDFScatterChartData.Series series, byte[] colour, double points, boolean dashed) {
    XDDFLineProperties line =
        new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(colour)));
    line.setWidth(points);
    if (dashed) {
      line.setPresetDash(new XDDFPresetLineDash(PresetLineDash.DASH));
    }
    XDDFShapeProperties shape = new XDDFShapeProperties();
    shape.setLineProperties(line);
    series.setShapeProperties(shape);
  }

  /** Writes the series' name at its points. */
  private static void label(XDDFScatterChartData.Series series) {
    CTScatterSer ser = series.getCTScatterSer();
    CTDLbls labels = ser.addNewDLbls();
    labels.addNewDLblPos().setVal(STDLblPos.R);
    labels.addNewShowLegendKey().setVal(false);
    labels.addNewShowVal().setVal(false);
    labels.addNewShowCatName().setVal(false);
    labels.addNewShowSerName().setVal(true);
    labels.addNewShowPercent().setVal(false);
    labels.addNewShowBubbleSize().setVal(false);
  }

  private static CellRangeAddress cells(
      Grid grid, String fromKey, int fromItem, String toKey, int toItem) {
    return new CellRangeAddress(
        grid.row(fromKey, fromItem),
        grid.row(toKey, toItem),
        grid.columnNumber(fromKey, fromItem),
        grid.columnNumber(toKey, toItem));
  }

  private static byte[] rgb(int red, int green, int blue) {
    return new byte[] {(byte) red, (byte) green, (byte) blue};
  }
}
