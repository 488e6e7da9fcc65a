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

    private final Catalogue catalogue;
    private final Names names;

    private BriefReader(Catalogue catalogue) {
        this(catalogue, new Names(catalogue));
    }

    BriefReader(Catalogue catalogue, Names names) {
        this.catalogue = catalogue;
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
        Optional<SourceText> source = SourceText.read(path, faults);
        return read(source, nameOf(path), catalogue, faults);
    }

    /**
     * Reads a stream to its end; the brief is called {@value #STREAM_NAME}.
     *
     * @param file what the stream is called in faults
     * @throws BadInput with all faults of the text
     */
    public static Brief read(InputStream in, String file, Catalogue catalogue) throws BadInput {
        Faults faults = new Faults();
        return read(SourceText.readStream(in, file, faults), STREAM_NAME, catalogue, faults);
    }

    private static Brief read(
            Optional<SourceText> source, String name, Catalogue catalogue, Faults faults)
            throws BadInput {
        Optional<Brief> brief =
                source.flatMap(
                                it ->
                                        Tree.read(it.file(), it.text(), faults)
                                                .map(root -> Keys.of(it.file(), root, faults)))
                        .flatMap(keys -> new BriefReader(catalogue).brief(name, keys));
        faults.throwIfAny();
        return brief.orElseThrow(() -> new IllegalStateException("no brief and no fault"));
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
        return root.faultCount() == before ? Optional.of(brief) : Optional.empty();
    }

    private Currency currency(Keys root) {
        root.one("currency", this::catalogueCurrency);
        return catalogue.currency();
    }

    private Currency catalogueCurrency(String entry) throws Cells.Malformed {
        String code = catalogue.currency().getCurrencyCode();
        if (!entry.equals(code)) {
            throw new Cells.Malformed(
                    code + ", the catalogue's currency",
                    "convert every amount, then write " + code);
        }
        return catalogue.currency();
    }

    private static String nameOf(Path path) {
        Path last = path.getFileName();
        String name = last == null ? STREAM_NAME : last.toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
