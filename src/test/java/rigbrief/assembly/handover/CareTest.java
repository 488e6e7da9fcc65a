package rigbrief.assembly.handover;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.DriveFixture.aDrive;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import rigbrief.assembly.Bench;
import rigbrief.build.Build;
import rigbrief.wording.Texts;

class CareTest {
    private static String care(int enduranceTbw, Locale language) {
        Build build = aBuild().with(aDrive().enduranceTbw(enduranceTbw).warrantyYears(5)).make();
        Bench bench =
                Bench.of(
                        aBrief().make(),
                        aCatalogue().offering(build).make(),
                        build,
                        Texts.of(language));
        return String.join("\n", Care.of(bench).stream().map(Care::what).toList());
    }

    /** Check SSD-03: 365 TB over 5 years are 200 GB a day. */
    @Test
    void a_drive_s_rating_is_told_a_day() {
        assertThat(care(365, Locale.ENGLISH))
                .contains("365 TB written, 200 GB a day for its 5 years; 20 GB a day")
                .contains("well within that");
        assertThat(care(365, Locale.GERMAN)).contains("200 GB am Tag in 5 Jahren; 20 GB am Tag");
    }

    /** By hand: 20 GB a day are 7.3 TB a year; 18 TB last 2.466 years, not the 5 guaranteed. */
    @Test
    void a_rating_that_usual_work_uses_up_is_told() {
        assertThat(care(18, Locale.ENGLISH)).contains("use that up in 2.5 years");
        assertThat(care(18, Locale.GERMAN)).contains("brauchen das in 2,5 Jahren auf");
    }
}
