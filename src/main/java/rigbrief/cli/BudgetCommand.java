package rigbrief.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.Known;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.BudgetFinder;
import rigbrief.proposal.budget.BudgetLimits;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;

/** Tells what the goals of a brief cost. */
@Command(
        name = "budget",
        description = {
            "Tells what the goals of a brief cost: the least total of each and of all, the price of"
                    + " every must, and how utility grows with money."
        },
        footer = {"", "Next: rigbrief propose BRIEF"})
final class BudgetCommand implements Callable<Integer> {
    private final Console console;

    @Spec private CommandSpec spec;

    @Parameters(paramLabel = "BRIEF", description = "Brief, YAML or JSON; - is standard input.")
    private String brief;

    @Mixin private CatalogueOption catalogue;

    @Option(
            names = "--up-to",
            paramLabel = "MONEY",
            description = "How far to look for the front. Default: the ceiling.")
    private String upTo;

    @Option(
            names = "--goal",
            paramLabel = "NEED",
            description =
                    "Needs to look at, such as noise, memory or the id of a workload. Default: all.")
    private List<String> wanted = new ArrayList<>();

    @Mixin private LanguageOption language;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "How to write: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
    private BudgetFormat format;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "File to write into. Default: standard output.")
    private Path out;

    @Option(names = "--force", description = "Overwrites a file that is there.")
    private boolean force;

    BudgetCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        if (out != null) {
            PageOutput.refuseIfTaken(out, force);
            KeptInputs.of(catalogue, brief).refuse(out);
        }
        InputFiles files = new InputFiles(console);
        Known known = files.known(catalogue);
        Optional<Brief> read = files.brief(brief, known);
        files.refuseFaulty();
        Catalogue parts = known.catalogue();
        Brief needed = read.orElseThrow();
        Set<String> goals = goals(needed, parts);
        long upToMinor = upToMinor(needed);
        try (Interruption interruption = Interruption.listening()) {
            BudgetFinder finder =
                    new BudgetFinder(
                            BudgetLimits.usual(),
                            interruption::calledOff,
                            new RemainingTime(console));
            Budget budget =
                    finder.find(
                            needed,
                            parts,
                            upToMinor,
                            need -> goals.isEmpty() || goals.contains(need.id()));
            print(budget);
            console.flush();
            return status(budget).code();
        }
    }

    private void print(Budget budget) throws NotWritten {
        String text =
                format.write(
                        budget,
                        unicode(System.getenv()),
                        out == null ? console.style() : console.style().plain(),
                        language.words(budget.brief()));
        if (out == null) {
            console.print(text);
        } else {
            new PageOutput(console, force).write(text.getBytes(StandardCharsets.UTF_8), out);
        }
        if (format == BudgetFormat.TEXT && out == null) {
            NextLine.print(console, next(budget));
        } else {
            console.remark("Next: " + next(budget));
        }
    }

    private static ExitStatus status(Budget budget) {
        return budget.clash().isPresent() ? ExitStatus.IMPOSSIBLE : ExitStatus.DONE;
    }

    private String next(Budget budget) {
        String again = ShellWord.of(brief) + catalogue.repeated();
        if (budget.clash().isPresent()) {
            return "let go of something in the brief, then rigbrief budget " + again;
        }
        boolean over =
                budget.musts().best().isPresent()
                        && budget.musts().totalMinor() > budget.upToMinor();
        if (over) {
            long units =
                    (long)
                            Math.ceil(
                                    budget.musts().totalMinor()
                                            * 1.2
                                            / Math.pow(
                                                    10, budget.brief().ceiling().amount().scale()));
            return "rigbrief budget " + again + " --up-to " + units;
        }
        return "rigbrief propose " + again;
    }

    /** Whether the locale's letters go beyond ASCII; output is UTF-8 in any case. */
    static boolean unicode(Map<String, String> environment) {
        for (String name : List.of("LC_ALL", "LC_CTYPE", "LANG")) {
            String locale = environment.getOrDefault(name, "");
            if (!locale.isEmpty()) {
                return locale.toLowerCase(Locale.ROOT).replace("-", "").contains("utf8");
            }
        }
        return false;
    }

    private Set<String> goals(Brief needed, Catalogue parts) {
        Needs needs = Needs.of(needed, parts);
        Set<String> known = new LinkedHashSet<>();
        for (Need need : needs.musts()) {
            if (need.kind() == Need.Kind.MUST || need.kind() == Need.Kind.OWN) {
                known.add(need.id());
            }
        }
        needs.wishes().forEach(need -> known.add(need.id()));
        for (String goal : wanted) {
            if (!known.contains(goal)) {
                throw new ParameterException(
                        spec.commandLine(),
                        "--goal: found '%s', expected a need of the brief: %s"
                                .formatted(goal, String.join(", ", known)));
            }
        }
        return new LinkedHashSet<>(wanted);
    }

    private long upToMinor(Brief needed) {
        if (upTo == null) {
            return needed.ceiling().minorUnits();
        }
        try {
            return Amount.of("--up-to", upTo, needed.currency()).minorUnits();
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(spec.commandLine(), wrong.getMessage());
        }
    }
}
