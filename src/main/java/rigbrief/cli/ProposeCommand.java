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
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;
import rigbrief.report.ProposalsJson;
import rigbrief.report.ProposalsText;

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
    @Mixin private FormatOption format;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder to write a build file per tier into.")
    private Path out;

    @Option(names = "--force", description = "Overwrites build files that are there.")
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
        Catalogue parts = files.catalogue(catalogue);
        Brief wanted = files.brief(brief, parts);
        Optional<BuildFolder> folder =
                Optional.ofNullable(out).map(dir -> new BuildFolder(dir, force));
        if (folder.isPresent()) {
            folder.get().refuseIfTaken(wanted);
        }
        console.progress("searching");
        Proposals answer = new Proposer(limits()).propose(wanted, parts);
        if (folder.isPresent()) {
            folder.get().write(answer);
        }
        format.print(console, new ProposalsText(), new ProposalsJson(), answer, next(answer));
        return status(answer).code();
    }

    private SearchLimits limits() {
        SearchLimits usual = SearchLimits.usual();
        return new SearchLimits(seed, usual.moves(), usual.steps(), Optional.ofNullable(time));
    }

    private static ExitStatus status(Proposals answer) {
        return answer.clash().isPresent() ? ExitStatus.IMPOSSIBLE : ExitStatus.DONE;
    }

    private String next(Proposals answer) {
        String again = "rigbrief propose " + ShellWord.of(brief) + catalogue.repeated();
        if (answer.clash().isPresent()) {
            return "loosen one of these in the brief, then " + again;
        }
        if (out == null) {
            return again + " --out builds";
        }
        Path best =
                new BuildFolder(out, force)
                        .file(
                                answer.brief(),
                                answer.proposals().get(answer.proposals().size() / 2).tier());
        return "rigbrief audit " + ShellWord.of(best) + catalogue.repeated();
    }
}
