package rigbrief.report.page;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.w3c.dom.Document;
import rigbrief.proposal.FrontPoint;

/**
 * The front as a drawing: money to the right, wishes met upwards, each step a point.
 *
 * <p>The library draws lines and points; letters are set by the page, so that no font of the
 * machine enters and the same front gives the same bytes.
 */
final class FrontChart {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 260;
    private static final int LEFT = 52;
    private static final int RIGHT = 30;
    private static final int TOP = 26;
    private static final int BOTTOM = 44;

    private static final Color LINE = new Color(0x8f, 0x34, 0x14);
    private static final Color GRID = new Color(0xcf, 0xca, 0xbb);
    private static final Color AXIS = new Color(0x1b, 0x23, 0x2e);
    private static final Color NONE = new Color(0, 0, 0, 0);

    private static final double POINT_RADIUS = 3.5;
    private static final double MOST_TICKS = 6;

    private final List<FrontPoint> points;
    private final Currency currency;
    private final Words words;
    private final NumberAxis money = new NumberAxis();
    private final NumberAxis wishes = new NumberAxis();
    private final Rectangle2D area =
            new Rectangle2D.Double(LEFT, TOP, WIDTH - LEFT - RIGHT, HEIGHT - TOP - BOTTOM);

    /**
     * A chart.
     *
     * @param points at least two, cheapest first
     */
    FrontChart(List<FrontPoint> points, Currency currency, Words words) {
        this(points, currency, words, 0, 100);
    }

    private FrontChart(
            List<FrontPoint> points, Currency currency, Words words, double least, double most) {
        this.points = points;
        this.currency = currency;
        this.words = words;
        range(money, x(points.get(0)), x(points.get(points.size() - 1)));
        range(wishes, least, most);
    }

    /** A chart of what the points reach alone, for whoever compares them closely. */
    static FrontChart close(List<FrontPoint> points, Currency currency, Words words) {
        double least = points.stream().mapToDouble(FrontChart::y).min().orElse(0);
        double most = points.stream().mapToDouble(FrontChart::y).max().orElse(100);
        return new FrontChart(points, currency, words, least, Math.max(most, least + 1));
    }

    private static double x(FrontPoint point) {
        return point.totalMinor();
    }

    private static double y(FrontPoint point) {
        return point.utility() * 100;
    }

    private static void range(NumberAxis axis, double least, double most) {
        double unit = tick(Math.max(1, most - least) / MOST_TICKS);
        axis.setRange(Math.floor(least / unit) * unit, Math.ceil(most / unit) * unit);
        axis.setTickUnit(new NumberTickUnit(unit), false, false);
        axis.setTickLabelsVisible(false);
        axis.setTickMarksVisible(false);
        axis.setAxisLinePaint(AXIS);
        axis.setLowerMargin(0);
        axis.setUpperMargin(0);
    }

    /** The least of 1, 2, 5 times a power of ten that is not less. */
    private static double tick(double atLeast) {
        double power = Math.pow(10, Math.floor(Math.log10(atLeast)));
        for (double step : new double[] {1, 2, 5}) {
            if (step * power >= atLeast) {
                return step * power;
            }
        }
        return 10 * power;
    }

    /** Where the points stand, x and y one after the other, in the drawing's own units. */
    List<String> places() {
        List<String> places = new ArrayList<>();
        for (FrontPoint point : points) {
            places.add(Long.toString(Math.round(atX(x(point)))));
            places.add(Long.toString(Math.round(atY(y(point)))));
        }
        return places;
    }

    private double atX(double value) {
        return money.valueToJava2D(value, area, RectangleEdge.BOTTOM);
    }

    private double atY(double value) {
        return wishes.valueToJava2D(value, area, RectangleEdge.LEFT);
    }

    /** The lines and points, as an SVG element of the size of the drawing. */
    String drawing() {
        XYSeries series = new XYSeries("", false);
        points.forEach(point -> series.add(x(point), y(point)));
        XYStepRenderer renderer = new XYStepRenderer();
        renderer.setSeriesPaint(0, LINE);
        renderer.setSeriesStroke(0, new BasicStroke(2));
        XYSeriesCollection steps = new XYSeriesCollection(series);
        XYPlot plot = new XYPlot(steps, money, wishes, renderer);
        plot.setDataset(1, steps);
        plot.setRenderer(1, points());
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setBackgroundPaint(NONE);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(GRID);
        plot.setRangeGridlineStroke(new BasicStroke(1));
        JFreeChart chart = new JFreeChart(null, null, plot, false);
        chart.setBackgroundPaint(NONE);
        chart.setPadding(new RectangleInsets(TOP, LEFT, BOTTOM, RIGHT));
        return svg(chart);
    }

    private static XYLineAndShapeRenderer points() {
        XYLineAndShapeRenderer points = new XYLineAndShapeRenderer(false, true);
        points.setSeriesPaint(0, LINE);
        points.setSeriesShape(
                0,
                new Ellipse2D.Double(
                        -POINT_RADIUS, -POINT_RADIUS, 2 * POINT_RADIUS, 2 * POINT_RADIUS));
        return points;
    }

    private static String svg(JFreeChart chart) {
        Document document =
                GenericDOMImplementation.getDOMImplementation()
                        .createDocument("http://www.w3.org/2000/svg", "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(1);
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        graphics.setSVGCanvasSize(new java.awt.Dimension(WIDTH, HEIGHT));
        chart.draw(graphics, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        StringWriter out = new StringWriter();
        try {
            graphics.stream(graphics.getRoot(), out, false, true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String drawn = out.toString();
        return drawn.substring(drawn.indexOf("<svg"));
    }

    /** Labels of the money axis: place and text. */
    List<List<String>> moneyLabels() {
        List<List<String>> labels = new ArrayList<>();
        double unit = money.getTickUnit().getSize();
        for (double at = money.getLowerBound(); at <= money.getUpperBound(); at += unit) {
            labels.add(
                    List.of(
                            Long.toString(Math.round(atX(at))),
                            words.number(0, Math.round(at) / Math.pow(10, digits()))));
        }
        return labels;
    }

    private int digits() {
        return Math.max(0, currency.getDefaultFractionDigits());
    }

    /** Labels of the other axis: place and text. */
    List<List<String>> wishLabels() {
        List<List<String>> labels = new ArrayList<>();
        double unit = wishes.getTickUnit().getSize();
        for (double at = wishes.getLowerBound(); at <= wishes.getUpperBound(); at += unit) {
            labels.add(
                    List.of(
                            Long.toString(Math.round(atY(at))),
                            words.number(unit < 1 ? 1 : 0, at)));
        }
        return labels;
    }

    /** The whole in words. */
    String words() {
        FrontPoint first = points.get(0);
        FrontPoint last = points.get(points.size() - 1);
        return words.text(
                "slider.chart.words",
                points.size(),
                words.money(first.totalMinor(), currency),
                words.number(0, y(first)),
                words.money(last.totalMinor(), currency),
                words.number(0, y(last)));
    }
}
