package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.Processor;

class CatalogSampleTest {
    private static CatalogueReader.Reading reading;
    private static Catalogue sample;

    @BeforeAll
    static void read() throws BadInput {
        reading = CatalogueReader.readNoted(Path.of("catalog-sample"));
        sample = reading.catalogue();
    }

    @Test
    void the_sample_has_no_column_that_nobody_reads() {
        assertThat(reading.notes()).isEmpty();
    }

    @Test
    void the_sample_is_of_the_size_of_a_real_stock() {
        List<Part> parts =
                Arrays.stream(Kind.values()).flatMap(kind -> sample.parts(kind).stream()).toList();

        assertThat(sample.partCount()).isGreaterThanOrEqualTo(580);
        assertThat(sample.offerCount()).isGreaterThanOrEqualTo(1_150);
        assertThat(sample.workloads()).hasSizeGreaterThanOrEqualTo(15);
        assertThat(parts.stream().map(part -> part.listing().maker()).distinct())
                .hasSizeGreaterThanOrEqualTo(25);
    }

    @Test
    void the_sample_has_processors_for_at_least_four_sockets() {
        assertThat(
                        sample.parts(Kind.PROCESSOR).stream()
                                .map(part -> ((Processor) part).socket())
                                .distinct())
                .hasSizeGreaterThanOrEqualTo(4);
    }

    @Test
    void every_kind_has_a_part() {
        for (Kind kind : Kind.values()) {
            assertThat(sample.parts(kind)).as(kind.word()).isNotEmpty();
        }
    }
}
