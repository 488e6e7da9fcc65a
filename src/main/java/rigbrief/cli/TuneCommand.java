package rigbrief.cli;

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
import rigbrief.catalogue.Catalogue;
import rigbrief.measurement.tune.HeldScenes;
import rigbrief.measurement.tune.TuneTerms;
import rigbrief.measurement.tune.Tuner;
import rigbrief.report.TuningAnswer;
import rigbrief.report.TuningJson;
import rigbrief.report.TuningText;

/** Picks settings and frame caps. */
@Command(
        name = "tune",
        description =
                "Picks each title's settings, with the least visible loss that holds the brief's"
                        + " rate, and a steady frame cap.",
        footer = {"", "Next: rigbrief accept BUILD"})
final class TuneCommand implements Callable<Integer> {
    private static final int LEAST_FPS = 10;
    private static final int MOST_FPS = 1_000;
    private static final int MOST_HZ = 200;

    private final Console console;

    @Spec private CommandSpec spec;

    @Parameters(
            paramLabel = "BUILD",
            description = "Build file, or a list of part ids; - is standard input.")
    private String build;

    @Option(
            names = "--brief",
            paramLabel = "BRIEF",
            description = "Brief to tune for. Default: the one in the build file.")
    private String brief;

    @Option(
            names = "--target",
            paramLabel = "FPS",
            description =
                    "Rate to hold in every title; the brief's own rates no longer bind. Default:"
                            + " what the brief asks of each.")
    private Integer target;

    @Option(
            names = "--hold-in",
            paramLabel = "SCENES",
            defaultValue = HeldIn.USUAL,
            converter = HeldIn.class,
            description =
                    "Where it has to hold: all, all-but-worst, or a share of play time such as"
                            + " 90%%. Default: ${DEFAULT-VALUE}.")
    private HeldScenes heldIn;

    @Option(
            names = "--variable-from",
            paramLabel = "HZ",
            description =
                    "Where the screen's variable refresh begins; 0 for a screen without. Default:"
                            + " what the build's display states.")
    private Integer variableFrom;

    @Mixin private CatalogueOption catalogue;
    @Mixin private FormatOption format;

    TuneCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        TuneTerms terms =
                new TuneTerms(
                        within("--target", target, LEAST_FPS, MOST_FPS, "frames per second"),
                        heldIn,
                        within("--variable-from", variableFrom, 0, MOST_HZ, "Hz"));
        InputFiles.Subject read = new InputFiles(console).subject(catalogue, build, brief);
        Catalogue parts = read.parts();
        BuildRecord filed = read.filed();
        Brief wanted = read.brief();
        WholeMachine.check(filed.build(), build);
        TuningAnswer answer =
                new TuningAnswer(build, parts, Tuner.tune(wanted, parts, filed.build(), terms));
        format.print(console, new TuningText(), new TuningJson(), answer, next(wanted));
        return ExitStatus.DONE.code();
    }

    private OptionalInt within(String option, Integer value, int least, int most, String unit) {
        if (value == null) {
            return OptionalInt.empty();
        }
        if (value < least || value > most) {
            throw new ParameterException(
                    spec.commandLine(),
                    "%s: found %d, expected %d to %d %s; correct it"
                            .formatted(option, value, least, most, unit));
        }
        return OptionalInt.of(value);
    }

    private String next(Brief wanted) {
        String again = ShellWord.of(build) + by() + catalogue.repeated();
        return wanted.name().equals(OpenBrief.NAME)
                ? "rigbrief tune " + again + " --brief BRIEF"
                : "rigbrief accept " + again;
    }

    private String by() {
        return brief == null ? "" : " --brief " + ShellWord.of(brief);
    }
}
