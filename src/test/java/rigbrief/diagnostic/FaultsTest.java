package rigbrief.diagnostic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;

class FaultsTest {
    @Test
    void faults_keep_the_order_in_which_they_were_met() {
        Faults faults = new Faults();

        faults.add(fault(9));
        faults.add(fault(2));

        assertThat(faults.all()).extracting(Fault::line).containsExactly(9, 2);
        assertThat(catchThrowableOfType(BadInput.class, faults::throwIfAny).faults())
                .isEqualTo(faults.all());
    }

    @Test
    void a_note_refuses_nothing() throws BadInput {
        Faults faults = new Faults();

        faults.note(fault(1));
        faults.throwIfAny();

        assertThat(faults.notes()).hasSize(1);
        assertThat(faults.count()).isZero();
    }

    @Test
    void more_than_two_thousand_faults_are_counted_and_not_kept() {
        Faults faults = new Faults();

        for (int i = 1; i <= 2_003; i++) {
            faults.add(fault(i));
        }

        BadInput bad = catchThrowableOfType(BadInput.class, faults::throwIfAny);
        assertThat(bad.faults()).hasSize(2_000);
        assertThat(bad.count()).isEqualTo(2_003);
        assertThat(bad).hasMessageEndingWith("\nand 3 more like these");
    }

    private static Fault fault(int line) {
        return new Fault("f", line, 1, "s", "x", "y", "z");
    }
}
