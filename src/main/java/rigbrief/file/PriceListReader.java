package rigbrief.file;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.Column;
import rigbrief.file.cell.CsvTable;
import rigbrief.part.Cells.Malformed;
import rigbrief.pricelist.PriceList;
import rigbrief.pricelist.PriceRow;
import rigbrief.quantity.Money;

/** Reads a supplier's price list as its map says. */
public final class PriceListReader {
    private static final int MOST_STOCK = 1_000_000;
    private static final int MOST_DAYS = 365;
    private static final BigDecimal MOST_PRICE = BigDecimal.valueOf(100_000_000);

    private final PriceListMap map;
    private final Currency currency;
    private final Optional<LocalDate> asOf;
    private final CsvTable table;
    private int withoutPrice;

    private PriceListReader(
            PriceListMap map, Currency currency, Optional<LocalDate> asOf, CsvTable table) {
        this.map = map;
        this.currency = currency;
        this.asOf = asOf;
        this.table = table;
    }

    /**
     * Reads a list.
     *
     * @param asOf date of the list; empty for what the list or its map says
     * @throws BadInput with all faults of the file
     */
    public static PriceList read(
            Path path, PriceListMap map, Optional<LocalDate> asOf, Catalogue catalogue)
            throws BadInput {
        Faults faults = new Faults();
        Optional<PriceList> list = read(path, map, asOf, catalogue.currency(), faults);
        faults.throwIfAny();
        return list.orElseThrow(() -> new IllegalStateException("no list and no fault"));
    }

    /** Tells whether a list can be opened at all, while its map can't be read. */
    public static void look(Path path, Faults faults) {
        text(path, StandardCharsets.ISO_8859_1, faults);
    }

    /** Reads a list; empty where it has faults. */
    public static Optional<PriceList> read(
            Path path,
            PriceListMap map,
            Optional<LocalDate> asOf,
            Currency currency,
            Faults faults) {
        int before = faults.count();
        Optional<LocalDate> date = asOf.or(map::asOf);
        if (date.isEmpty() && map.columns().asOf().isEmpty()) {
            faults.add(
                    new Fault(
                            path.toString(),
                            1,
                            1,
                            "as-of",
                            "",
                            "the date of the list",
                            "add --as-of DATE, or name its column in the map"));
        }
        String text = text(path, map.encoding(), faults);
        if (faults.count() > before) {
            return Optional.empty();
        }
        CsvTable table =
                CsvTable.open(
                        path.toString(),
                        withoutHead(text, map.skipLines()),
                        map.delimiter(),
                        columns(map),
                        faults);
        PriceList list = new PriceListReader(map, currency, date, table).list(faults);
        return faults.count() == before ? Optional.of(list) : Optional.empty();
    }

    private static String text(Path path, Charset encoding, Faults faults) {
        return SourceText.bytes(path, faults)
                .map(bytes -> EncodedText.decode(bytes, encoding, path.toString(), faults))
                .orElse("");
    }

    /** Lines above the header are emptied, so that the others keep their numbers. */
    private static String withoutHead(String text, int lines) {
        int from = 0;
        StringBuilder blank = new StringBuilder();
        for (int i = 0; i < lines && from >= 0; i++) {
            from = text.indexOf('\n', from) + 1;
            blank.append('\n');
            if (from == 0) {
                return blank.toString();
            }
        }
        return blank + text.substring(from);
    }

    private static List<Column> columns(PriceListMap map) {
        PriceListMap.Columns names = map.columns();
        List<Column> columns = new ArrayList<>();
        add(columns, names.article(), "the supplier's number");
        add(columns, names.id(), "the catalogue's id");
        add(columns, names.number(), "the maker's number");
        add(columns, names.gtin(), "the item number");
        names.words().forEach(name -> add(columns, name, "what the part is called"));
        add(columns, names.price(), "the price");
        add(columns, names.stock(), "the stock");
        add(columns, names.leadDays(), "the lead time");
        add(columns, names.asOf(), "the date");
        return columns;
    }

