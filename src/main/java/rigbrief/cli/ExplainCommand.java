package rigbrief.cli;

import java.util.ArrayList;
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
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.Nearest;
import rigbrief.diagnostic.Quotation;
import rigbrief.explain.Explainers;
import rigbrief.explain.Explanation;
import rigbrief.explain.Topic;
import rigbrief.proposal.account.Accounts;
import rigbrief.proposal.account.ReplacementAccount;
import rigbrief.proposal.replace.Limits;
import rigbrief.proposal.replace.Replacer;
import rigbrief.proposal.replace.Trouble;
import rigbrief.report.ExplanationAnswer;
import rigbrief.report.ExplanationJson;
import rigbrief.report.ExplanationText;

/** Shows how a number of a build came about. */
@Command(
        name = "explain",
        description =
                "Shows formula, inputs, source and steps behind one number of a build; without"
                        + " --number, the names there are.",
        footer = {"", "Next: rigbrief audit BUILD"})
final class ExplainCommand implements Callable<Integer> {
    private final Console console;

    @Spec private CommandSpec spec;

    @Parameters(
            paramLabel = "BUILD",
            description = "Build file, or a list of part ids; - is standard input.")
    private String build;

    @Option(
            names = "--number",
            paramLabel = "NAME",
            description = "The number, such as heat.processor-c. Default: list the names.")
    private String number;

    @Option(
            names = "--brief",
            paramLabel = "BRIEF",
            description = "Brief to judge by. Default: the one in the build file, or none.")
    private String brief;

    @Mixin private TroubleOptions troubles;
    @Mixin private CatalogueOption catalogue;
    @Mixin private FormatOption format;

    ExplainCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        InputFiles.Subject read = new InputFiles(console).subject(catalogue, build, brief);
        Catalogue parts = read.parts();
        BuildRecord filed = read.filed();
        Brief wanted = read.brief();
        List<Topic> topics = new ArrayList<>(Explainers.topics(wanted, parts, filed.build()));
        int told = topics.size();
        topics.addAll(Accounts.topics(wanted, parts, answering(filed, wanted)));
        if (troubles.named()) {
            topics.addAll(replacement(filed, wanted, parts));
        }
        if (number != null
                && topics.subList(told, topics.size()).stream()
                        .anyMatch(topic -> topic.name().equals(number))) {
            console.progress("searching");
        }
        Optional<Explanation> explanation =
                number == null ? Optional.empty() : Optional.of(named(topics));
        ExplanationAnswer answer = new ExplanationAnswer(build, wanted.name(), topics, explanation);
        format.print(console, new ExplanationText(), new ExplanationJson(), answer, next(topics));
        return ExitStatus.DONE.code();
    }

    /** A brief that is named counts as the one that the build answers. */
    private BuildRecord answering(BuildRecord filed, Brief wanted) {
        return brief == null
                ? filed
                : new BuildRecord(
                        Optional.of(wanted),
                        filed.tier(),
                        filed.catalogueName(),
                        filed.catalogueDigest(),
                        filed.lines(),
                        filed.aside(),
                        filed.history());
    }

    private List<Topic> replacement(BuildRecord filed, Brief wanted, Catalogue parts) {
        Trouble trouble = troubles.trouble(filed, parts);
        Replacer replacer = new Replacer(Limits.usual(), troubles.disturbance(parts));
        return new ReplacementAccount(wanted, () -> replacer.replace(filed, trouble, parts))
                .topics();
    }

    private Explanation named(List<Topic> topics) {
        for (Topic topic : topics) {
            if (topic.name().equals(number)) {
                return topic.explanation().get();
            }
        }
        throw new ParameterException(spec.commandLine(), unknown(topics));
    }

    private String unknown(List<Topic> topics) {
        List<String> names = topics.stream().map(Topic::name).toList();
        String advice =
                Nearest.to(number, names)
                        .map(name -> "did you mean " + name + "?")
                        .orElse("leave --number out to see them");
        return "--number: found %s, expected a number of this build; %s"
                .formatted(Quotation.of(number), advice);
    }

    private String next(List<Topic> topics) {
        String again = ShellWord.of(build) + by() + catalogue.repeated();
        return number == null
                ? "rigbrief explain "
                        + again
                        + troubles.asked()
                        + " --number "
                        + topics.get(0).name()
                : "rigbrief audit " + again;
    }

    private String by() {
        return brief == null ? "" : " --brief " + ShellWord.of(brief);
    }
}
