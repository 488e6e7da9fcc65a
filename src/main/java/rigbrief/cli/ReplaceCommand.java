package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigbrief.brief.Brief;
import rigbrief.brief.WorkloadNeed;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.Quotation;
import rigbrief.file.BuildWriter;
import rigbrief.file.Known;
import rigbrief.file.SafeWriter;
import rigbrief.proposal.replace.Disturbance;
import rigbrief.proposal.replace.Limits;
import rigbrief.proposal.replace.Replacement;
import rigbrief.proposal.replace.Replacer;
import rigbrief.proposal.replace.StockWatch;
import rigbrief.proposal.replace.Trouble;
import rigbrief.proposal.replace.Watch;
import rigbrief.report.ReplacementAnswer;
import rigbrief.report.ReplacementJson;
import rigbrief.report.ReplacementText;
import rigbrief.report.WatchAnswer;
import rigbrief.report.WatchJson;
import rigbrief.report.WatchText;

/** Replaces parts of a filed build, disturbing the rest as little as possible. */
@Command(
        name = "replace",
        description =
                "Replaces parts that are gone, faulty or dearer, with the least change that keeps"
                        + " every must; or sets a build against a newer catalogue.",
        footer = {"", "Next: rigbrief order BUILD"})
final class ReplaceCommand implements Callable<Integer> {
    private final Console console;

    @Spec private CommandSpec spec;

    @Parameters(
            paramLabel = "BUILD",
            description = "Build file, or a list of part ids; - is standard input.")
    private String build;

    @Option(
            names = "--against",
            paramLabel = "NEW_CATALOG",
            description =
                    "Folder of a newer catalogue to set the build against; --catalog is the one it"
                            + " was made with.")
    private Path against;

    @Option(
            names = "--way",
            paramLabel = "N",
            defaultValue = "1",
            description =
                    "Which way --out files, 1 to 3. Default: ${DEFAULT-VALUE}, the least change.")
    private int way;

    @Option(names = "--out", paramLabel = "FILE", description = "Build file to write.")
    private Path out;

    @Option(names = "--force", description = "Overwrites the file if it is there.")
    private boolean force;

    @Mixin private TroubleOptions troubles;
    @Mixin private CatalogueOption catalogue;
    @Mixin private FormatOption format;

    ReplaceCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        // The build itself may be replaced: what is written is the same build further on.
        KeptInputs.of(catalogue).and(against).refuse(out);
        InputFiles files = new InputFiles(console);
        Known known = files.known(catalogue);
        if (!force || out == null || !BuildFile.isAt(build, out)) {
            Optional<BuildRecord> read = files.build(build, known);
            Optional<Known> newer = Optional.ofNullable(against).map(files::known);
            files.refuseFaulty();
            return answer(read.orElseThrow(), known.catalogue(), newer, this::write);
        }
        Optional<Known> newer = Optional.ofNullable(against).map(files::known);
        // From before it is read until it is written: what another run notes meanwhile waits.
        try (BuildFile file = BuildFile.read(build, known, files)) {
            return answer(file.record(), known.catalogue(), newer, file::replace);
        }
    }

    /** Puts a build where it is wanted. */
    @FunctionalInterface
    private interface Filing {
        void file(BuildRecord after) throws NotWritten;
    }

    private int answer(BuildRecord filed, Catalogue parts, Optional<Known> newer, Filing filing)
            throws NotWritten {
        Trouble trouble = troubles.trouble(filed, parts);
        Disturbance disturbance = troubles.disturbance(parts);
        Catalogue today = newer.isEmpty() ? parts : newer(newer.get().catalogue(), filed, parts);
        console.progress("searching");
        return against != null && trouble.named().isEmpty()
                ? watch(filed, today, disturbance, filing)
                : replace(filed, trouble, today, disturbance, filing);
    }

    private int replace(
            BuildRecord filed,
            Trouble trouble,
            Catalogue today,
            Disturbance disturbance,
            Filing filing)
            throws NotWritten {
        Replacement answer =
                new Replacer(Limits.usual(), disturbance).replace(filed, trouble, today);
        write(answer, filing);
        format.print(
                console,
                new ReplacementText(),
                new ReplacementJson(),
                new ReplacementAnswer(build, answer),
                next(answer));
        return (answer.impossible() ? ExitStatus.BREAKS : ExitStatus.DONE).code();
    }

    private int watch(BuildRecord filed, Catalogue today, Disturbance disturbance, Filing filing)
            throws NotWritten {
        Watch answer = new StockWatch(Limits.usual(), disturbance).watch(filed, today);
        if (out != null && answer.repair().isPresent()) {
            write(answer.repair().get(), filing);
        }
        format.print(
                console,
                new WatchText(),
                new WatchJson(),
                new WatchAnswer(build, answer),
                next(answer));
        return (answer.fails() ? ExitStatus.BREAKS : ExitStatus.DONE).code();
    }

    private Catalogue newer(Catalogue today, BuildRecord filed, Catalogue old) {
        if (!today.currency().equals(old.currency())) {
            throw wrong(
                    "--against: found a catalogue in %s, expected %s, the build's currency; name another"
                            .formatted(today.currency(), old.currency()));
        }
        for (WorkloadNeed need : filed.brief().map(Brief::workloads).orElse(List.of())) {
            if (today.workload(need.use()).isEmpty()) {
                throw wrong(
                        "--against: found no workload %s in the catalogue, expected all that the brief uses; add it to its workloads.yaml"
                                .formatted(Quotation.of(need.use())));
            }
        }
        return today;
    }

    private void write(Replacement answer, Filing filing) throws NotWritten {
        if (out == null || answer.impossible()) {
            return;
        }
        if (way < 1 || way > answer.ways().size()) {
            throw wrong(
                    "--way: found %d, expected 1 to %d, the ways there are"
                            .formatted(way, answer.ways().size()));
        }
        filing.file(answer.ways().get(way - 1).record());
    }

    private void write(BuildRecord after) throws NotWritten {
        try {
            SafeWriter.write(out, BuildWriter.write(after), force);
        } catch (IOException e) {
            throw NotWritten.of(out, e, "choose another --out");
        }
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private String next(Replacement answer) {
        String newer = against == null ? "" : " --against " + ShellWord.of(against);
        String today =
                against == null ? catalogue.repeated() : " --catalog " + ShellWord.of(against);
        if (answer.impossible()) {
            return "loosen the brief, then rigbrief propose BRIEF" + today;
        }
        if (answer.nothingToDo()) {
            return "rigbrief order " + ShellWord.of(build) + catalogue.repeated();
        }
        return out == null
                ? "rigbrief replace "
                        + ShellWord.of(build)
                        + troubles.asked()
                        + catalogue.repeated()
                        + newer
                        + " --out changed.build.yaml"
                : "rigbrief order " + ShellWord.of(out) + today;
    }

    private String next(Watch answer) {
        if (answer.fails()) {
            return "loosen the brief, then rigbrief propose BRIEF --catalog "
                    + ShellWord.of(against);
        }
        String again = " " + ShellWord.of(build) + catalogue.repeated();
        if (answer.repair().isPresent()) {
            return out == null
                    ? "rigbrief replace"
                            + again
                            + " --against "
                            + ShellWord.of(against)
                            + " --out changed.build.yaml"
                    : "rigbrief order " + ShellWord.of(out) + " --catalog " + ShellWord.of(against);
        }
        return answer.orderFirst().isEmpty()
                ? "rigbrief order" + again
                : "rigbrief order %s %s ordered%s"
                        .formatted(
                                ShellWord.of(build),
                                answer.orderFirst().get(0).part().id(),
                                catalogue.repeated());
    }
}
