package rigbrief.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rigbrief.api.Rigbrief;
import rigbrief.batch.Batch;
import rigbrief.batch.BatchAnswer;
import rigbrief.batch.BatchBrief;
import rigbrief.batch.BatchBriefs;
import rigbrief.batch.BatchResult;
import rigbrief.batch.Ending;
import rigbrief.batch.Origin;
import rigbrief.batch.Shard;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.Known;
import rigbrief.file.SafeWriter;
import rigbrief.proposal.SearchLimits;
import rigbrief.report.BatchCsv;
import rigbrief.report.BatchText;

/** Answers many briefs into one folder. */
final class BatchRun {
    /** The gravest first. */
    private static final List<Ending> GRAVEST =
            List.of(
                    Ending.FAULT,
                    Ending.NOT_WRITTEN,
                    Ending.CALLED_OFF,
                    Ending.BAD_INPUT,
                    Ending.IMPOSSIBLE);

    /** What a search and its answer are reckoned to take beside the catalogue: a generous guess. */
    private static final long BYTES_PER_SEARCH = 96L << 20;

    private final Console console;
    private final CatalogueOption catalogue;
    private final Path out;
    private final boolean force;
    private final Shard shard;

    BatchRun(Console console, CatalogueOption catalogue, Path out, boolean force, Shard shard) {
        this.console = console;
        this.catalogue = catalogue;
        this.out = out;
        this.force = force;
        this.shard = shard;
    }

    /** Answers all briefs, prints and files the summary; the status of the gravest ending. */
    ExitStatus run(List<String> named, SearchLimits limits, ResultFiles files)
            throws BadInput, NotWritten {
        refuseStrangeSummary();
        InputFiles input = new InputFiles(console);
        Known known = input.known(catalogue);
        List<BatchBrief> briefs = briefs(named, input, known);
        input.refuseFaulty();
        keepInputs(briefs);
        Catalogue parts = known.catalogue();
        try (Interruption interruption = Interruption.listening()) {
            Rigbrief shop = Rigbrief.of(parts).within(limits).calledOffBy(interruption::calledOff);
            Batch batch =
                    new Batch(
                            shop::propose,
                            files,
                            new Origin(Rigbrief.version(), parts.digest(), options(limits, files)),
                            out,
                            force,
                            interruption::calledOff);
            RemainingTime remaining = new RemainingTime(console);
            BatchAnswer answer =
                    batch.run(briefs, threads(), done -> remaining.at(done, briefs.size()));
            write(new BatchCsv().write(answer, console.style()));
            console.print(new BatchText().write(answer, console.style()));
            NextLine.print(console, next(answer));
            console.flush();
            return status(answer);
        }
    }

    private List<BatchBrief> briefs(List<String> named, InputFiles input, Known known) {
        List<Path> paths =
                named.stream().flatMap(name -> input.at(name, Optional::of).stream()).toList();
        List<BatchBrief> briefs = shard.of(BatchBriefs.of(paths, input.faults()));
        if (!known.whole()) {
            // None will be answered: what is wrong with them is told beside the catalogue's faults.
            briefs.forEach(brief -> BriefReader.readRegular(brief.file(), known, input.faults()));
        }
        return briefs;
    }

    private void keepInputs(List<BatchBrief> briefs) throws NotWritten {
        String[] files = briefs.stream().map(it -> it.file().toString()).toArray(String[]::new);
        KeptInputs kept = KeptInputs.of(catalogue, files);
        kept.refuse(summary());
        for (BatchBrief brief : briefs) {
            kept.refuseFolder(out.resolve(brief.result()));
        }
    }

    /** Everything that the bytes of a result depend on, beside brief and catalogue. */
    private static String options(SearchLimits limits, ResultFiles files) {
        return "format=%s language=%s seed=%d moves=%d steps=%d time=%s"
                .formatted(
                        files.format(),
                        files.language().word(),
                        limits.seed(),
                        limits.moves(),
                        limits.steps(),
                        limits.time().map(Object::toString).orElse("none"));
    }

    /** As many searches at once as there are cores, and as the heap has room for. */
    private static int threads() {
        Runtime machine = Runtime.getRuntime();
        long room = Math.max(1, machine.maxMemory() / BYTES_PER_SEARCH);
        return (int) Math.min(machine.availableProcessors(), room);
    }

    private Path summary() {
        boolean whole = shard.equals(Shard.WHOLE);
        return out.resolve(
                whole
                        ? "summary.csv"
                        : "summary-%d-of-%d.csv".formatted(shard.number(), shard.of()));
    }

    /** A summary is made anew by each run; a file of that name that is none is somebody's own. */
    private void refuseStrangeSummary() throws NotWritten {
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new NotWritten(out + ": found a file, expected a folder; choose another --out");
        }
        Path file = summary();
        try {
            if (!force && Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isSummary(file)) {
                throw new NotWritten(
                        file
                                + ": found a file that is no summary; choose another --out, or add"
                                + " --force");
            }
        } catch (IOException e) {
            throw new NotWritten(
                    file + ": can't be read (" + NotWritten.cause(e) + "); look at it");
        }
    }

    private static boolean isSummary(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        byte[] head = BatchCsv.head().getBytes(StandardCharsets.UTF_8);
        try (InputStream in = Files.newInputStream(file)) {
            return Arrays.equals(in.readNBytes(head.length), head);
        }
    }

    private void write(String summary) throws NotWritten {
        try {
            SafeWriter.write(summary(), summary, true);
        } catch (IOException e) {
            throw NotWritten.of(summary(), e, "choose another --out");
        }
    }

    private static ExitStatus status(BatchAnswer answer) {
        for (Ending ending : GRAVEST) {
            if (answer.count(ending) > 0) {
                return status(ending);
            }
        }
        return ExitStatus.DONE;
    }

    private static ExitStatus status(Ending ending) {
        return switch (ending) {
            case PROPOSED -> ExitStatus.DONE;
            case IMPOSSIBLE -> ExitStatus.IMPOSSIBLE;
            case BAD_INPUT -> ExitStatus.BAD_INPUT;
            case NOT_WRITTEN, CALLED_OFF -> ExitStatus.WRONG_USE;
            case FAULT -> ExitStatus.INTERNAL_FAULT;
        };
    }

    private String next(BatchAnswer answer) {
        if (!answer.failures().isEmpty()) {
            return "mend what is listed, then run the same command again: what is answered is kept";
        }
        return answer.results().stream()
                .filter(result -> result.ending() == Ending.PROPOSED)
                .findFirst()
                .map(this::audit)
                .orElse("loosen the briefs, then run the same command again");
    }

    private String audit(BatchResult result) {
        String tier = result.answered().orElseThrow().totals().get(0).tier();
        String brief = result.brief().file().getFileName().toString();
        int dot = brief.lastIndexOf('.');
        String name = dot > 0 ? brief.substring(0, dot) : brief;
        Path folder = out.resolve(result.brief().result());
        boolean variants = tier.equals(rigbrief.batch.TierTotal.VARIANTS);
        String which = variants ? BuildFolder.FIRST : tier;
        return "rigbrief audit "
                + ShellWord.of(folder.resolve(name + "-" + which + ".build.yaml"))
                + catalogue.repeated();
    }
}
