package rigbrief.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Faults;
import rigbrief.pricelist.ImportPlan;
import rigbrief.pricelist.PriceHistory;
import rigbrief.pricelist.PriceImport;
import rigbrief.pricelist.PriceList;
import rigbrief.pricelist.Verdicts;

/** A catalogue folder and an overlay of which one file at a time holds other bytes. */
final class SpoiltCatalogue {
    private static final List<String> FILES =
            List.of(
                    OfferFile.NAME,
                    PriceFile.NAME,
                    CatalogueReader.WORKLOADS,
                    "catalog.yaml",
                    "overlay/" + CatalogueReader.WORKLOADS,
                    "overlay/" + RatesFile.NAME);

    private static final List<String> MAPS =
            List.of(
                    """
                    supplier: dovecote
                    as-of: 2026-12-01
                    columns: { id: id, price: price, stock: stock, lead-days: days }
                    """,
                    """
                    supplier: millrace
                    delimiter: semicolon
                    decimal: comma
                    thousands: point
                    skip-lines: 1
                    date-form: dd.mm.yyyy
                    columns: { article: Ref, words: [Article, Maker], price: Net, as-of: Date }
                    stock: 3
                    lead-days: 2
                    no-price: [on request]
                    unlisted: sold-out
                    same: { X-1: mere-1t }
                    """,
                    """
                    supplier: dovecote
                    encoding: windows-1252
                    delimiter: tab
                    currency: GBP
                    rate: "1.17"
                    as-of: 2026-12-01
                    columns: { number: No, gtin: EAN, price: Price, stock: Stock, lead-days: Lead }
                    stock-words: { none: 0, plenty: 50 }
                    lead-words: { 3 days: 3 }
                    """);

    private static final List<String> LISTS =
            List.of(
                    "id,price,stock,days\ntarn-6,179.90,3,2\nmere-1t,69,0,9\n",
                    "List\nRef;Article;Maker;Net;Date\nX-1;Mere 1T;Mere;68,50;02.12.2026\n",
                    "No\tEAN\tPrice\tStock\tLead\nT-6\t6291041500213\t150.00\tplenty\t3 days\n");

    private final Path folder;
    private final Path overlay;
    private final Path list;
    private final Path map;
    private final Catalogue sound;
    private final List<PriceListMap> maps;

    SpoiltCatalogue() {
        try {
            folder = Files.createTempDirectory("rigbrief-fuzz");
            // A fuzzer is stopped, not closed.
            Runtime.getRuntime().addShutdownHook(new Thread(this::remove));
            overlay = Files.createDirectory(folder.resolve("overlay"));
            list = folder.resolve("list");
            map = folder.resolve("map");
            FolderFixture.aFolder().write(folder);
            sound = CatalogueReader.read(folder);
            maps = new ArrayList<>();
            for (String text : MAPS) {
                Files.writeString(map, text);
                maps.add(PriceListMapReader.read(map, sound));
            }
        } catch (BadInput bad) {
            throw new IllegalStateException(bad);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** The catalogue as it is without a fault. */
    Catalogue sound() {
        return sound;
    }

    /** One of several sound maps. */
    PriceListMap map(int choice) {
        return maps.get(choice % maps.size());
    }

    /** One of several sound lists. */
    byte[] list(int choice) {
        return LISTS.get(choice % LISTS.size()).getBytes(StandardCharsets.UTF_8);
    }

    /** What is read with other bytes in one of the files; empty where it has faults. */
    Optional<?> read(byte[] data, int choice, Faults faults) {
        String name = FILES.get(choice % FILES.size());
        try {
            put(name, data);
            List<Path> folders =
                    name.startsWith("overlay/") ? List.of(folder, overlay) : List.of(folder);
            Catalogue read = CatalogueReader.readNoted(folders).catalogue();
            PriceHistory history = PriceFile.history(folder, read);
            return Optional.of(history);
        } catch (BadInput bad) {
            faults.addAll(bad);
            return Optional.empty();
        } finally {
            restore();
        }
    }

    /** A map that is read from bytes; empty where it has faults. */
    Optional<PriceListMap> readMap(byte[] data, Faults faults) {
        put("map", data);
        return PriceListMapReader.read(map, Known.of(sound), faults);
    }

    /**
     * A list that is read from bytes and, where nothing stands against it, taken into the
     * catalogue, which must then be read without a fault and hold all that the list changed.
     */
    Optional<PriceList> takeIn(byte[] data, PriceListMap form, Faults faults) {
        put("list", data);
        Optional<PriceList> read =
                PriceListReader.read(list, form, Optional.empty(), sound.currency(), faults);
        read.map(it -> PriceImport.plan(sound, it, Verdicts.NONE))
                .filter(ImportPlan::sound)
                .ifPresent(this::carryOut);
        return read;
    }

    private void carryOut(ImportPlan plan) {
        try {
            OfferStore store = OfferStore.of(folder);
            store.apply(plan, sound, store.look());
            Catalogue after = CatalogueReader.read(folder);
            PriceFile.history(folder, after);
            plan.changes().forEach(change -> demand(after, change.after()));
        } catch (BadInput bad) {
            throw new AssertionError("taken in, and faulty since: " + bad.faults(), bad);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } finally {
            restore();
        }
    }

    private static void demand(Catalogue after, Offer offer) {
        if (!after.offers(offer.part()).contains(offer)) {
            throw new AssertionError("taken in, and not there: " + offer);
        }
    }

    private void put(String name, byte[] bytes) {
        try {
            Files.write(folder.resolve(name), bytes);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private void restore() {
        try {
            FolderFixture.aFolder().write(folder);
            Files.deleteIfExists(folder.resolve(PriceFile.NAME));
            Files.deleteIfExists(overlay.resolve(CatalogueReader.WORKLOADS));
            Files.deleteIfExists(overlay.resolve(RatesFile.NAME));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private void remove() {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException left) {
            throw new UncheckedIOException(left);
        }
    }
}
