package rigbrief.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Text;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.FrontStep;

/**
 * The front as an SVG drawing: money to the right, utility upwards, the best utility to be had for
 * each amount as steps, every build a dot, the knee a ring. It says in words what it shows.
 */
final class BudgetChart {
    private static final int WIDTH = 720;
    private static final int HEIGHT = 380;
    private static final double DOT = 2.5;
    private static final double RING = 7;
    private static final Color INK = new Color(0x22, 0x2b, 0x33);
    private static final Color LINE = new Color(0x1d, 0x5f, 0x74);
    private static final Color GRID = new Color(0xd5, 0xd9, 0xd6);
    private static final Color NONE = new Color(0, 0, 0, 0);
    private static final Font LETTERS = new Font(Font.SANS_SERIF, Font.PLAIN, 12);

    private BudgetChart() {}

    /** The drawing of a front with at least two points, as an {@code svg} element. */
    static String svg(Budget budget) {
        System.setProperty("java.awt.headless", "true");
        Document document =
                GenericDOMImplementation.getDOMImplementation()
                        .createDocument("http://www.w3.org/2000/svg", "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(2);
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        graphics.setSVGCanvasSize(new Dimension(WIDTH, HEIGHT));
        chart(budget).draw(graphics, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        Element root = graphics.getRoot();
        name(root, budget);
        StringWriter out = new StringWriter();
        try {
            graphics.stream(root, out, false, true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String drawn = out.toString();
        return drawn.substring(drawn.indexOf("<svg"));
    }

    private static void name(Element root, Budget budget) {
        root.setAttributeNS(null, "role", "img");
        root.setAttributeNS(null, "aria-labelledby", "front-title front-words");
        root.setAttributeNS(null, "viewBox", "0 0 %d %d".formatted(WIDTH, HEIGHT));
        root.insertBefore(
                element(root, "desc", "front-words", words(budget)), root.getFirstChild());
        root.insertBefore(
                element(root, "title", "front-title", "The front of money and utility"),
                root.getFirstChild());
    }

    private static Element element(Element root, String name, String id, String words) {
        Element element = root.getOwnerDocument().createElementNS(root.getNamespaceURI(), name);
        element.setAttributeNS(null, "id", id);
        Text text = root.getOwnerDocument().createTextNode(words);
        element.appendChild(text);
        return element;
    }

    /** The drawing in words. */
    static String words(Budget budget) {
        BudgetWords amounts = new BudgetWords(budget.brief());
        FrontStep first = budget.front().get(0);
        FrontStep last = budget.front().get(budget.front().size() - 1);
        String knee =
                budget.front().stream()
                        .filter(FrontStep::knee)
                        .findFirst()
                        .map(
                                step ->
                                        " The knee is at %s with utility %s."
                                                .formatted(
                                                        amounts.money(step.totalMinor()),
                                                        Rounded.print(2, step.utility(), "")))
                        .orElse("");
        return "%d builds from %s with utility %s to %s with utility %s.%s"
                .formatted(
                        budget.front().size(),
                        amounts.money(first.totalMinor()),
                        Rounded.print(2, first.utility(), ""),
                        amounts.money(last.totalMinor()),
                        Rounded.print(2, last.utility(), ""),
                        knee);
    }

    private static JFreeChart chart(Budget budget) {
        double unit =
                Math.pow(10, Math.max(0, budget.brief().currency().getDefaultFractionDigits()));
        XYSeries steps = new XYSeries("front", false);
        XYSeries knee = new XYSeries("knee", false);
        for (FrontStep step : budget.front()) {
            steps.add(step.totalMinor() / unit, step.utility());
            if (step.knee()) {
                knee.add(step.totalMinor() / unit, step.utility());
            }
        }
        NumberAxis money =
                axis("total, all in, in " + budget.brief().currency().getCurrencyCode(), "0");
        NumberAxis utility = axis("utility, 0 to 1", "0.00");
        XYStepRenderer line = new XYStepRenderer();
        line.setSeriesPaint(0, LINE);
        line.setSeriesStroke(0, new BasicStroke(1.5f));
        XYPlot plot = new XYPlot(new XYSeriesCollection(steps), money, utility, line);
        plot.setDataset(1, new XYSeriesCollection(steps));
        plot.setRenderer(1, dots(DOT, true));
        plot.setDataset(2, new XYSeriesCollection(knee));
        plot.setRenderer(2, dots(RING, false));
        plot.setBackgroundPaint(NONE);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinePaint(GRID);
        plot.setRangeGridlinePaint(GRID);
        JFreeChart chart = new JFreeChart(null, LETTERS, plot, false);
        chart.setBackgroundPaint(NONE);
        return chart;
    }

    private static NumberAxis axis(String label, String figures) {
        NumberAxis axis = new NumberAxis(label);
        axis.setAutoRangeIncludesZero(false);
        axis.setLabelFont(LETTERS);
        axis.setTickLabelFont(LETTERS);
        axis.setLabelPaint(INK);
        axis.setTickLabelPaint(INK);
        axis.setNumberFormatOverride(
                new DecimalFormat(figures, DecimalFormatSymbols.getInstance(Locale.ROOT)));
        return axis;
    }

    private static XYLineAndShapeRenderer dots(double radius, boolean filled) {
        XYLineAndShapeRenderer dots = new XYLineAndShapeRenderer(false, true);
        dots.setSeriesPaint(0, filled ? LINE : INK);
        dots.setSeriesShapesFilled(0, filled);
        dots.setSeriesShape(0, new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius));
        dots.setSeriesOutlineStroke(0, new BasicStroke(1.5f));
        return dots;
    }

    /** What the marks mean: for the caption. */
    static List<String> legend() {
        return List.of(
                "Steps: the best utility to be had for so much money.",
                "Dots: the builds.",
                "Ring: the knee.");
    }
}
