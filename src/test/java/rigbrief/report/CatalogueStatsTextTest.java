package rigbrief.report;

import org.junit.jupiter.api.Test;

class CatalogueStatsTextTest {

    @Test
    void numbers_of_a_catalogue_are_laid_out_as_before() {
        var stats = CatalogueStats.of(Answers.catalogue().make());

        Keep.assertKept("catalogue-stats.txt", new CatalogueStatsText().write(stats, Style.PLAIN));
    }
}
