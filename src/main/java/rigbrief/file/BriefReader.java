package rigbrief.file;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Faults;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.Tree;
import rigbrief.part.Cells;
import rigbrief.part.FrontPort;
import rigbrief.quantity.Money;

/** Reads a brief, YAML or JSON by what the text looks like. */
public final class BriefReader {
    /** What a brief out of a stream is called. */
    public static final String STREAM_NAME = "brief";

    private final Known known;
    private final Names names;

    private BriefReader(Known known) {
        this(known, new Names(known));
    }

    BriefReader(Known known, Names names) {
        this.known = known;
        this.names = names;
    }

    /**
     * Reads a file; the brief is called as the file without its ending.
     *
     * @param catalogue what the workloads, parts and suppliers that it names are looked up in
     * @throws BadInput with all faults of the file
     */
    public static Brief read(Path path, Catalogue catalogue) throws BadInput {
        Faults faults = new Faults();
        return whole(read(path, Known.of(catalogue), faults), faults);
    }

    /**
     * Reads a stream to its end; the brief is called {@value #STREAM_NAME}.
     *
     * @param file what the stream is called in faults
     * @throws BadInput with all faults of the text
     */
    public static Brief read(InputStream in, String file, Catalogue catalogue) throws BadInput {
        Faults faults = new Faults();
        return whole(read(in, file, Known.of(catalogue), faults), faults);
    }

    /** Reads a file; empty where it, or the catalogue, has faults. */
    public static Optional<Brief> read(Path path, Known known, Faults faults) {
        return read(SourceText.read(path, faults), nameOf(path), known, faults);
    }

    /** Reads a stream to its end; empty where it, or the catalogue, has faults. */
    public static Optional<Brief> read(InputStream in, String file, Known known, Faults faults) {
        return read(SourceText.readStream(in, file, faults), STREAM_NAME, known, faults);
    }

    /** Reads a file of many, which nobody named: a pipe or a device among them is refused. */
    public static Optional<Brief> readRegular(Path path, Known known, Faults faults) {
        return read(SourceText.readRegular(path, faults), nameOf(path), known, faults);
    }

    /**
     * The digest of a brief's bytes, for whoever must know later whether it is still the same:
     * SHA-256, hexadecimal.
     *
     * @throws BadInput when it is missing or too large, or a pipe or a device, which can't be read
     *     again
     */
    public static String digest(Path path) throws BadInput {
        Faults faults = new Faults();
        Optional<byte[]> bytes =
                SourceText.refusesSpecial(path, faults)
                        ? Optional.empty()
                        : SourceText.bytes(path, faults);
        faults.throwIfAny();
        return Sha256.of(bytes.orElseThrow());
    }

    private static Brief whole(Optional<Brief> brief, Faults faults) throws BadInput {
        faults.throwIfAny();
        return brief.orElseThrow(() -> new IllegalStateException("no brief and no fault"));
    }

    private static Optional<Brief> read(
            Optional<SourceText> source, String name, Known known, Faults faults) {
        return source.flatMap(
                        it ->
                                Tree.read(it.file(), it.text(), faults)
                                        .map(root -> Keys.of(it.file(), root, faults)))
                .flatMap(keys -> new BriefReader(known).brief(name, keys));
    }

    /** A brief's keys, read; empty where there was a fault. */
    Optional<Brief> brief(String name, Keys root) {
        int before = root.faultCount();
        Currency currency = currency(root);
        Locale locale = root.maybe("locale", Forms::locale).orElse(Brief.USUAL_LOCALE);
        Optional<Money> ceiling = root.one("ceiling", new MoneyForm(currency, false));
        Brief brief =
                new Brief(
                        name,
                        root.cells().text("client"),
                        currency,
                        root.cells().wholeOr("quantity", 1, 10_000, 1),
                        ceiling.orElse(Money.zero(currency)),
                        root.maybe("overrun", Forms.basisPoints(0, 50)).orElse(0),
                        root.maybe("confidence", Forms.percent(50, 99)).orElse(80),
                        ScreenSection.read(root, names),
                        new WorkloadSection(names).read(root),
                        names.workloads(root, "at-once"),
                        LimitsSection.looks(root),
                        LimitsSection.noise(root),
                        TermsSection.wireless(root),
                        LimitsSection.memory(root),
                        LimitsSection.storage(root, names),
                        LimitsSection.size(root),
                        root.list("front-ports", Forms.word(FrontPort.class)),
                        new KeepSection(names).read(root),
                        TermsSection.avoid(root, names),
                        TermsSection.buying(root, names),
                        TermsSection.system(root, names),
                        TermsSection.place(root, currency, locale),
                        TermsSection.headroom(root),
                        TermsSection.wishes(root),
                        TermsSection.fees(root, currency),
                        locale);
        root.finish();
        return root.faultCount() == before && known.whole() ? Optional.of(brief) : Optional.empty();
    }

    private Currency currency(Keys root) {
        root.one("currency", this::catalogueCurrency);
        return known.catalogue().currency();
    }

    private Currency catalogueCurrency(String entry) throws Cells.Malformed {
        String code = known.catalogue().currency().getCurrencyCode();
        if (!entry.equals(code) && (known.whole() || entry.isEmpty())) {
            throw new Cells.Malformed(
                    code + ", the catalogue's currency",
                    "convert every amount, then write " + code);
        }
        return known.catalogue().currency();
    }

    private static String nameOf(Path path) {
        Path last = path.getFileName();
        String name = last == null ? STREAM_NAME : last.toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
