package rigbrief.world;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.file.CatalogueReader;
import rigbrief.part.Kind;
import rigbrief.part.Part;

/**
 * The sample's parts beside siblings of each: for every column two that differ from each other in
 * that column alone and cost the same, and some that differ in a few columns and in price.
 *
 * <p>A sibling's cell is another row's, or a figure a little off. Cells that the reader refuses are
 * thrown away with their rows, so every sibling is a part that could be bought.
 */
public final class Siblings {
    private static final Set<String> SAME = Set.of("id", "maker", "model", "maker_number", "gtin");
    private static final String FROM = ".from.";
    private static final String WITH = ".with.";
    private static final String CROSS = ".cross.";
    private static final int CROSSES = 6;
    private static final int MOST_DISTORTED = 4;
    private static final int MOST_ROUNDS = 40;
    private static final double[] PRICE_FACTORS = {0.93, 1, 1, 1.06};

    private final Catalogue catalogue;
    private final Map<String, List<Part>> byBase = new HashMap<>();

    private Siblings(Catalogue catalogue) {
        this.catalogue = catalogue;
        for (Kind kind : Kind.values()) {
            for (Part part : catalogue.parts(kind)) {
                byBase.computeIfAbsent(baseId(part), any -> new ArrayList<>()).add(part);
            }
        }
    }

    /**
     * Makes the siblings of a sample.
     *
     * @param sample folder of the sample
     * @param folder where the catalogue is written
     * @param seed seed of every random choice
     */
    public static Siblings make(Path sample, Path folder, long seed) throws IOException, BadInput {
        Map<Kind, List<String[]>> rows = new EnumMap<>(Kind.class);
        Map<Kind, Sheet> sheets = new EnumMap<>(Kind.class);
        for (Kind kind : Kind.values()) {
            Sheet sheet = Sheet.read(sample.resolve(kind.fileName()));
            sheets.put(kind, sheet);
            rows.put(kind, rows(sheet, new Random(seed * 31 + kind.ordinal())));
        }
        for (String name : List.of("catalog.yaml", "workloads.yaml")) {
            Files.copy(sample.resolve(name), folder.resolve(name));
        }
        Sheet offers = Sheet.read(sample.resolve("offers.csv"));
        for (int round = 0; ; round++) {
            write(folder, sheets, rows, offers, seed);
            try {
                return new Siblings(CatalogueReader.read(folder));
            } catch (BadInput bad) {
                if (round == MOST_ROUNDS) {
                    throw bad;
                }
                drop(bad, rows);
            }
        }
    }

    private static List<String[]> rows(Sheet sheet, Random random) {
        List<String[]> all = new ArrayList<>();
        for (String[] base : sheet.rows()) {
            all.add(base);
            for (int column = 0; column < base.length; column++) {
                String[] from = distorted(sheet, base, random);
                String[] with = from.clone();
                if (change(sheet, with, column, random)) {
                    String name = sheet.header().get(column).replace('_', '-');
                    from[0] = base[0] + FROM + name;
                    with[0] = base[0] + WITH + name;
                    all.add(from);
                    all.add(with);
                }
            }
            for (int cross = 1; cross <= CROSSES; cross++) {
                String[] row = distorted(sheet, base, random);
                row[0] = base[0] + CROSS + cross;
                all.add(row);
            }
        }
        return all;
    }

    /** A row with none to a few cells changed. */
    private static String[] distorted(Sheet sheet, String[] base, Random random) {
        String[] row = base.clone();
        for (int left = random.nextInt(MOST_DISTORTED); left > 0; left--) {
            change(sheet, row, random.nextInt(base.length), random);
        }
        return row;
    }

    private static boolean change(Sheet sheet, String[] row, int column, Random random) {
        if (SAME.contains(sheet.header().get(column))) {
            return false;
        }
        String before = row[column];
        String other = sheet.rows().get(random.nextInt(sheet.rows().size()))[column];
        boolean figure = before.matches("[0-9]+([.][0-9]+)?") && random.nextBoolean();
        row[column] = figure ? nudged(before, random) : other;
        return !row[column].equals(before);
    }

