package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.AcceptanceReader;
import rigbrief.file.AcceptanceReader.Measured;
import rigbrief.file.Known;
import rigbrief.file.SafeWriter;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.accept.Acceptance;
import rigbrief.measurement.accept.Acceptor;
import rigbrief.measurement.accept.Reading;
import rigbrief.measurement.accept.Sheet;
import rigbrief.report.AcceptanceAnswer;
import rigbrief.report.AcceptanceJson;
import rigbrief.report.AcceptanceText;
import rigbrief.report.SheetAnswer;
import rigbrief.report.SheetCsv;
import rigbrief.report.SheetJson;
import rigbrief.report.SheetText;
import rigbrief.report.Style;

/** Prints the acceptance sheet of a build, or judges it filled in. */
@Command(
        name = "accept",
        description =
                "Prints a build's acceptance sheet; with --measured, sets every promise against its"
                        + " measurement and ranks likely causes.",
        footer = {"", "Next: rigbrief accept BUILD --measured FILE"})
final class AcceptCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            paramLabel = "BUILD",
            description = "Build file, or a list of part ids; - is standard input.")
    private String build;

    @Option(
            names = "--brief",
            paramLabel = "BRIEF",
            description = "Brief to judge by. Default: the one in the build file, or none.")
    private String brief;

    @Option(
            names = "--measured",
            paramLabel = "FILE",
            description =
                    "The sheet filled in, or measurements as CSV, whose rows may name frame-time"
                            + " logs; may be given more than once; - is standard input.")
    private List<String> measured = new ArrayList<>();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "File to write the sheet into as CSV, to be filled in.")
    private Path out;

    @Option(names = "--force", description = "Overwrites a sheet that is there.")
    private boolean force;

    @Mixin private FrameLogOption logs;
    @Mixin private CatalogueOption catalogue;
    @Mixin private FormatOption format;

    AcceptCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        KeptInputs.of(catalogue, build, brief).refuse(out);
        InputFiles files = new InputFiles(console);
        Known known = files.known(catalogue);
        Optional<InputFiles.Subject> subject = files.subject(known, build, brief);
        if (subject.isEmpty()) {
            measured(files, known, Optional.empty());
            files.refuseFaulty();
        }
        Brief wanted = subject.orElseThrow().brief();
        Catalogue parts = subject.get().parts();
        Build built = subject.get().filed().build();
        WholeMachine.check(built, build);
        Acceptor acceptor = new Acceptor(wanted, parts, built);
        return measured.isEmpty()
                ? sheet(new SheetAnswer(build, wanted, parts, acceptor.sheet()))
                : judgement(acceptor, files, known);
    }

    private int sheet(SheetAnswer answer) throws NotWritten {
        if (out != null) {
            write(new SheetCsv().write(answer, Style.PLAIN));
        }
        String next =
                out == null
                        ? "rigbrief accept " + again() + " --out sheet.csv"
                        : "fill in the last column, then rigbrief accept "
                                + again()
                                + " --measured "
                                + ShellWord.of(out);
        format.print(console, new SheetText(), new SheetJson(), answer, next);
        return ExitStatus.DONE.code();
    }

    private void write(String text) throws NotWritten {
        try {
            SafeWriter.write(out, text, force);
        } catch (IOException e) {
            throw NotWritten.of(out, e, "choose another --out");
        }
    }

    /**
     * All that was measured.
     *
     * @param sheet the build's sheet; empty where the build has faults
     */
    private Measured measured(InputFiles files, Known known, Optional<Sheet> sheet) {
        AcceptanceReader reader = new AcceptanceReader(sheet, known, logs.column(), files.faults());
        List<Reading> readings = new ArrayList<>();
        List<Measurement> measurements = new ArrayList<>();
        for (String name : measured) {
            Optional<Measured> read =
                    name.equals(InputFiles.STANDARD_INPUT)
                            ? Optional.of(reader.read(console.in(), name))
                            : files.at(name, path -> Optional.of(reader.read(path)));
            read.map(Measured::readings).ifPresent(readings::addAll);
            read.map(Measured::measurements).ifPresent(measurements::addAll);
        }
        return new Measured(readings, measurements);
    }

    private int judgement(Acceptor acceptor, InputFiles files, Known known) throws BadInput {
        Measured read = measured(files, known, Optional.of(acceptor.sheet()));
        files.refuseFaulty();
        Catalogue parts = known.catalogue();
        Acceptance test = acceptor.judge(read.readings(), read.measurements());
        format.print(
                console,
                new AcceptanceText(),
                new AcceptanceJson(),
                new AcceptanceAnswer(build, parts, test),
                next(test));
        return (test.kept() ? ExitStatus.DONE : ExitStatus.BREAKS).code();
    }

    private String next(Acceptance test) {
        return test.kept()
                ? "rigbrief calibrate --measured FILE" + catalogue.repeated()
                : "mend what is likeliest, measure again, then rigbrief accept "
                        + again()
                        + " --measured FILE";
    }

    private String again() {
        String by = brief == null ? "" : " --brief " + ShellWord.of(brief);
        return ShellWord.of(build) + by + catalogue.repeated();
    }
}
