package rigbrief.bench;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws curves with logarithmic axes as an SVG file. */
public final class Plot {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 560;

    private Plot() {}

    /**
     * Draws curves.
     *
     * @param curves by name, points of x and y, all above 0
     */
    public static void draw(
            Path file, String title, String x, String y, Map<String, List<double[]>> curves)
            throws IOException {
        System.setProperty("java.awt.headless", "true");
        XYSeriesCollection data = new XYSeriesCollection();
        curves.forEach(
                (name, points) -> {
                    XYSeries series = new XYSeries(name);
                    points.forEach(point -> series.add(point[0], point[1]));
                    data.addSeries(series);
                });
        XYPlot plot = new XYPlot(data, axis(x), axis(y), new XYLineAndShapeRenderer(true, true));
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(Color.LIGHT_GRAY);
        plot.setRangeGridlinePaint(Color.LIGHT_GRAY);
        JFreeChart chart = new JFreeChart(title, plot);
        chart.setBackgroundPaint(Color.WHITE);
        SVGGeneratorContext context =
                SVGGeneratorContext.createDefault(
                        GenericDOMImplementation.getDOMImplementation()
                                .createDocument("http://www.w3.org/2000/svg", "svg", null));
        context.setComment(null);
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        graphics.setSVGCanvasSize(new Dimension(WIDTH, HEIGHT));
        chart.draw(graphics, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        Files.createDirectories(file.getParent());
        try (Writer out = Files.newBufferedWriter(file)) {
            graphics.stream(out, true);
        }
    }

    private static LogAxis axis(String label) {
        LogAxis axis = new LogAxis(label);
        axis.setNumberFormatOverride(NumberFormat.getInstance(Locale.ROOT));
        return axis;
    }
}
