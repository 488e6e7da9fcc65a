package rigbrief.world;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Makes offers after the sample's: the same suppliers at prices moved together and about as many in
 * stock, since what is asked for more is stocked more; lead time and date as that supplier has them
 * for some other part, and prices that end as his do.
 */
final class OfferMaker {
    /** Standard deviation of the logarithm of what is in stock. */
    private static final double STOCK_SPREAD = 0.25;

    private static final BigDecimal LEAST = new BigDecimal("1.00");

    /** Below this an ending of another price would move the price by too much. */
    private static final BigDecimal ENDINGS_FROM = new BigDecimal("20");

    private final Sheet sheet;
    private final Random random;
    private final int part;
    private final int supplier;
    private final int price;
    private final int stock;
    private final int lead;
    private final int date;
    private final Map<String, List<String[]>> byPart = new LinkedHashMap<>();
    private final Map<String, List<String[]>> bySupplier = new HashMap<>();

    OfferMaker(Sheet sheet, Random random) {
        this.sheet = sheet;
        this.random = random;
        this.part = sheet.column("part");
        this.supplier = sheet.column("supplier");
        this.price = sheet.column("price");
        this.stock = sheet.column("stock");
        this.lead = sheet.column("lead_days");
        this.date = sheet.column("as_of");
        for (String[] row : sheet.rows()) {
            byPart.computeIfAbsent(row[part], any -> new ArrayList<>()).add(row);
            bySupplier.computeIfAbsent(row[supplier], any -> new ArrayList<>()).add(row);
        }
    }

    /** The mean price of each part on offer, in units of the currency. */
    Map<String, Double> prices() {
        Map<String, Double> prices = new HashMap<>();
        byPart.forEach(
                (id, rows) ->
                        prices.put(
                                id,
                                rows.stream()
                                        .mapToDouble(row -> Double.parseDouble(row[price]))
                                        .average()
                                        .orElseThrow()));
        return prices;
    }

    /** Writes the header. */
    void writeHeader(Writer to) throws IOException {
        Sheet.write(to, sheet.header().toArray(String[]::new));
    }

    /** Writes the offers of a sample part as they stand. */
    void writeKept(Writer to, String id) throws IOException {
        for (String[] row : byPart.getOrDefault(id, List.of())) {
            Sheet.write(to, row);
        }
    }

    /** Writes the offers of a new part; none when nobody offers its template. */
    void write(Writer to, PartMaker.Made made) throws IOException {
        for (String[] template : byPart.getOrDefault(made.template(), List.of())) {
            List<String[]> others = bySupplier.get(template[supplier]);
            String[] other = others.get(random.nextInt(others.size()));
            String[] row = template.clone();
            row[part] = made.id();
            row[price] = priced(template[price], made.priceFactor(), other[price]);
            row[stock] = stocked(template[stock]);
            row[lead] = other[lead];
            row[date] = other[date];
            Sheet.write(to, row);
        }
    }

    private String stocked(String template) {
        double factor = StrictMath.exp(STOCK_SPREAD * random.nextGaussian());
        int pieces = Integer.parseInt(template);
        return String.valueOf(pieces == 0 ? 0 : Math.max(1, Math.round(pieces * factor)));
    }

    private static String priced(String template, double factor, String other) {
        BigDecimal moved =
                new BigDecimal(template)
                        .multiply(BigDecimal.valueOf(factor))
                        .setScale(2, RoundingMode.HALF_UP);
        if (moved.compareTo(ENDINGS_FROM) >= 0) {
            BigDecimal ending = new BigDecimal(other).remainder(BigDecimal.ONE);
            moved = moved.setScale(0, RoundingMode.FLOOR).add(ending).setScale(2);
        }
        return moved.max(LEAST).toPlainString();
    }
}
