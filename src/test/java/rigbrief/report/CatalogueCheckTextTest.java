package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.diagnostic.Fault;

class CatalogueCheckTextTest {
    static final Fault FAULT =
            new Fault("cooler.csv", 14, 23, "height_mm", "16,5 cm", "a whole number", "write 165");

    @Test
    void a_sound_catalogue_has_no_faults() {
        var stats = CatalogueStats.of(Answers.catalogue().make());
        var check = new CatalogueCheck("shop", Optional.of(stats), List.of(), 0, List.of());

        assertThat(text(check)).startsWith("shop: no faults\n");
    }

    @Test
    void every_fault_is_listed_before_their_number() {
        var check =
                new CatalogueCheck("shop", Optional.empty(), List.of(FAULT, FAULT), 2, List.of());

        assertThat(text(check)).isEqualTo((FAULT.text() + "\n").repeat(2) + "shop: 2 faults\n");
    }

    @Test
    void faults_that_were_not_kept_are_counted() {
        var check = new CatalogueCheck("shop", Optional.empty(), List.of(FAULT), 9, List.of());

        assertThat(text(check)).endsWith("and 8 more like these\nshop: 9 faults\n");
    }

    @Test
    void a_note_does_not_make_a_fault() {
        var stats = CatalogueStats.of(Answers.catalogue().make());
        var check = new CatalogueCheck("shop", Optional.of(stats), List.of(), 0, List.of(FAULT));

        assertThat(text(check))
                .contains("shop: no faults\n")
                .endsWith("note: " + FAULT.text() + "\n");
    }

    private static String text(CatalogueCheck check) {
        return new CatalogueCheckText().write(check, Style.PLAIN);
    }
}
