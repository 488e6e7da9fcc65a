package rigbrief.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigbrief.audit.OpenBrief;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.build.MoveRefused;
import rigbrief.build.MoveRequest;
import rigbrief.build.Mover;
import rigbrief.build.OrderStatus;
import rigbrief.build.PartState;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Supplier;
import rigbrief.diagnostic.Nearest;
import rigbrief.diagnostic.Quotation;
import rigbrief.file.Known;
import rigbrief.proposal.Buildable;
import rigbrief.quantity.Money;
import rigbrief.report.OrderAnswer;
import rigbrief.report.OrderJson;
import rigbrief.report.OrderText;

/** Keeps the order of a build. */
@Command(
        name = "order",
        description =
                "Notes in a build file how far a part has come; without PART, shows how the order"
                        + " stands and what to do next.",
        footer = {"", "Next: rigbrief order BUILD"})
final class OrderCommand implements Callable<Integer> {
    private final Console console;

    @Spec private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "BUILD", description = "Build file; - is standard input.")
    private String build;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PART",
            description = "Id of a part of the build, or its slot.")
    private String part;

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "STATE",
            converter = StateWord.class,
            completionCandidates = StateWord.Words.class,
            description = "How far it has come: ${COMPLETION-CANDIDATES}.")
    private PartState state;

    @Option(
            names = "--units",
            paramLabel = "N",
            description = "How many units. Default: all that can come to the state.")
    private Integer units;

    @Option(
            names = "--from",
            paramLabel = "STATE",
            converter = StateWord.class,
            completionCandidates = StateWord.Words.class,
            description = "State they were in. Default: the one before on the way.")
    private PartState from;

    @Option(
            names = "--date",
            paramLabel = "DATE",
            converter = DateOf.class,
            description = "The day, such as 2026-11-20. Default: today.")
    private LocalDate date;

    @Option(
            names = "--supplier",
            paramLabel = "ID",
            description = "Supplier, where it is not the planned one.")
    private String supplier;

    @Option(names = "--paid", paramLabel = "MONEY", description = "What was paid for each.")
    private String paid;

    @Option(names = "--refunded", paramLabel = "MONEY", description = "What came back for each.")
    private String refunded;

    @Option(names = "--by", paramLabel = "NAME", description = "Who says so.")
    private String by;

    @Option(names = "--note", paramLabel = "TEXT", description = "Why, or anything else to keep.")
    private String note;

    @Option(
            names = "--aside",
            description = "Means the part that was replaced, not the one in its place.")
    private boolean aside;

    @Mixin private CatalogueOption catalogue;
    @Mixin private FormatOption format;

    OrderCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        refuseHalf();
        InputFiles files = new InputFiles(console);
        Known known = files.known(catalogue);
        if (part == null) {
            Optional<BuildRecord> filed = files.build(build, known);
            files.refuseFaulty();
            show(filed.orElseThrow(), known.catalogue(), Optional.empty());
        } else {
            move(known, files);
        }
        return ExitStatus.DONE.code();
    }

    private void refuseHalf() {
        if (part != null && state == null) {
            throw wrong("found no STATE behind " + part + ", expected one; write ordered, say");
        }
        boolean options =
                units != null
                        || from != null
                        || supplier != null
                        || paid != null
                        || refunded != null;
        if (part == null && (options || date != null || by != null || note != null || aside)) {
            throw wrong("found options of a move and no PART, expected PART and STATE");
        }
    }

    private void move(Known known, InputFiles files) throws Exception {
        Catalogue parts = known.catalogue();
        BuildRecord after;
        try (BuildFile file = BuildFile.read(build, known, files)) {
            after = moved(file.record(), parts);
            file.replace(after);
        }
        HistoryEntry last = after.history().get(after.history().size() - 1);
        show(after, parts, Optional.of((HistoryEntry.Move) last));
    }

    private BuildRecord moved(BuildRecord before, Catalogue parts) {
        try {
            return new Mover(before).move(request(parts));
        } catch (MoveRefused | IllegalArgumentException refused) {
            throw wrong(refused.getMessage());
        }
    }

    private MoveRequest request(Catalogue parts) {
        return new MoveRequest(
                part,
                state,
                Optional.ofNullable(from),
                units == null ? OptionalInt.empty() : OptionalInt.of(units),
                date == null ? Today.date() : date,
                text("--by", by),
                Optional.ofNullable(supplier).map(id -> known(id, parts)),
                money("--paid", paid, parts),
                money("--refunded", refunded, parts),
                text("--note", note),
                aside);
    }

    private static Optional<String> text(String option, String words) {
        if (words != null && (words.isBlank() || words.lines().count() > 1)) {
            throw new IllegalArgumentException(
                    option + ": found no words or more than a line, expected words in one line");
        }
        return Optional.ofNullable(words).map(String::strip);
    }

    private static Optional<Money> money(String option, String word, Catalogue parts) {
        return Optional.ofNullable(word).map(it -> Amount.of(option, it, parts.currency()));
    }

    private static String known(String id, Catalogue parts) {
        List<String> ids = parts.suppliers().stream().map(Supplier::id).toList();
        if (!ids.contains(id)) {
            throw new IllegalArgumentException(
                    "--supplier: found %s, expected a supplier of the catalogue: %s%s"
                            .formatted(
                                    Quotation.of(id),
                                    String.join(", ", ids),
                                    Nearest.to(id, ids)
                                            .map(near -> "; did you mean " + near + "?")
                                            .orElse("; name one of these")));
        }
        return id;
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private void show(BuildRecord record, Catalogue parts, Optional<HistoryEntry.Move> moved) {
        Brief brief = record.brief().orElseGet(() -> OpenBrief.of(record, parts));
        OrderAnswer answer =
                new OrderAnswer(
                        build,
                        parts,
                        OrderStatus.of(record, parts),
                        Buildable.of(record, brief, parts),
                        moved);
        format.print(console, new OrderText(), new OrderJson(), answer, next(answer.status()));
    }

    private String next(OrderStatus status) {
        String again = ShellWord.of(build);
        if (status.steps().isEmpty()) {
            return "rigbrief audit " + again + catalogue.repeated();
        }
        OrderStatus.Step step = status.steps().get(0);
        String meant = step.line().part();
        boolean twice =
                status.lines().stream().filter(line -> line.part().equals(meant)).count() > 1;
        return "rigbrief order %s %s %s%s%s"
                .formatted(
                        again,
                        twice ? step.line().slot().word() : meant,
                        state(step.action()).word(),
                        step.line().aside() ? " --aside" : "",
                        catalogue.repeated());
    }

    private static PartState state(OrderStatus.Action action) {
        return switch (action) {
            case SEND_BACK, CANCEL, CLAIM -> PartState.RETURNED;
            case ORDER -> PartState.ORDERED;
            case FETCH, AWAIT -> PartState.RECEIVED;
            case FIT -> PartState.FITTED;
        };
    }
}
