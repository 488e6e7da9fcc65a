package rigbrief.world;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import rigbrief.part.Kind;

/**
 * Writes catalogues of any size whose statistics follow the sample's. The same sample, seed, size
 * and kept parts give the same bytes.
 */
public final class CatalogueGenerator {
    /** Parts of the sample that the scenarios call by their ids. */
    public static final List<String> NAMED_BY_SCENARIOS =
            List.of(
                    "eskerlund-skap",
                    "pennyroyal-hearthside-7-home",
                    "pennyroyal-hearthside-7-office",
                    "pennyroyal-hearthside-7-workshop");

    /** The most parts that were tried. */
    public static final int MOST_PARTS = 200_000;

    private static final String HEAD = "catalog.yaml";
    private static final String OFFERS = "offers.csv";
    private static final String WORKLOADS = "workloads.yaml";

    private final Path sample;
    private final Map<Kind, Sheet> sheets = new EnumMap<>(Kind.class);
    private final Sheet offers;

    /** A generator after a catalogue folder. */
    public CatalogueGenerator(Path sample) throws IOException {
        this.sample = sample;
        for (Kind kind : Kind.values()) {
            sheets.put(kind, Sheet.read(sample.resolve(kind.fileName())));
        }
        this.offers = Sheet.read(sample.resolve(OFFERS));
    }

    /**
     * Writes the files of a catalogue.
     *
     * @param folder where to; made if it is not there
     * @param parts number of parts of all kinds, enough for one of each kind beside what is kept,
     *     at most {@value #MOST_PARTS}
     * @param seed seed of every random choice
     * @param kept ids of sample parts that come along unchanged, counted among the parts
     */
    public void write(Path folder, int parts, long seed, List<String> kept) throws IOException {
        if (parts > MOST_PARTS) {
            throw new IllegalArgumentException(parts + " parts, at most " + MOST_PARTS);
        }
        Map<Kind, Integer> counts = counts(parts, kept);
        Files.createDirectories(folder);
        Files.copy(sample.resolve(WORKLOADS), fresh(folder.resolve(WORKLOADS)));
        String head = Files.readString(sample.resolve(HEAD));
        String name = "name: Generated, %d parts, seed %d%n".formatted(parts, seed).strip();
        Files.writeString(folder.resolve(HEAD), head.replaceFirst("name: .*", name));
        Names names = new Names();
        sheets.values().forEach(sheet -> sheet.rows().forEach(row -> names.take(row[0])));
        // Streams of their own, so that one kind's number of draws moves no other kind.
        OfferMaker offerMaker = new OfferMaker(offers, new Random(seed * 31 + 30));
        try (Writer offersTo = Files.newBufferedWriter(folder.resolve(OFFERS))) {
            offerMaker.writeHeader(offersTo);
            for (Kind kind : Kind.values()) {
                Random random = new Random(seed * 31 + kind.ordinal());
                Sheet sheet = sheets.get(kind);
                PartMaker maker = new PartMaker(kind, sheet, offerMaker.prices(), names, random);
                try (Writer to = Files.newBufferedWriter(folder.resolve(kind.fileName()))) {
                    Sheet.write(to, sheet.header().toArray(String[]::new));
                    int written = 0;
                    for (String[] row : sheet.rows()) {
                        if (kept.contains(row[0])) {
                            Sheet.write(to, row);
                            offerMaker.writeKept(offersTo, row[0]);
                            written++;
                        }
                    }
                    for (; written < counts.get(kind); written++) {
                        PartMaker.Made made = maker.next();
                        Sheet.write(to, made.row());
                        offerMaker.write(offersTo, made);
                    }
                }
            }
        }
    }

    private static Path fresh(Path file) throws IOException {
        Files.deleteIfExists(file);
        return file;
    }

    /**
     * Parts per kind in the sample's proportion, at least one each and at least those that are
     * kept: whole shares first, then one more to those that lost most by rounding (largest
     * remainder).
     */
    private Map<Kind, Integer> counts(int parts, List<String> kept) {
        int all = sheets.values().stream().mapToInt(sheet -> sheet.rows().size()).sum();
        if (parts < Kind.values().length + kept.size()) {
            throw new IllegalArgumentException("one part of each kind beside what is kept");
        }
        Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
        Map<Kind, Double> lost = new EnumMap<>(Kind.class);
        int given = 0;
        for (Kind kind : Kind.values()) {
            List<String[]> rows = sheets.get(kind).rows();
            double share = (double) parts * rows.size() / all;
            int least = (int) rows.stream().filter(row -> kept.contains(row[0])).count();
            int count = Math.max(Math.max(1, least), (int) share);
            counts.put(kind, count);
            lost.put(kind, share - count);
            given += count;
        }
        List<Kind> order = new ArrayList<>(List.of(Kind.values()));
        order.sort(Comparator.comparing(lost::get).reversed());
        for (int i = 0; given < parts; i = (i + 1) % order.size()) {
            counts.merge(order.get(i), 1, Integer::sum);
            given++;
        }
        // The least that every kind gets may have been too much.
        while (given > parts) {
            Kind most = order.stream().max(Comparator.comparing(counts::get)).orElseThrow();
            counts.merge(most, -1, Integer::sum);
            given--;
        }
        return counts;
    }

    /**
     * Writes a folder from the command line.
     *
     * @param args folder of the sample, folder to write, number of parts, seed, and ids of sample
     *     parts that come along, where not those that the scenarios name
     */
    public static void main(String... args) throws IOException {
        if (args.length < 4) {
            System.err.println("usage: SAMPLE FOLDER PARTS SEED [ID...]");
            System.exit(2);
        }
        List<String> kept =
                args.length > 4 ? List.of(args).subList(4, args.length) : NAMED_BY_SCENARIOS;
        new CatalogueGenerator(Path.of(args[0]))
                .write(Path.of(args[1]), Integer.parseInt(args[2]), Long.parseLong(args[3]), kept);
    }
}
