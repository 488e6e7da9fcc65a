package rigbrief.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rigbrief.catalogue.PartRates;
import rigbrief.catalogue.Workload;

/** Writes an overlay: what {@link CatalogueReader} lays over a catalogue. */
public final class OverlayWriter {
    /** Stands in an overlay's folder while one of its files is new and the other old. */
    static final String UNFINISHED = ".overlay.unfinished";

    private static final String HEADER =
            "part,tflops,bandwidth_gbs,ray_rate,rate_single,rate_all,read_mbs,write_mbs\n";

    private OverlayWriter() {}

    /** The files that an overlay in a folder has. */
    private static List<Path> files(Path folder) {
        return List.of(folder.resolve(CatalogueReader.WORKLOADS), folder.resolve(RatesFile.NAME));
    }

    /** Those of an overlay's files that are there already. */
    public static List<Path> taken(Path folder) {
        List<Path> taken = new ArrayList<>();
        for (Path file : files(folder)) {
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                taken.add(file);
            }
        }
        return taken;
    }

    /**
     * Writes an overlay, each file whole; both are written, so that none stays from before, and
     * readers refuse it in between: demands and rates were fitted together.
     *
     * @param remarks what is said above the workloads, line by line
     * @param force whether files that are there may be replaced
     * @throws FileRefused when one is there and may not
     * @throws IOException when a file can't be written
     */
    public static void write(
            Path folder,
            List<Workload> workloads,
            List<PartRates> rates,
            List<String> remarks,
            boolean force)
            throws IOException {
        FileSet both = FileSet.marked(folder, "overlay", UNFINISHED, (path, step) -> {});
        both.add(CatalogueReader.WORKLOADS, WorkloadWriter.write(workloads, remarks));
        both.add(RatesFile.NAME, rates(rates));
        both.write(force);
    }

    private static String rates(List<PartRates> all) {
        StringBuilder csv = new StringBuilder(HEADER);
        for (PartRates rates : all) {
            csv.append(
                    String.join(
                            ",",
                            rates.part(),
                            cell(rates.tflops()),
                            cell(rates.bandwidthGbs()),
                            cell(rates.rayRate()),
                            cell(rates.rateSingle()),
                            cell(rates.rateAll()),
                            cell(rates.readMbs()),
                            cell(rates.writeMbs())));
            csv.append('\n');
        }
        return csv.toString();
    }

    private static String cell(OptionalDouble rate) {
        return rate.isPresent() ? WorkloadWriter.figure(rate.getAsDouble()) : "";
    }
}
