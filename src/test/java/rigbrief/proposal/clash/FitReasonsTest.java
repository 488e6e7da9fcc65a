package rigbrief.proposal.clash;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;

class FitReasonsTest {
    private static final Path SAMPLE = Path.of("catalog-sample");

    @TempDir Path folder;
    @TempDir Path briefs;

    /** Two cards reach one opening too far, by the same: the rows' order must not choose. */
    @Test
    void of_misses_equally_near_the_same_one_is_told_in_every_order_of_rows() throws Exception {
        List<String> usual = reasons(SAMPLE);

        List<String> backwards = reasons(backwards());

        assertThat(usual).anyMatch(it -> it.contains("card-slots") && it.contains("graphics: 5"));
        assertThat(backwards).isEqualTo(usual);
    }

    private List<String> reasons(Path rows) throws Exception {
        Catalogue catalogue = CatalogueReader.read(rows);
        // Without its ceiling, so that the size is what leaves dear cards no room.
        String text = Files.readString(Path.of("scenarios", "impossible.yaml"));
        Path file = briefs.resolve("wide.yaml");
        Files.writeString(file, text.replaceFirst("ceiling: 1100", "ceiling: 90000"));
        Brief brief = BriefReader.read(file, catalogue);
        return new FitReasons(catalogue).of(brief);
    }

    private Path backwards() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLE)) {
            for (Path file : files.toList()) {
                List<String> rows = new ArrayList<>(Files.readAllLines(file));
                if (file.toString().endsWith(".csv")) {
                    Collections.reverse(rows.subList(1, rows.size()));
                }
                Files.write(folder.resolve(file.getFileName()), rows);
            }
        }
        return folder;
    }
}
