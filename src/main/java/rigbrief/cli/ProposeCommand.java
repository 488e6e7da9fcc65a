package rigbrief.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.Known;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Proposer;
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

    @Parameters(paramLabel = "BRIEF", description = "Brief, YAML or JSON; - is standard input.")
    private String brief;

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
                            + " or the file of the page alone, such as offer.html.")
    private Path out;

    @Option(names = "--force", description = "Overwrites files that are there.")
    private boolean force;

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
            Proposals answer =
                    new Proposer(limits(), interruption::calledOff).propose(wanted, parts);
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
            return status(answer).code();
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
        String again = "rigbrief propose " + ShellWord.of(brief) + catalogue.repeated();
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
