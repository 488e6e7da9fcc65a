package rigbrief.world;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import rigbrief.part.Kind;

/**
 * Makes new parts of one kind after the sample's: one row as a whole, figures part of the way
 * towards a like row, and all of them moved together by how big and how good the part is.
 */
final class PartMaker {
    /** The most that a part takes of another's figures. */
    private static final double MOST_LENT = 0.5;

    private static final double PRICE_BY_SIZE = 0.02;
    private static final double PRICE_BY_QUALITY = 0.05;
    private static final double PRICE_OWN = 0.05;

    private final Sheet sheet;
    private final Likeness likeness;
    private final Names names;
    private final Random random;
    private final Map<String, Double> priceById;
    private final Map<List<String>, List<String[]>> like = new HashMap<>();
    private final Map<String, Bounds> bounds = new LinkedHashMap<>();
    private final List<String[]> round = new ArrayList<>();

    /** What the sample's column spans, and to how many decimals it is written. */
    private record Bounds(double least, double most, int decimals) {}

    /**
     * A new part.
     *
     * @param row its cells
     * @param template id of the row it was made after
     * @param priceFactor its price over that of the template
     */
    record Made(String[] row, String template, double priceFactor) {
        String id() {
            return row[0];
        }
    }

    /**
     * A maker.
     *
     * @param priceById what the sample's parts cost; none for parts that nobody offers
     */
    PartMaker(Kind kind, Sheet sheet, Map<String, Double> priceById, Names names, Random random) {
        this.sheet = sheet;
        this.likeness = Likeness.of(kind);
        this.names = names;
        this.random = random;
        this.priceById = priceById;
        for (String[] row : sheet.rows()) {
            like.computeIfAbsent(key(row), any -> new ArrayList<>()).add(row);
        }
        for (Figure figure : likeness.figures()) {
            bounds.put(figure.column(), bounds(sheet.column(figure.column())));
        }
    }

    private List<String> key(String[] row) {
        return likeness.alike().stream().map(name -> row[sheet.column(name)]).toList();
    }

    private Bounds bounds(int column) {
        double least = Double.MAX_VALUE;
        double most = 0;
        int decimals = 0;
        for (String[] row : sheet.rows()) {
            if (!row[column].isEmpty()) {
                BigDecimal value = new BigDecimal(row[column]);
                least = Math.min(least, value.doubleValue());
                most = Math.max(most, value.doubleValue());
                decimals = Math.max(decimals, value.scale());
            }
        }
        return new Bounds(least, most, decimals);
    }

    /** The next part. Rows are drawn in rounds, so that each is used as often as the others. */
    Made next() {
        if (round.isEmpty()) {
            round.addAll(sheet.rows());
            Collections.shuffle(round, random);
        }
        String[] template = round.remove(round.size() - 1);
        List<String[]> others = like.get(key(template));
        String[] lender = others.get(random.nextInt(others.size()));
        double lent = random.nextDouble() * MOST_LENT;
        double size = random.nextGaussian();
        double quality = random.nextGaussian();
        String[] row = template.clone();
        for (Figure figure : likeness.figures()) {
            int column = sheet.column(figure.column());
            double shift =
                    figure.size() * size
                            + figure.quality() * quality
                            + figure.own() * random.nextGaussian();
            row[column] =
                    moved(
                            template[column],
                            lender[column],
                            lent,
                            shift,
                            bounds.get(figure.column()));
        }
        name(row);
        double shift =
                PRICE_BY_SIZE * size
                        + PRICE_BY_QUALITY * quality
                        + PRICE_OWN * random.nextGaussian();
        double from = priceById.getOrDefault(template[0], 1.0);
        double to = priceById.getOrDefault(lender[0], from);
        return new Made(row, template[0], StrictMath.exp(between(from, to, lent) + shift) / from);
    }

    /** Logarithm of the figure that lies a share of the way from one to the other. */
    private static double between(double from, double to, double share) {
        return (1 - share) * StrictMath.log(from) + share * StrictMath.log(to);
    }

    /** An empty cell stays empty and a zero stays zero: both say what sort of part it is. */
    private static String moved(
            String cell, String lender, double lent, double shift, Bounds bounds) {
        double from = cell.isEmpty() ? 0 : Double.parseDouble(cell);
        if (from <= 0) {
            return cell;
        }
        double lenders = lender.isEmpty() ? 0 : Double.parseDouble(lender);
        double to = lenders > 0 ? lenders : from;
        double value = StrictMath.exp(between(from, to, lent) + shift);
        double inside = Math.max(bounds.least(), Math.min(bounds.most(), value));
        BigDecimal rounded =
                BigDecimal.valueOf(inside).setScale(bounds.decimals(), RoundingMode.HALF_UP);
        return rounded.stripTrailingZeros().toPlainString();
    }

    private void name(String[] row) {
        int maker = sheet.column("maker");
        int model = sheet.column("model");
        int number = sheet.column("maker_number");
        int gtin = sheet.column("gtin");
        Names.Name name = names.after(row[maker], row[model], random);
        row[sheet.column("id")] = name.id();
        row[model] = name.model();
        if (!row[number].isEmpty()) {
            row[number] = Names.makerNumber(row[maker], name.model(), random);
        }
        if (!row[gtin].isEmpty()) {
            row[gtin] = names.gtin();
        }
    }
}
