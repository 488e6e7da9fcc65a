package rigbrief.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.CsvSheet;
import rigbrief.pricelist.ImportPlan;
import rigbrief.pricelist.OfferChange;
import rigbrief.pricelist.PriceHistory;

/**
 * Carries out what a price list changes: all of it or nothing.
 *
 * <p>Two files change, and no system moves two at once, so their order makes it safe. First the
 * offers that are about to be superseded are added to {@code prices.csv}; as long as they are in
 * {@code offers.csv} too they count once, so that this alone changes nothing. Then {@code
 * offers.csv} is put in its place in one step: that is the moment of the change.
 */
public final class OfferStore implements AutoCloseable {
    private final Path folder;
    private final SafeWriter writer;
    private final Optional<FileHold> hold;

    private OfferStore(Path folder, SafeWriter writer, Optional<FileHold> hold) {
        this.folder = folder;
        this.writer = writer;
        this.hold = hold;
    }

    /** The offers of a catalogue folder, to look at or to change at once. */
    public static OfferStore of(Path folder) {
        return watched(folder, (path, step) -> {});
    }

    /**
     * The offers of a catalogue folder, while other runs that mean to change them wait.
     *
     * @throws IOException when nothing can be written in the folder
     */
    public static OfferStore held(Path folder) throws IOException {
        FileHold hold = FileHold.of(folder.resolve(OfferFile.NAME));
        return new OfferStore(folder, new SafeWriter((path, step) -> {}), Optional.of(hold));
    }

    /** The same, with its writes watched. */
    static OfferStore watched(Path folder, SafeWriter.Watch watch) {
        return new OfferStore(folder, new SafeWriter(watch), Optional.empty());
    }

    /**
     * What is in the files, so that nobody's change meanwhile is lost.
     *
     * @param offers bytes of {@code offers.csv}
     * @param prices bytes of {@code prices.csv}; none when there is no such file
     */
    public record Seen(byte[] offers, byte[] prices) {}

    /**
     * The files as they are now; to be called before the catalogue is read, which tells what is
     * wrong with one that can't be: such a one counts as empty here.
     */
    public Seen look() {
        return new Seen(
                bytes(folder.resolve(OfferFile.NAME)), bytes(folder.resolve(PriceFile.NAME)));
    }

    private static byte[] bytes(Path file) {
        Faults unheard = new Faults();
        return Files.exists(file) && !SourceText.refusesSpecial(file, unheard)
                ? SourceText.bytes(file, unheard).orElse(new byte[0])
                : new byte[0];
    }

    /**
     * Carries a plan out.
     *
     * @param seen the files as they were before the catalogue was read
     * @return how many offers were put on record
     * @throws FileRefused when somebody has changed the files meanwhile
     * @throws IOException when they can't be written; the offers are as they were
     */
    public int apply(ImportPlan plan, Catalogue catalogue, Seen seen) throws IOException, BadInput {
        List<Offer> recorded = PriceFile.read(folder, catalogue);
        List<Offer> added = new ArrayList<>(PriceHistory.toRecord(recorded, plan.changes()));
        plan.changes().forEach(change -> added.addAll(beside(change, catalogue, recorded)));
        byte[] offers = offers(plan, seen).getBytes(StandardCharsets.UTF_8);
        if (!added.isEmpty()) {
            Path prices = folder.resolve(PriceFile.NAME);
            byte[] text = PriceFile.added(seen.prices(), added);
            if (seen.prices().length == 0 && !Files.exists(prices)) {
                writer.create(prices, text);
            } else {
                writer.exchange(prices, seen.prices(), text);
            }
        }
        writer.exchange(folder.resolve(OfferFile.NAME), seen.offers(), offers);
        return added.size();
    }

    /** Lets others change them. */
    @Override
    public void close() throws IOException {
        if (hold.isPresent()) {
            hold.get().close();
        }
    }

    /**
     * Further offers of the supplier for a part, which the one that is changed takes the place of.
     */
    private static List<Offer> beside(
            OfferChange change, Catalogue catalogue, List<Offer> recorded) {
        return catalogue.offers(change.part().id()).stream()
                .filter(offer -> offer.supplier().equals(change.after().supplier()))
                .filter(offer -> !offer.equals(change.before().orElse(null)))
                .filter(offer -> !recorded.contains(offer))
                .toList();
    }

    /** The offers file after the changes, with everything else as it was. */
    private String offers(ImportPlan plan, Seen seen) throws BadInput {
        Faults faults = new Faults();
        String text = new String(seen.offers(), StandardCharsets.UTF_8);
        boolean marked = text.startsWith("\uFEFF");
        CsvSheet sheet =
                CsvSheet.read(
                        OfferFile.NAME,
                        marked ? text.substring(1) : text,
                        OfferFile.columns(),
                        faults);
        faults.throwIfAny();
        Map<String, Offer> after = new LinkedHashMap<>();
        for (OfferChange change : plan.changes()) {
            after.put(change.after().part(), change.after());
        }
        List<Integer> superseded = new ArrayList<>();
        for (int row = 0; row < sheet.size(); row++) {
            String part = sheet.cell(row, "part");
            boolean his = sheet.cell(row, "supplier").equals(plan.list().supplier());
            if (his && after.containsKey(part) && after.get(part) != null) {
                fill(sheet, row, after.put(part, null));
            } else if (his && after.containsKey(part)) {
                superseded.add(row);
            }
        }
        sheet.remove(superseded);
        after.values().stream()
                .filter(java.util.Objects::nonNull)
                .forEach(offer -> fill(sheet, sheet.add(), offer));
        return (marked ? "\uFEFF" : "") + sheet.text();
    }

    private static void fill(CsvSheet sheet, int row, Offer offer) {
        sheet.fill(row, "part", offer.part());
        sheet.fill(row, "supplier", offer.supplier());
        sheet.fill(row, "price", offer.price().plain());
        sheet.fill(row, "currency", offer.price().currency().getCurrencyCode());
        sheet.fill(row, "stock", Integer.toString(offer.stock()));
        sheet.fill(row, "lead_days", Integer.toString(offer.leadDays()));
        sheet.fill(row, "as_of", offer.asOf().toString());
    }
}
