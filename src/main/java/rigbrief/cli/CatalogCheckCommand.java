package rigbrief.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.CatalogueReader.Reading;
import rigbrief.file.PriceFile;
import rigbrief.report.CatalogueCheck;
import rigbrief.report.CatalogueCheckJson;
import rigbrief.report.CatalogueCheckText;
import rigbrief.report.CatalogueStats;

/** Checks a catalogue; faults are its result, so they go where results go. */
@Command(
        name = "check",
        description = "Lists every fault of a catalogue, and what is worth knowing about it.",
        footer = {"", "Next: rigbrief catalog stats"})
final class CatalogCheckCommand implements Callable<Integer> {
    private final Console console;

    @Mixin private CatalogueOption catalogue;
    @Mixin private FormatOption format;

    CatalogCheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        CatalogueCheck check = check();
        boolean sound = check.faultCount() == 0;
        String next =
                sound
                        ? "rigbrief catalog stats"
                        : "mend what is listed, then rigbrief catalog check";
        format.print(
                console,
                new CatalogueCheckText(),
                new CatalogueCheckJson(),
                check,
                next + catalogue.repeated());
        return (sound ? ExitStatus.DONE : ExitStatus.BAD_INPUT).code();
    }

    private CatalogueCheck check() {
        String folder = catalogue.shown();
        try {
            Reading reading = new InputFiles(console).reading(catalogue);
            CatalogueStats stats =
                    CatalogueStats.of(
                            reading.catalogue(),
                            PriceFile.history(catalogue.folder(), reading.catalogue()));
            return new CatalogueCheck(folder, Optional.of(stats), List.of(), 0, reading.notes());
        } catch (BadInput bad) {
            return new CatalogueCheck(
                    folder, Optional.empty(), bad.faults(), bad.count(), List.of());
        }
    }
}