    private static void add(List<Column> columns, String name, String holds) {
        if (!name.isEmpty()) {
            columns.add(new Column(name, true, holds));
        }
    }

    private PriceList list(Faults faults) {
        List<PriceRow> rows = new ArrayList<>();
        while (table.next()) {
            if (map.noPrice().contains(cell(map.columns().price()))) {
                withoutPrice++;
            } else {
                int before = faults.count();
                PriceRow row = row();
                if (faults.count() == before) {
                    rows.add(row);
                }
            }
        }
        return new PriceList(map.supplier(), rows, withoutPrice, map.same(), map.unlistedSoldOut());
    }

    private String cell(String column) {
        String cell = column.isEmpty() ? "" : table.cell(column);
        return cell == null ? "" : cell;
    }

    private PriceRow row() {
        PriceListMap.Columns names = map.columns();
        return new PriceRow(
                table.line(),
                cell(names.article()),
                cell(names.id()),
                cell(names.number()),
                cell(names.gtin()).replaceAll("[ -]", ""),
                names.words().stream()
                        .map(this::cell)
                        .filter(word -> !word.isEmpty())
                        .collect(Collectors.joining(" ")),
                price(names.price()),
                whole(names.stock(), map.stocks(), map.stock(), -MOST_STOCK, MOST_STOCK),
                whole(names.leadDays(), map.leads(), map.leadDays(), 0, MOST_DAYS),
                date(names.asOf()));
    }

    private Money price(String column) {
        try {
            BigDecimal listed = map.figures().amount(cell(column));
            return money(listed);
        } catch (Malformed malformed) {
            fault(column, malformed);
            return Money.zero(currency);
        }
    }

    /** Converted amounts are rounded to the minor unit; listed ones must have no more decimals. */
    private Money money(BigDecimal listed) throws Malformed {
        int decimals = currency.getDefaultFractionDigits();
        BigDecimal price = listed.multiply(map.rate());
        if (map.rate().compareTo(BigDecimal.ONE) != 0) {
            price = price.setScale(decimals, RoundingMode.HALF_UP);
        }
        if (price.stripTrailingZeros().scale() > decimals) {
            throw new Malformed(
                    "at most %d decimals, as %s has".formatted(decimals, currency), "round it");
        }
        if (price.signum() <= 0 || price.compareTo(MOST_PRICE) > 0) {
            throw new Malformed(
                    "a price above 0, at most 100000000",
                    "correct it, or name it under no-price in the map");
        }
        return new Money(price.setScale(decimals, RoundingMode.UNNECESSARY), currency);
    }

    private int whole(
            String column, Map<String, Integer> words, OptionalInt otherwise, int least, int most) {
        String entry = cell(column);
        if (words.containsKey(entry)) {
            return words.get(entry);
        }
        if (entry.isEmpty() && otherwise.isPresent()) {
            return otherwise.getAsInt();
        }
        try {
            BigDecimal number = map.figures().number(entry);
            boolean right =
                    number.stripTrailingZeros().scale() <= 0
                            && number.compareTo(BigDecimal.valueOf(least)) >= 0
                            && number.compareTo(BigDecimal.valueOf(most)) <= 0;
            if (right) {
                return number.intValueExact();
            }
        } catch (Malformed noNumber) {
            fault(column, noWhole(most));
            return 0;
        }
        fault(column, noWhole(most));
        return 0;
    }

    private static Malformed noWhole(int most) {
        return new Malformed(
                "a whole number up to " + most, "correct it, or give the word a number in the map");
    }

    private LocalDate date(String column) {
        String entry = cell(column);
        if (asOf.isPresent() && (column.isEmpty() || entry.isEmpty())) {
            return asOf.get();
        }
        try {
            return map.dateForm().date(entry);
        } catch (Malformed malformed) {
            fault(column, malformed);
            return LocalDate.EPOCH;
        }
    }

    private void fault(String column, Malformed malformed) {
        table.fault(column, cell(column), malformed.expected(), malformed.advice());
    }
}
