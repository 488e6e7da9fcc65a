package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.diagnostic.Fault;

class CatalogueCheckJsonTest {
    private static final Contract CONTRACT = Contract.of("catalogue");

    @Test
    void a_sound_catalogue_keeps_the_contract() {
        var stats = CatalogueStats.of(Answers.catalogue().make());

        assertThat(CONTRACT.broken(json(Optional.of(stats), List.of()))).isEmpty();
    }

    @Test
    void a_faulty_catalogue_keeps_the_contract() {
        String json = json(Optional.empty(), List.of(CatalogueCheckTextTest.FAULT));

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(json).contains("\"verdict\" : \"faulty\"", "\"line\" : 14");
    }

    private static String json(Optional<CatalogueStats> stats, List<Fault> faults) {
        var check = new CatalogueCheck("shop", stats, faults, faults.size(), List.of());
        return new CatalogueCheckJson().write(check, Style.PLAIN);
    }
}
