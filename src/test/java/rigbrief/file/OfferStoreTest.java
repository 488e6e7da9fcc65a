package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rigbrief.file.FolderFixture.aFolder;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.diagnostic.BadInput;
import rigbrief.part.Kind;
import rigbrief.pricelist.ImportPlan;
import rigbrief.pricelist.PriceHistory;
import rigbrief.pricelist.PriceImport;
import rigbrief.pricelist.PriceList;
import rigbrief.pricelist.PriceRow;
import rigbrief.pricelist.Verdicts;
import rigbrief.quantity.Money;

class OfferStoreTest {
    private static final LocalDate DAY = LocalDate.of(2026, 12, 1);

    @TempDir Path folder;

    @BeforeEach
    void write() {
        aFolder().write(folder);
    }

    @Test
    void changed_offers_take_the_place_of_the_old_and_the_old_go_on_record() throws Exception {
        Catalogue before = CatalogueReader.read(folder);
        ImportPlan plan = plan(before, DAY, 1.1);

        int recorded = OfferStore.of(folder).apply(plan, before, seen());

        Catalogue after = CatalogueReader.read(folder);
        assertThat(recorded).isEqualTo(plan.changes().size());
        assertThat(offers(after)).containsAll(changed(plan)).hasSameSizeAs(offers(before));
        assertThat(PriceFile.read(folder, after)).isEqualTo(beforeOf(plan));
    }

    @Test
    void an_unknown_column_and_the_line_ends_of_the_offers_are_kept() throws Exception {
        String text = aFolder().text("offers.csv");
        String own = withColumn(text, "shelf", "A-4").replace("\n", "\r\n");
        Files.writeString(folder.resolve("offers.csv"), own);
        Catalogue before = CatalogueReader.read(folder);

        OfferStore.of(folder).apply(plan(before, DAY, 1.1), before, seen());

        String written = Files.readString(folder.resolve("offers.csv"));
        assertThat(written.lines().findFirst().orElseThrow()).endsWith(",shelf");
        assertThat(written.lines().skip(1)).allMatch(line -> line.endsWith(",A-4"));
        assertThat(written).doesNotContainPattern("[^\r]\n");
    }

    @Test
    void a_file_that_somebody_changed_meanwhile_is_left_alone() throws Exception {
        Catalogue before = CatalogueReader.read(folder);
        ImportPlan plan = plan(before, DAY, 1.1);
        var seen = seen();
        String theirs = aFolder().text("offers.csv").replaceFirst("\n", "\n\n");
        Files.writeString(folder.resolve("offers.csv"), theirs);

        assertThatThrownBy(() -> OfferStore.of(folder).apply(plan, before, seen))
                .isInstanceOf(FileRefused.class)
                .hasMessageContaining("changed meanwhile");
        assertThat(folder.resolve("offers.csv")).hasContent(theirs);
    }

    /**
     * Broken off after each single step of both writes, with a record on file before and without:
     * offers, digest and history are those before or those after, never a mixture; and the same
     * import run again ends as if nothing had happened.
     */
    @Test
    void an_import_broken_off_after_any_step_is_all_or_nothing() throws Exception {
        int steps = steps(true);
        assertThat(steps).isEqualTo(2 * SafeWriter.Step.values().length);
        for (boolean recordThere : List.of(false, true)) {
            for (int step = 0; step < steps; step++) {
                breakOff(recordThere, step);
            }
        }
    }

    private void breakOff(boolean recordThere, int last) throws Exception {
        start(recordThere);
        Catalogue before = CatalogueReader.read(folder);
        State old = State.of(folder);
        ImportPlan plan = plan(before, DAY, 1.1);
        Countdown countdown = new Countdown(last);

        assertThatThrownBy(() -> OfferStore.watched(folder, countdown).apply(plan, before, seen()))
                .isInstanceOf(IOException.class)
                .hasMessage("broken off");

        State found = State.of(folder);
        start(recordThere);
        OfferStore.of(folder).apply(plan, CatalogueReader.read(folder), seen());
        State whole = State.of(folder);
        assertThat(found).as("after step %d", last).isIn(old, whole);
        assertThat(whole).isNotEqualTo(old);
        again(recordThere, last, plan);
        assertThat(State.of(folder)).as("again after step %d", last).isEqualTo(whole);
    }

