package rigbrief.world;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rigbrief.part.Kind;

/**
 * Whether generated catalogues follow the sample.
 *
 * <p>Check: Kolmogorov-Smirnov and Spearman of Apache Commons Math 3.6.1 between the sample's rows
 * and 6,000 generated parts. The limits are well above what the spreads of the generator cause, and
 * well below what a column drawn by itself would show, which the last tests prove.
 */
class CatalogueStatisticsTest {
    private static final int PARTS = 6_000;
    private static final double FARTHEST = 0.12;
    private static final double CORRELATION_WITHIN = 0.12;

    /** How many of a kind the sample must have for its distribution to say anything. */
    private static final int ENOUGH = 25;

    private static final Map<Kind, Sheet> SAMPLE = new EnumMap<>(Kind.class);
    private static final Map<Kind, Sheet> MADE = new EnumMap<>(Kind.class);
    private static Map<String, Double> samplePrices;
    private static Map<String, Double> madePrices;
    private static Sheet sampleOffers;
    private static Sheet madeOffers;

    @BeforeAll
    static void generate(@TempDir Path folder) throws IOException {
        Path sample = Path.of("catalog-sample");
        new CatalogueGenerator(sample).write(folder, PARTS, 20, List.of());
        for (Kind kind : Kind.values()) {
            SAMPLE.put(kind, Sheet.read(sample.resolve(kind.fileName())));
            MADE.put(kind, Sheet.read(folder.resolve(kind.fileName())));
        }
        sampleOffers = Sheet.read(sample.resolve("offers.csv"));
        madeOffers = Sheet.read(folder.resolve("offers.csv"));
        samplePrices = new OfferMaker(sampleOffers, new Random(0)).prices();
        madePrices = new OfferMaker(madeOffers, new Random(0)).prices();
    }

