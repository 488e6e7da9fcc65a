package rigbrief.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.PriceFile;
import rigbrief.report.CatalogueStats;
import rigbrief.report.CatalogueStatsJson;
import rigbrief.report.CatalogueStatsText;

/** Counts a catalogue through. */
@Command(
        name = "stats",
        description = "Counts a catalogue through: parts, prices, makers, offers, workloads.",
        footer = {"", "Next: rigbrief propose BRIEF"})
final class CatalogStatsCommand implements Callable<Integer> {
    private final Console console;

    @Mixin private CatalogueOption catalogue;
    @Mixin private FormatOption format;

    CatalogStatsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        Catalogue parts = new InputFiles(console).catalogue(catalogue);
        format.print(
                console,
                new CatalogueStatsText(),
                new CatalogueStatsJson(),
                CatalogueStats.of(parts, PriceFile.history(catalogue.folder(), parts)),
                "rigbrief propose BRIEF" + catalogue.repeated());
        return ExitStatus.DONE.code();
    }
}
