package rigbrief.file;

import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Faults;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.Text;
import rigbrief.file.tree.Tree;
import rigbrief.part.Cells.Malformed;
import rigbrief.part.Word;

/** Reads how a supplier writes its price lists. */
public final class PriceListMapReader {
    private static final int MOST_STOCK = 1_000_000;
    private static final int MOST_DAYS = 365;
    private static final BigDecimal MOST_RATE = BigDecimal.valueOf(1_000_000);

    private final Catalogue catalogue;
    private final Names names;

    private PriceListMapReader(Known known) {
        this.catalogue = known.catalogue();
        this.names = new Names(known);
    }

    /** What stands between cells, or between groups of digits. */
    enum Mark implements Word {
        COMMA("comma", ','),
        SEMICOLON("semicolon", ';'),
        TAB("tab", '\t'),
        BAR("bar", '|'),
        POINT("point", '.'),
        APOSTROPHE("apostrophe", '\''),
        SPACE("space", ' ');

        private final String word;
        private final char sign;

        Mark(String word, char sign) {
            this.word = word;
            this.sign = sign;
        }

        @Override
        public String word() {
            return word;
        }

        /** Reads the word or the sign itself, if it is one of several. */
        static char of(String entry, Mark... allowed) throws Malformed {
            List<String> words = new ArrayList<>();
            for (Mark mark : allowed) {
                if (entry.equals(mark.word) || entry.equals(String.valueOf(mark.sign))) {
                    return mark.sign;
                }
                words.add(mark.word);
            }
            throw new Malformed(
                    "one of " + String.join(", ", words), "write the word, or the sign in quotes");
        }
    }

    /** What becomes of offers that the list does not name. */
    enum Unlisted implements Word {
        KEEP("keep"),
        SOLD_OUT("sold-out");

        private final String word;

