package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.file.FrameColumn;
import rigbrief.file.Known;
import rigbrief.file.MeasurementReader;
import rigbrief.file.OverlayWriter;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.calibrate.Calibration;
import rigbrief.measurement.calibrate.Calibrator;
import rigbrief.measurement.calibrate.Terms;
import rigbrief.report.CalibrationAnswer;
import rigbrief.report.CalibrationJson;
import rigbrief.report.CalibrationText;
import rigbrief.wording.Counted;

/** Fits demands and rates to measurements. */
@Command(
        name = "calibrate",
        description =
                "Fits the demands of workloads and the rates of parts to measurements, and writes"
                        + " them as an overlay over the catalogue.",
        footer = {"", "Next: rigbrief propose BRIEF --catalog DIR --catalog OVERLAY"})
final class CalibrateCommand implements Callable<Integer> {
    private final Console console;

    @Option(
            names = "--measured",
            paramLabel = "FILE",
            required = true,
            arity = "1..*",
            description =
                    "Measurements as CSV, one workload on one machine per row, which may name"
                            + " frame-time logs; - is standard input.")
    private List<String> measured;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder to write the overlay into: workloads.yaml and rates.csv.")
    private Path out;

    @Option(names = "--force", description = "Overwrites an overlay that is there.")
    private boolean force;

    @Mixin private FrameLogOption logs;
    @Mixin private CatalogueOption catalogue;
    @Mixin private FormatOption format;

    CalibrateCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        refuseIfTaken();
        for (Path file : out == null ? List.<Path>of() : OverlayWriter.taken(out)) {
            KeptInputs.of(catalogue, measured.toArray(String[]::new)).refuse(file);
        }
        InputFiles files = new InputFiles(console);
        Known known = files.known(catalogue);
        List<Measurement> measurements = new ArrayList<>();
        for (String name : measured) {
            read(name, files, known).ifPresent(measurements::addAll);
        }
        files.refuseFaulty();
        Catalogue parts = known.catalogue();
        Calibrator calibrator = new Calibrator(parts, Terms.usual());
        refuseImpossible(calibrator, measurements);
        console.progress("fitting");
        Calibration calibration = calibrator.calibrate(measurements);
        CalibrationAnswer answer = new CalibrationAnswer(measured, calibration, write(calibration));
        format.print(console, new CalibrationText(), new CalibrationJson(), answer, next());
        return ExitStatus.DONE.code();
    }

    private Optional<List<Measurement>> read(String name, InputFiles files, Known known) {
        console.progress("reading the measurements " + name);
        FrameColumn column = logs.column();
        Faults faults = files.faults();
        return name.equals(InputFiles.STANDARD_INPUT)
                ? Optional.of(
                        MeasurementReader.ofMachines(console.in(), name, known, column, faults))
                : files.at(
                        name,
                        path ->
                                Optional.of(
                                        MeasurementReader.ofMachines(path, known, column, faults)));
    }

    private static void refuseImpossible(Calibrator calibrator, List<Measurement> measurements)
            throws BadInput {
        if (measurements.stream().noneMatch(calibrator::possible)) {
            Measurement first = measurements.get(0);
            throw new BadInput(
                    new Fault(
                            first.file(),
                            first.line(),
                            1,
                            "row",
                            "work that the machine can't do by the catalogue",
                            "at least one measurement that it can",
                            "look whether parts and settings are the right ones"));
        }
    }

    private void refuseIfTaken() throws NotWritten {
        List<Path> taken = out == null || force ? List.of() : OverlayWriter.taken(out);
        if (!taken.isEmpty()) {
            throw new NotWritten(
                    taken.get(0)
                            + ": found a file of that name; choose another --out, or add --force");
        }
    }

    private List<String> write(Calibration it) throws NotWritten {
        if (out == null) {
            return List.of();
        }
        String remark =
                "Fitted to %s of %s, over the catalogue %s (%s)."
                        .formatted(
                                Counted.of(it.measurements(), "measurement"),
                                Counted.of(it.machines(), "machine"),
                                it.catalogue().name(),
                                it.catalogue().digest());
        try {
            OverlayWriter.write(out, it.workloads(), it.partRates(), List.of(remark), force);
        } catch (IOException e) {
            throw NotWritten.of(out, e, "choose another --out");
        }
        return OverlayWriter.taken(out).stream().map(Path::toString).toList();
    }

    private String next() {
        if (out != null) {
            return "rigbrief propose BRIEF" + catalogue.spelt() + " --catalog " + ShellWord.of(out);
        }
        return "rigbrief calibrate --measured "
                + measured.stream().map(ShellWord::of).collect(Collectors.joining(" "))
                + catalogue.repeated()
                + " --out fitted";
    }
}
