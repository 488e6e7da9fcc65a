package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class UtilisationDrawTest {

    /** By hand: 20 + (100 - 20) x 0.25. */
    @Test
    void draw_lies_on_the_line_between_idle_and_sustained() {
        assertThat(UtilisationDraw.watts(20, 100, 0)).isEqualTo(20);
        assertThat(UtilisationDraw.watts(20, 100, 0.25)).isCloseTo(40, within(1e-12));
        assertThat(UtilisationDraw.watts(20, 100, 1)).isEqualTo(100);
    }

    /** By hand: 4 ms of work in a frame of 10 ms. */
    @Test
    void utilisation_is_the_share_of_the_frame_that_is_worked() {
        assertThat(UtilisationDraw.utilisation(0.004, 0.010)).isCloseTo(0.4, within(1e-12));
        assertThat(UtilisationDraw.utilisation(0.010, 0.010)).isEqualTo(1);
        assertThat(UtilisationDraw.utilisation(0.011, 0.010)).isEqualTo(1);
        assertThat(UtilisationDraw.utilisation(0, 0.010)).isZero();
    }

    @Test
    void nonsense_is_refused() {
        refused("idleW", () -> UtilisationDraw.watts(-1, 100, 0.5));
        refused("sustainedW", () -> UtilisationDraw.watts(1, -100, 0.5));
        refused("utilisation", () -> UtilisationDraw.watts(1, 100, 1.1));
        refused("ownS", () -> UtilisationDraw.utilisation(-1, 1));
        refused("frameS", () -> UtilisationDraw.utilisation(1, 0));
    }

    @Property(tries = 300)
    void a_busier_part_never_draws_less(
            @ForAll @DoubleRange(min = 0, max = 1) double busy,
            @ForAll @DoubleRange(min = 0, max = 1) double busier) {
        double least = Math.min(busy, busier);
        double most = Math.max(busy, busier);

        assertThat(UtilisationDraw.watts(15, 120, most))
                .isGreaterThanOrEqualTo(UtilisationDraw.watts(15, 120, least));
    }
}
