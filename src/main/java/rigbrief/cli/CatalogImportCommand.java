package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.Known;
import rigbrief.file.OfferStore;
import rigbrief.file.PriceListMap;
import rigbrief.file.PriceListMapReader;
import rigbrief.file.PriceListReader;
import rigbrief.pricelist.ImportPlan;
import rigbrief.pricelist.PriceImport;
import rigbrief.pricelist.PriceList;
import rigbrief.report.ImportAnswer;
import rigbrief.report.ImportAnswer.Outcome;
import rigbrief.report.ImportJson;
import rigbrief.report.ImportText;

/** Takes a supplier's price list into a catalogue's offers. */
@Command(
        name = "import",
        description =
                "Takes a supplier's price list into the offers of a catalogue: all of it, or"
                        + " nothing when anything is wrong.",
        footer = {"", "Next: rigbrief catalog stats"})
final class CatalogImportCommand implements Callable<Integer> {
    private final Console console;

    @Spec private CommandSpec spec;

    @Parameters(paramLabel = "PRICELIST", description = "The supplier's list, a CSV file.")
    private Path list;

    @Option(
            names = "--map",
            paramLabel = "MAP",
            required = true,
            description = "File that says how the supplier writes its lists.")
    private Path map;

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            converter = DateOf.class,
            description = "Date of the list. Default: what the list or its map says.")
    private LocalDate asOf;

    @Option(
            names = "--accept",
            paramLabel = "LINE[=PART]",
            description = "This line is that part; or, without PART, is right as it stands.")
    private List<String> accept = List.of();

    @Option(names = "--skip", paramLabel = "LINE", description = "Leaves this line out.")
    private List<Integer> skip = List.of();

    @Option(names = "--dry-run", description = "Shows what would change, and changes nothing.")
    private boolean dryRun;

    @Mixin private CatalogueOption catalogue;
    @Mixin private FormatOption format;

    CatalogImportCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        try (OfferStore store = store()) {
            return takeIn(store);
        }
    }

    /** Whoever only looks waits for nobody, and needs no right to write. */
    private OfferStore store() throws NotWritten {
        Path folder = catalogue.folder();
        if (dryRun || !Files.isDirectory(folder)) {
            return OfferStore.of(folder);
        }
        try {
            return OfferStore.held(folder);
        } catch (IOException failed) {
            throw NotWritten.of(folder, failed, "look at the folder, or add --dry-run");
        }
    }

    private int takeIn(OfferStore store) throws BadInput, NotWritten {
        OfferStore.Seen seen = store.look();
        InputFiles files = new InputFiles(console);
        Known known = files.known(catalogue);
        Optional<PriceList> read = list(files, known);
        files.refuseFaulty();
        Catalogue parts = known.catalogue();
        PriceList rows = read.orElseThrow();
        AcceptedLines accepted = new AcceptedLines(spec.commandLine(), rows, parts);
        ImportPlan plan = PriceImport.plan(parts, rows, accepted.verdicts(accept, skip));
        Outcome outcome =
                !plan.sound() ? Outcome.REFUSED : dryRun ? Outcome.SHOWN : Outcome.CHANGED;
        int recorded = outcome == Outcome.CHANGED ? apply(store, plan, parts, seen) : 0;
        ImportAnswer answer = new ImportAnswer(list.toString(), parts, plan, outcome, recorded);
        format.print(console, new ImportText(), new ImportJson(), answer, next(outcome));
        return (plan.sound() ? ExitStatus.DONE : ExitStatus.BAD_INPUT).code();
    }

    private Optional<PriceList> list(InputFiles files, Known known) {
        Optional<PriceListMap> reading = PriceListMapReader.read(map, known, files.faults());
        console.progress("reading the price list " + list);
        if (reading.isEmpty()) {
            PriceListReader.look(list, files.faults());
            return Optional.empty();
        }
        return PriceListReader.read(
                list,
                reading.get(),
                Optional.ofNullable(asOf),
                known.catalogue().currency(),
                files.faults());
    }

    private int apply(OfferStore store, ImportPlan plan, Catalogue parts, OfferStore.Seen seen)
            throws NotWritten, BadInput {
        try {
            return store.apply(plan, parts, seen);
        } catch (IOException failed) {
            throw NotWritten.of(catalogue.folder(), failed, "look at the folder");
        }
    }

    private String next(Outcome outcome) {
        if (outcome == Outcome.CHANGED) {
            return "rigbrief catalog stats" + catalogue.repeated();
        }
        StringBuilder again = new StringBuilder("rigbrief catalog import ");
        again.append(ShellWord.of(list)).append(" --map ").append(ShellWord.of(map));
        again.append(asOf == null ? "" : " --as-of " + asOf);
        accept.forEach(word -> again.append(" --accept ").append(ShellWord.of(word)));
        skip.forEach(line -> again.append(" --skip ").append(line));
        again.append(catalogue.repeated());
        return outcome == Outcome.REFUSED
                ? "look at the suspicious lines, then " + again
                : again.toString();
    }
}