        Unlisted(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    /**
     * Reads a map.
     *
     * @throws BadInput with all faults of the file
     */
    public static PriceListMap read(Path path, Catalogue catalogue) throws BadInput {
        Faults faults = new Faults();
        Optional<PriceListMap> map = read(path, Known.of(catalogue), faults);
        faults.throwIfAny();
        return map.orElseThrow(() -> new IllegalStateException("no map and no fault"));
    }

    /** Reads a map; empty where it has faults. */
    public static Optional<PriceListMap> read(Path path, Known known, Faults faults) {
        int before = faults.count();
        return SourceText.read(path, faults)
                .flatMap(
                        source ->
                                Tree.read(source.file(), source.text(), faults)
                                        .map(root -> Keys.of(source.file(), root, faults)))
                .map(keys -> new PriceListMapReader(known).map(keys))
                .filter(any -> faults.count() == before);
    }

    private PriceListMap map(Keys root) {
        String supplier =
                root.oneText("supplier", "the id of the supplier", "name one of the catalogue's")
                        .filter(names::supplier)
                        .map(Text::text)
                        .orElse("");
        Charset encoding = root.maybe("encoding", PriceListMapReader::charset).orElse(UTF_8);
        char delimiter = mark(root, "delimiter", ',', COMMA_OR_SO);
        Currency currency = root.maybe("currency", Forms::currency).orElse(catalogue.currency());
        FigureForm figures =
                new FigureForm(
                        mark(root, "decimal", '.', Mark.POINT, Mark.COMMA),
                        root.maybe("thousands", entry -> Mark.of(entry, BETWEEN_DIGITS)),
                        currency);
        checkMarks(root, figures);
        BigDecimal rate = rate(root, currency);
        int skip = root.cells().wholeOr("skip-lines", 0, 100, 0);
        Optional<Keys> under = root.keys("columns");
        if (!root.has("columns")) {
            root.fault("columns", "which column holds what", "write price: its header, and so on");
        }
        PriceListMap.Columns columns = columns(under, root);
        DateForm dates = root.cells().choiceOr("date-form", DateForm.YEAR_FIRST);
        Optional<LocalDate> asOf = root.maybe("as-of", Forms::date);
        Map<String, Integer> stocks = words(root, "stock-words", MOST_STOCK);
        OptionalInt stock = root.cells().maybeWhole("stock", 0, MOST_STOCK);
        Map<String, Integer> leads = words(root, "lead-words", MOST_DAYS);
        OptionalInt leadDays = root.cells().maybeWhole("lead-days", 0, MOST_DAYS);
        List<String> noPrice = root.texts("no-price").stream().map(Text::text).toList();
        Unlisted unlisted = root.cells().choiceOr("unlisted", Unlisted.KEEP);
        Map<String, String> same = same(root);
        checkComplete(root, columns, stock, leadDays);
        root.finish();
        return new PriceListMap(
                supplier,
                encoding,
                delimiter,
                figures,
                rate,
                skip,
                columns,
                dates,
                asOf,
                stocks,
                stock,
                leads,
                leadDays,
                noPrice,
                unlisted == Unlisted.SOLD_OUT,
                same);
    }

    private static final Charset UTF_8 = StandardCharsets.UTF_8;
    private static final Mark[] COMMA_OR_SO = {Mark.COMMA, Mark.SEMICOLON, Mark.TAB, Mark.BAR};
    private static final Mark[] BETWEEN_DIGITS = {
        Mark.POINT, Mark.COMMA, Mark.APOSTROPHE, Mark.SPACE
    };

    private static char mark(Keys root, String key, char otherwise, Mark... allowed) {
        return root.maybe(key, entry -> Mark.of(entry, allowed)).orElse(otherwise);
    }

    private static void checkMarks(Keys root, FigureForm figures) {
        if (figures.thousands().filter(mark -> mark == figures.decimal()).isPresent()) {
            root.fault("thousands", "another sign than decimal", "correct one of the two");
        }
    }

    private static Charset charset(String entry) throws Malformed {
        return switch (entry.toLowerCase(java.util.Locale.ROOT)) {
            case "utf-8" -> UTF_8;
            case "iso-8859-1" -> StandardCharsets.ISO_8859_1;
            case "windows-1252" -> Charset.forName("windows-1252");
            case "utf-16" -> StandardCharsets.UTF_16BE;
            case "utf-16le" -> StandardCharsets.UTF_16LE;
            default ->
                    throw new Malformed(
                            "one of utf-8, iso-8859-1, windows-1252, utf-16, utf-16le",
                            "use one of these words; a byte order mark in the file decides anyway");
        };
    }

    /**
     * A list in another currency needs a rate, and one in the catalogue's own must not have one.
     */
    private BigDecimal rate(Keys root, Currency currency) {
        boolean same = currency.equals(catalogue.currency());
        String expected =
                "how much %s one %s is".formatted(catalogue.currency(), currency.getCurrencyCode());
        if (same && root.has("rate")) {
            root.fault("rate", "no rate for the catalogue's own currency", "take it out");
            return BigDecimal.ONE;
        }
        if (same) {
            return BigDecimal.ONE;
        }
        if (!root.has("rate")) {
            root.fault("rate", expected, "write it as a decimal number, such as 1.17");
        }
        return root.maybe("rate", entry -> rate(entry, expected)).orElse(BigDecimal.ONE);
    }

    private static BigDecimal rate(String entry, String expected) throws Malformed {
        String advice = "write it as a decimal number, such as 1.17";
        BigDecimal rate = Forms.decimal(entry, expected, advice);
        if (rate.signum() <= 0 || rate.compareTo(MOST_RATE) > 0) {
            throw new Malformed(expected, advice);
        }
        return rate;
    }

    private static PriceListMap.Columns columns(Optional<Keys> under, Keys root) {
        if (under.isEmpty()) {
            return new PriceListMap.Columns("", "", "", "", List.of(), "", "", "", "");
        }
        Keys keys = under.get();
        PriceListMap.Columns columns =
                new PriceListMap.Columns(
                        header(keys, "article"),
                        header(keys, "id"),
                        header(keys, "number"),
                        header(keys, "gtin"),
                        words(keys),
                        header(keys, "price"),
                        header(keys, "stock"),
                        header(keys, "lead-days"),
                        header(keys, "as-of"));
        if (!keys.has("price")) {
            keys.fault("price", "the header of the column with prices", "write it as in the list");
        }
        boolean named =
                keys.has("id") || keys.has("number") || keys.has("gtin") || keys.has("words");
        if (!named) {
            keys.fault(
                    "number",
                    "at least one of id, number, gtin, words",
                    "say which column tells the part");
        }
        keys.finish();
        return columns;
    }

    /** The columns that together say what a part is called: one, or a list. */
    private static List<String> words(Keys keys) {
        List<Text> texts =
                keys.hasList("words")
                        ? keys.texts("words")
                        : keys.text("words").map(List::of).orElse(List.of());
        return texts.stream().map(Text::text).toList();
    }

    private static String header(Keys keys, String key) {
        return keys.text(key).map(Text::text).orElse("");
    }

    private static Map<String, Integer> words(Keys root, String key, int most) {
        Map<String, Integer> words = new LinkedHashMap<>();
        root.keys(key)
                .ifPresent(
                        keys -> {
                            for (String word : keys.names()) {
                                words.put(word, keys.cells().whole(word, 0, most));
                            }
                        });
        return words;
    }

    private Map<String, String> same(Keys root) {
        Map<String, String> same = new LinkedHashMap<>();
        root.keys("same")
                .ifPresent(
                        keys -> {
                            for (String number : keys.names()) {
                                keys.text(number)
                                        .flatMap(names::part)
                                        .ifPresent(part -> same.put(number, part.id()));
                            }
                        });
        return same;
    }

    private static void checkComplete(
            Keys root, PriceListMap.Columns columns, OptionalInt stock, OptionalInt leadDays) {
        if (columns.stock().isEmpty() && stock.isEmpty() && !root.has("stock")) {
            root.fault(
                    "stock",
                    "a column of stock, or one number for all",
                    "write columns.stock, or stock: 1");
        }
        if (columns.leadDays().isEmpty() && leadDays.isEmpty() && !root.has("lead-days")) {
            root.fault(
                    "lead-days",
                    "a column of lead times, or one number for all",
                    "write columns.lead-days, or lead-days: 3");
        }
    }
}