    /** Up to a fifth more or less, to one decimal more than the cell has. */
    private static String nudged(String cell, Random random) {
        BigDecimal value = new BigDecimal(cell);
        BigDecimal factor = BigDecimal.valueOf(0.8 + 0.4 * random.nextDouble());
        return value.multiply(factor).setScale(value.scale(), RoundingMode.HALF_UP).toPlainString();
    }

    private static void write(
            Path folder,
            Map<Kind, Sheet> sheets,
            Map<Kind, List<String[]>> rows,
            Sheet offers,
            long seed)
            throws IOException {
        Random random = new Random(seed);
        Map<String, List<String[]>> byPart = new HashMap<>();
        for (String[] offer : offers.rows()) {
            byPart.computeIfAbsent(offer[0], any -> new ArrayList<>()).add(offer);
        }
        try (Writer offersTo = Files.newBufferedWriter(folder.resolve("offers.csv"))) {
            Sheet.write(offersTo, offers.header().toArray(String[]::new));
            for (Kind kind : Kind.values()) {
                try (Writer to = Files.newBufferedWriter(folder.resolve(kind.fileName()))) {
                    Sheet.write(to, sheets.get(kind).header().toArray(String[]::new));
                    for (String[] row : rows.get(kind)) {
                        Sheet.write(to, row);
                        writeOffers(offersTo, row[0], byPart, offers, random);
                    }
                }
            }
        }
    }

    private static void writeOffers(
            Writer to, String id, Map<String, List<String[]>> byPart, Sheet offers, Random random)
            throws IOException {
        int price = offers.column("price");
        double factor =
                id.contains(CROSS) ? PRICE_FACTORS[random.nextInt(PRICE_FACTORS.length)] : 1;
        for (String[] offer : byPart.getOrDefault(baseId(id), List.of())) {
            String[] own = offer.clone();
            own[0] = id;
            own[price] =
                    new BigDecimal(own[price])
                            .multiply(BigDecimal.valueOf(factor))
                            .setScale(2, RoundingMode.HALF_UP)
                            .toPlainString();
            Sheet.write(to, own);
        }
    }

    /** Takes the rows out that the reader refused; their offers go with them. */
    private static void drop(BadInput bad, Map<Kind, List<String[]>> rows) {
        Map<Kind, Set<Integer>> lines = new EnumMap<>(Kind.class);
        for (Fault fault : bad.faults()) {
            for (Kind kind : Kind.values()) {
                if (fault.file().endsWith("/" + kind.fileName())) {
                    // The header is line 1, the first row line 2.
                    lines.computeIfAbsent(kind, any -> new HashSet<>()).add(fault.line() - 2);
                }
            }
        }
        lines.forEach(
                (kind, refused) -> {
                    List<String[]> left = new ArrayList<>();
                    for (int i = 0; i < rows.get(kind).size(); i++) {
                        if (!refused.contains(i)) {
                            left.add(rows.get(kind).get(i));
                        }
                    }
                    rows.put(kind, left);
                });
    }

    /** The whole catalogue. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** The id of the sample's part that a part was made after. */
    public static String baseId(Part part) {
        return baseId(part.id());
    }

    private static String baseId(String id) {
        for (String mark : List.of(FROM, WITH, CROSS)) {
            int at = id.indexOf(mark);
            if (at >= 0) {
                return id.substring(0, at);
            }
        }
        return id;
    }

    /**
     * Two parts that differ in one column and in nothing else.
     *
     * @param column the column, with hyphens
     */
    public record Pair(String column, Part from, Part with) {}

    /** The pairs among the siblings of a sample part. */
    public List<Pair> pairs(String base) {
        List<Pair> pairs = new ArrayList<>();
        for (Part from : all(base)) {
            int at = from.id().indexOf(FROM);
            if (at >= 0) {
                String column = from.id().substring(at + FROM.length());
                catalogue
                        .part(base + WITH + column)
                        .ifPresent(with -> pairs.add(new Pair(column, from, with)));
            }
        }
        return pairs;
    }

    /** The siblings of a sample part that differ from it, and in price, at random. */
    public List<Part> crosses(String base) {
        return all(base).stream().filter(part -> part.id().contains(CROSS)).toList();
    }

    private List<Part> all(String base) {
        return byBase.getOrDefault(base, List.of());
    }
}
