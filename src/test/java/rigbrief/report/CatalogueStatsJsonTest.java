package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.CatalogueFixture;

class CatalogueStatsJsonTest {
    private static final Contract CONTRACT = Contract.of("catalogue");

    @Test
    void numbers_of_a_catalogue_keep_the_contract() {
        assertThat(CONTRACT.broken(json(Answers.catalogue()))).isEmpty();
    }

    @Test
    void an_empty_catalogue_keeps_the_contract() {
        assertThat(CONTRACT.broken(json(CatalogueFixture.aCatalogue()))).isEmpty();
    }

    private static String json(CatalogueFixture catalogue) {
        return new CatalogueStatsJson().write(CatalogueStats.of(catalogue.make()), Style.PLAIN);
    }
}
