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
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws curves with logarithmic axes as an SVG file. */
public final class Plot {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 560;

    /** Told apart by people who see few colours: Okabe and Ito, Color Universal Design. */
    private static final int[] COLOURS = {0x0072b2, 0xd55e00, 0x009e73, 0xcc79a7, 0x000000};

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
        XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, true);
        for (int i = 0; i < curves.size(); i++) {
            lines.setSeriesPaint(i, new Color(COLOURS[i % COLOURS.length]));
        }
        XYPlot plot = new XYPlot(data, axis(x), axis(y), lines);
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
        axis.setTickUnit(new NumberTickUnit(Math.log10(2)));
        NumberFormat plain = NumberFormat.getInstance(Locale.ROOT);
        plain.setMaximumFractionDigits(4);
        plain.setGroupingUsed(false);
        axis.setNumberFormatOverride(plain);
        return axis;
    }
}
