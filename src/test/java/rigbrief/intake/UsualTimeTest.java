package rigbrief.intake;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload.Fitted;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Drive;
import rigbrief.part.Kind;
import rigbrief.part.Processor;

class UsualTimeTest {
    private final Catalogue catalogue =
            CatalogueFixture.aCatalogue().offering(BuildFixture.aBuild().make()).make();

    private static TaskTime task(double serial, double parallel, double readGb) {
        return new TaskTime(
                "t", "T", "do it", 4, 0, 4, new Fitted(1, 0.1), serial, parallel, 0, readGb, 0);
    }

    /** Hand calculation: serial work over the single rate, rounded up to five seconds. */
    @Test
    void serial_work_takes_the_work_over_the_rate_of_one_thread() {
        double rate = ((Processor) catalogue.parts(Kind.PROCESSOR).get(0)).rateSingle();

        assertThat(UsualTime.of(task(33 * rate, 0, 0), catalogue)).isEqualTo("35s");
    }

    /** Hand calculation: 1 GB is 1,000 MB over the drive's MB/s. */
    @Test
    void reading_takes_the_amount_over_the_drive_s_rate() {
        double readMbs = ((Drive) catalogue.parts(Kind.DRIVE).get(0)).readMbs();
        double seconds = 240;

        assertThat(UsualTime.of(task(0, 0, seconds * readMbs / 1_000), catalogue)).isEqualTo("4m");
    }

    @Test
    void without_parts_that_could_do_it_no_time_is_named() {
        Catalogue empty = CatalogueFixture.aCatalogue().make();

        assertThat(UsualTime.of(task(100, 0, 0), empty)).isEqualTo("any");
    }
}
