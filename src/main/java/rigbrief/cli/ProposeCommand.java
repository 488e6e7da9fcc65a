package rigbrief.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
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
import rigbrief.api.FrontSearch;
import rigbrief.api.Rigbrief;
import rigbrief.batch.Shard;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.Known;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.SearchLimits;
import rigbrief.report.ProposalsJson;
import rigbrief.report.ProposalsText;
import rigbrief.report.page.ProposalPage;
import rigbrief.report.page.Words;

/** Proposes builds for a brief. */
@Command(
        name = "propose",
        description = "Proposes up to three builds for a brief, with reasons and proof.",
        footer = {"", "Next: rigbrief audit BUILD"})
final class ProposeCommand implements Callable<Integer> {
    private final Console console;

    @Spec private CommandSpec spec;

    @Parameters(
            paramLabel = "BRIEF",
            arity = "1..*",
            description =
                    "Brief, YAML or JSON; - is standard input. Several, or a folder of them, are"
                            + " answered one result each, into --out.")
    private List<String> briefs;

    @Mixin private CatalogueOption catalogue;
    @Mixin private LanguageOption language;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description =
                    "How to write: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}. html and pdf"
                            + " make a page for the client.")
    private ProposalFormat format;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Folder to write a build file per tier into, and the page with html or pdf;"
                            + " or the file of the page alone, such as offer.html. For several"
                            + " briefs the folder of all results.")
    private Path out;

    @Option(names = "--force", description = "Overwrites files that are there.")
    private boolean force;

    @Option(
            names = "--shard",
            paramLabel = "K/N",
            converter = ShardOption.class,
            description =
                    "Of several briefs, answers share K of N alone, for N machines that share the"
                            + " work.")
    private Shard shard;

    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = TimeLimit.class,
            description = "Ceiling on the search's time, such as 2s. Default: steps alone.")
    private Duration time;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "Seed of the search. Default: ${DEFAULT-VALUE}.")
    private long seed;

    ProposeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        return (several() ? batch() : single(briefs.get(0))).code();
    }

    private boolean several() {
        return shard != null || briefs.size() > 1 || isFolder(briefs.get(0));
    }

    private static boolean isFolder(String name) {
        try {
            return Files.isDirectory(Path.of(name));
        } catch (InvalidPathException noName) {
            // Reading it as a brief tells what is wrong with it.
            return false;
        }
    }

    private ExitStatus batch() throws Exception {
        if (out == null) {
            throw new ParameterException(
                    spec.commandLine(),
                    "found several briefs and no --out, expected the folder of their results;"
                            + " write --out answers");
        }
        if (briefs.contains("-")) {
            throw new ParameterException(
                    spec.commandLine(),
                    "found - among several briefs, expected files; name the file");
        }
        ResultFiles files = new ResultFiles(format, language, Optional.ofNullable(time));
        return new BatchRun(console, catalogue, out, force, shard == null ? Shard.WHOLE : shard)
                .run(briefs, limits(), files);
    }

    private ExitStatus single(String brief) throws Exception {
        InputFiles files = new InputFiles(console);
        Known known = files.known(catalogue);
        Optional<Brief> read = files.brief(brief, known);
        files.refuseFaulty();
        Catalogue parts = known.catalogue();
        Brief wanted = read.orElseThrow();
        Optional<BuildFolder> folder = folder();
        if (folder.isPresent()) {
            folder.get().refuseIfTaken(wanted);
        }
        if (format.isPage() && out != null) {
            PageOutput.refuseIfTaken(page(wanted), force);
            KeptInputs.of(catalogue, brief).refuse(page(wanted));
        }
        try (Interruption interruption = Interruption.listening()) {
            console.progress("searching");
            Rigbrief shop =
                    Rigbrief.of(parts).within(limits()).calledOffBy(interruption::calledOff);
            Proposals answer = shop.propose(wanted);
            if (folder.isPresent()) {
                folder.get().write(answer);
            }
            if (format.isPage()) {
                writePage(answer);
            } else {
                FormatOption.print(
                        console,
                        format == ProposalFormat.JSON,
                        new ProposalsText(),
                        new ProposalsJson(),
                        answer,
                        next(answer));
            }
            return status(answer);
        }
    }

    /** The folder for build files; none when a page alone is asked for. */
    private Optional<BuildFolder> folder() {
        boolean pageAlone = format.isPage() && out != null && namesPage();
        return pageAlone
                ? Optional.empty()
                : Optional.ofNullable(out).map(dir -> new BuildFolder(dir, force));
    }

    private boolean namesPage() {
        return String.valueOf(out.getFileName()).endsWith(format.ending());
    }

    /** The file of the page; null for standard output. */
    private Path page(Brief wanted) {
        if (out == null || namesPage()) {
            return out;
        }
        return out.resolve(wanted.name() + format.ending());
    }

    private void writePage(Proposals answer) throws NotWritten {
        console.progress("searching between the proposals");
        Proposals wide = FrontSearch.widened(answer, Optional.ofNullable(time));
        Words words = language.words(answer.brief());
        byte[] bytes =
                PageOutput.bytes(ProposalPage.of(wide, words), words, format == ProposalFormat.PDF);
        new PageOutput(console, force).write(bytes, page(answer.brief()));
        console.remark("Next: " + next(answer));
    }

    private SearchLimits limits() {
        SearchLimits usual = SearchLimits.usual();
        return new SearchLimits(seed, usual.moves(), usual.steps(), Optional.ofNullable(time));
    }

    private static ExitStatus status(Proposals answer) {
        return answer.impossible() ? ExitStatus.IMPOSSIBLE : ExitStatus.DONE;
    }

    private String next(Proposals answer) {
        String again = "rigbrief propose " + ShellWord.of(briefs.get(0)) + catalogue.repeated();
        if (answer.impossible()) {
            return "loosen one of these in the brief, then " + again;
        }
        if (folder().isEmpty()) {
            return again + " --out builds";
        }
        if (answer.mix().isPresent()) {
            Path first = new BuildFolder(out, force).file(answer.brief(), BuildFolder.FIRST);
            return "rigbrief order " + ShellWord.of(first) + catalogue.repeated();
        }
        Path best =
                new BuildFolder(out, force)
                        .file(
                                answer.brief(),
                                answer.proposals().get(answer.proposals().size() / 2).tier());
        return "rigbrief audit " + ShellWord.of(best) + catalogue.repeated();
    }
}