    /** Breaks off once more, then runs the import as somebody would who saw it fail. */
    private void again(boolean recordThere, int last, ImportPlan plan) throws Exception {
        start(recordThere);
        Catalogue before = CatalogueReader.read(folder);
        try {
            OfferStore.watched(folder, new Countdown(last)).apply(plan, before, seen());
        } catch (IOException brokenOff) {
            Catalogue now = CatalogueReader.read(folder);
            ImportPlan same = PriceImport.plan(now, plan.list(), Verdicts.NONE);
            OfferStore.of(folder).apply(same, now, seen());
        }
    }

    private void start(boolean recordThere) throws Exception {
        Files.deleteIfExists(folder.resolve("prices.csv"));
        aFolder().write(folder);
        if (recordThere) {
            Catalogue first = CatalogueReader.read(folder);
            OfferStore.of(folder).apply(plan(first, DAY.minusDays(1), 1.3), first, seen());
        }
    }

    private int steps(boolean recordThere) throws Exception {
        start(recordThere);
        Catalogue before = CatalogueReader.read(folder);
        List<SafeWriter.Step> steps = new ArrayList<>();
        OfferStore.watched(folder, (path, step) -> steps.add(step))
                .apply(plan(before, DAY, 1.1), before, seen());
        return steps.size();
    }

    /** What anybody can see of a catalogue's offers. */
    private record State(List<Offer> offers, String digest, List<PriceHistory.Series> history) {
        static State of(Path folder) throws BadInput {
            Catalogue catalogue = CatalogueReader.read(folder);
            return new State(
                    OfferStoreTest.offers(catalogue),
                    catalogue.digest(),
                    PriceFile.history(folder, catalogue).series());
        }
    }

    private OfferStore.Seen seen() throws IOException {
        return OfferStore.of(folder).look();
    }

    private static List<Offer> offers(Catalogue catalogue) {
        List<Offer> offers = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            catalogue.parts(kind).forEach(part -> offers.addAll(catalogue.offers(part.id())));
        }
        return offers;
    }

    private static List<Offer> changed(ImportPlan plan) {
        return plan.changes().stream().map(change -> change.after()).toList();
    }

    private static List<Offer> beforeOf(ImportPlan plan) {
        return plan.changes().stream().map(change -> change.before().orElseThrow()).toList();
    }

    private static String withColumn(String text, String header, String cell) {
        StringBuilder wider = new StringBuilder();
        for (String line : text.lines().toList()) {
            String more = wider.isEmpty() ? header : cell;
            wider.append(line).append(',').append(more).append('\n');
        }
        return wider.toString();
    }

    /** A list of everything Dovecote offers, at other prices. */
    private static ImportPlan plan(Catalogue catalogue, LocalDate day, double factor) {
        List<PriceRow> rows = new ArrayList<>();
        for (Offer offer : offers(catalogue)) {
            if (offer.supplier().equals("dovecote")) {
                Money price =
                        Money.ofMinor(
                                Math.round(offer.price().minorUnits() * factor),
                                catalogue.currency());
                rows.add(
                        new PriceRow(
                                rows.size() + 2, "", offer.part(), "", "", "", price, 5, 2, day));
            }
        }
        PriceList list = new PriceList("dovecote", rows, 0, Map.of(), false);
        ImportPlan plan = PriceImport.plan(catalogue, list, Verdicts.NONE);
        assertThat(plan.suspicions()).isEmpty();
        assertThat(plan.changes()).isNotEmpty();
        return plan;
    }

    @Test
    void a_record_names_parts_that_the_catalogue_has_lost() throws Exception {
        Files.writeString(
                folder.resolve("prices.csv"),
                "part,supplier,price,currency,stock,lead_days,as_of\n"
                        + "long-gone,nobody,5.00,EUR,1,1,2025-01-01\n",
                StandardCharsets.UTF_8);
        Catalogue catalogue = CatalogueReader.read(folder);

        assertThat(PriceFile.history(folder, catalogue).series())
                .anyMatch(series -> series.newest().part().equals("long-gone"));
    }
}
