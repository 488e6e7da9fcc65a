package rigbrief.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.CellRow;
import rigbrief.file.cell.CsvTable;
import rigbrief.pricelist.PriceHistory;

/**
 * Reads and extends {@code prices.csv}: the offers of a catalogue that have been superseded, with
 * the columns of {@code offers.csv}.
 *
 * <p>It may name parts and suppliers that have left the catalogue. It has no part in the
 * catalogue's digest, since nothing that is proposed depends on it, and is read only by who asks
 * for it.
 */
public final class PriceFile {
    /** The file's name in a catalogue folder. */
    static final String NAME = "prices.csv";

    private static final String HEADER = "part,supplier,price,currency,stock,lead_days,as_of\n";

    private PriceFile() {}

    /**
     * What has been offered over time, the offers of now among it.
     *
     * @throws BadInput with all faults of the file
     */
    public static PriceHistory history(Path folder, Catalogue catalogue) throws BadInput {
        List<Offer> current = new ArrayList<>();
        for (var kind : rigbrief.part.Kind.values()) {
            catalogue.parts(kind).forEach(part -> current.addAll(catalogue.offers(part.id())));
        }
        return new PriceHistory(read(folder, catalogue), current);
    }

    /** The superseded offers, in file order; none when there is no such file. */
    static List<Offer> read(Path folder, Catalogue catalogue) throws BadInput {
        Path path = folder.resolve(NAME);
        if (!Files.exists(path)) {
            return List.of();
        }
        Faults faults = new Faults();
        Optional<SourceText> source = SourceText.readRegular(path, faults);
        List<Offer> offers = new ArrayList<>();
        if (source.isPresent() && !source.get().text().isBlank()) {
            OfferRow form = new OfferRow(catalogue.currency());
            CsvTable table =
                    CsvTable.open(
                            source.get().file(), source.get().text(), OfferFile.columns(), faults);
            CellRow.Memo memo = new CellRow.Memo();
            while (table.next()) {
                offers.add(form.read(CellRow.of(table, memo)));
                form.checkCurrency(table);
            }
        }
        faults.throwIfAny();
        return offers;
    }

    /** The file's bytes with more offers behind. */
    static byte[] added(byte[] before, List<Offer> offers) {
        StringBuilder text = new StringBuilder(new String(before, StandardCharsets.UTF_8));
        if (text.isEmpty()) {
            text.append(HEADER);
        } else if (text.charAt(text.length() - 1) != '\n') {
            text.append('\n');
        }
        for (Offer offer : offers) {
            text.append(line(offer)).append('\n');
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String line(Offer offer) {
        return String.join(
                ",",
                offer.part(),
                offer.supplier(),
                offer.price().plain(),
                offer.price().currency().getCurrencyCode(),
                Integer.toString(offer.stock()),
                Integer.toString(offer.leadDays()),
                offer.asOf().toString());
    }
}