    @Test
    void every_kind_has_its_share() {
        int all = SAMPLE.values().stream().mapToInt(sheet -> sheet.rows().size()).sum();

        for (Kind kind : Kind.values()) {
            double share = (double) SAMPLE.get(kind).rows().size() / all;
            assertThat((double) MADE.get(kind).rows().size())
                    .as(kind.word())
                    .isCloseTo(share * PARTS, within(1.0));
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void prices_of_a_kind_are_spread_like_the_samples(Kind kind) {
        double[] sample = prices(SAMPLE.get(kind), samplePrices);
        double[] made = prices(MADE.get(kind), madePrices);

        if (sample.length >= ENOUGH) {
            assertThat(distance(sample, made)).isLessThan(FARTHEST);
        }
        assertThat(likelihood(sample, made)).isGreaterThan(0.05);
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void figures_of_a_kind_are_spread_like_the_samples(Kind kind) {
        for (Figure figure : Likeness.of(kind).figures()) {
            double[] sample = column(SAMPLE.get(kind), figure.column());
            double[] made = column(MADE.get(kind), figure.column());

            assertThat(likelihood(sample, made))
                    .as("%s of %s", figure.column(), kind.word())
                    .isGreaterThan(0.05);
        }
    }

    /** Words, lists, steps of the trade, and cells that say nothing, are as frequent as there. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void everything_else_is_as_frequent_as_in_the_sample(Kind kind) {
        List<String> moved = new ArrayList<>(List.of("id", "model", "maker_number", "gtin"));
        Likeness.of(kind).figures().forEach(figure -> moved.add(figure.column()));
        for (String column : SAMPLE.get(kind).header()) {
            if (!moved.contains(column)) {
                Map<String, Double> sample = shares(SAMPLE.get(kind), column);
                Map<String, Double> made = shares(MADE.get(kind), column);

                assertThat(made.keySet()).as(column).isEqualTo(sample.keySet());
                sample.forEach(
                        (word, share) ->
                                assertThat(made.get(word))
                                        .as("%s %s", column, word)
                                        .isCloseTo(share, within(0.01)));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "PROCESSOR, rate_all, price",
        "PROCESSOR, rate_single, price",
        "PROCESSOR, rate_all, sustained_power_w",
        "BOARD, memory_max_gb, price",
        "BOARD, processor_power_w, price",
        "MEMORY, module_gb, price",
        "GRAPHICS, tflops, price",
        "GRAPHICS, tflops, board_power_w",
        "GRAPHICS, length_mm, board_power_w",
        "GRAPHICS, load_dba, board_power_w",
        "DRIVE, capacity_gb, price",
        "DRIVE, read_mbs, price",
        "SUPPLY, watts, price",
        "SUPPLY, dba_50, price",
        "COOLER, resistance_kw, price",
        "COOLER, height_mm, resistance_kw",
        "COOLER, height_mm, rated_heat_w",
        "CASE, graphics_length_mm, depth_mm",
        "CASE, mass_g, graphics_length_mm",
        "CASE, damping_db, impedance",
        "FAN, flow_m3h, max_dba",
        "DISPLAY, refresh_hz, price"
    })
    void figures_go_together_as_in_the_sample(Kind kind, String one, String other) {
        assertThat(correlation(MADE.get(kind), madePrices, one, other, null))
                .isCloseTo(
                        correlation(SAMPLE.get(kind), samplePrices, one, other, null),
                        within(CORRELATION_WITHIN));
    }

    @Test
    void offers_are_shared_among_suppliers_and_stocked_like_the_samples() {
        Map<String, Double> sample = shares(sampleOffers, "supplier");
        Map<String, Double> made = shares(madeOffers, "supplier");
        sample.forEach(
                (supplier, share) -> assertThat(made.get(supplier)).isCloseTo(share, within(0.02)));
        for (String column : List.of("stock", "lead_days")) {
            assertThat(likelihood(column(sampleOffers, column), column(madeOffers, column)))
                    .as(column)
                    .isGreaterThan(0.05);
        }
    }

    @Test
    void prices_that_do_not_follow_quality_would_be_noticed() {
        Sheet made = MADE.get(Kind.PROCESSOR);

        double loose = correlation(made, madePrices, "rate_all", "price", new Random(1));

        assertThat(correlation(made, madePrices, "rate_all", "price", null) - loose)
                .isGreaterThan(2 * CORRELATION_WITHIN);
    }

    @Test
    void prices_half_as_high_again_would_be_noticed() {
        double[] sample = prices(SAMPLE.get(Kind.DRIVE), samplePrices);
        double[] made = prices(MADE.get(Kind.DRIVE), madePrices);
        for (int i = 0; i < made.length; i++) {
            made[i] = 1.5 * made[i];
        }

        assertThat(distance(sample, made)).isGreaterThan(FARTHEST);
    }

    /** The greatest difference of the two distribution functions. */
    private static double distance(double[] sample, double[] made) {
        return new KolmogorovSmirnovTest().kolmogorovSmirnovStatistic(sample, made);
    }

    /**
     * How likely so great a distance is for two draws from one distribution; by the limit for many,
     * since the exact sum can't be had with ties.
     */
    private static double likelihood(double[] sample, double[] made) {
        return new KolmogorovSmirnovTest()
                .approximateP(distance(sample, made), sample.length, made.length);
    }

    private static double[] prices(Sheet sheet, Map<String, Double> prices) {
        return sheet.rows().stream()
                .filter(row -> prices.containsKey(row[0]))
                .mapToDouble(row -> prices.get(row[0]))
                .toArray();
    }

    private static double[] column(Sheet sheet, String name) {
        int column = sheet.column(name);
        return sheet.rows().stream()
                .filter(row -> !row[column].isEmpty())
                .mapToDouble(row -> Double.parseDouble(row[column]))
                .toArray();
    }

    private static Map<String, Double> shares(Sheet sheet, String name) {
        int column = sheet.column(name);
        Map<String, Double> shares = new LinkedHashMap<>();
        for (String[] row : sheet.rows()) {
            shares.merge(row[column], 1.0 / sheet.rows().size(), Double::sum);
        }
        return new HashMap<>(shares);
    }

    /** Spearman's rank correlation over the rows that state both; shuffled where asked. */
    private static double correlation(
            Sheet sheet, Map<String, Double> prices, String one, String other, Random shuffled) {
        List<Double> left = new ArrayList<>();
        List<Double> right = new ArrayList<>();
        for (String[] row : sheet.rows()) {
            double first = cell(sheet, prices, row, one);
            double second = cell(sheet, prices, row, other);
            if (first >= 0 && second >= 0) {
                left.add(first);
                right.add(second);
            }
        }
        if (shuffled != null) {
            Collections.shuffle(right, shuffled);
        }
        return new SpearmansCorrelation()
                .correlation(
                        left.stream().mapToDouble(Double::doubleValue).toArray(),
                        right.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** A figure or the price; -1 when the row does not state it. */
    private static double cell(Sheet sheet, Map<String, Double> prices, String[] row, String name) {
        if (name.equals("price")) {
            return prices.getOrDefault(row[0], -1.0);
        }
        String cell = row[sheet.column(name)];
        return cell.isEmpty() ? -1 : Double.parseDouble(cell);
    }
}
