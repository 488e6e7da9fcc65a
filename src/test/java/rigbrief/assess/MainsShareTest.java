package rigbrief.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;

import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;

class MainsShareTest {
    private static Brief.Place mains(int volts) {
        return new Brief.Place(22, 0, volts, 8, 0.4, 3_000, false);
    }

    /** 16 A at 230 V: 3680 W (published beside ELEC-01, from memory there). */
    @Test
    void a_circuit_of_230_volts_bears_3680_watts() {
        var it = assessed(aBuild(), aBrief().quantity(12).place(mains(230)));

        MainsShare share = MainsShare.of(it);

        double eachW = it.power().wallW();
        assertThat(share.limitW()).isEqualTo(3_680);
        assertThat(share.wattsOfAll()).isCloseTo(12 * eachW, within(1e-9));
        assertThat(share.amperesOfAll()).isCloseTo(12 * eachW / 227.7, within(1e-9));
        assertThat(share.machinesOnOne() * eachW).isLessThanOrEqualTo(3_680);
        assertThat((share.machinesOnOne() + 1) * eachW).isGreaterThan(3_680);
    }

    /** Check ELEC-01: 80 % of 15 A at 120 V are 1440 W. */
    @Test
    void a_circuit_of_120_volts_bears_1440_watts_for_hours() {
        MainsShare share =
                MainsShare.of(assessed(aBuild(), aBrief().quantity(12).place(mains(120))));

        assertThat(share.breakerA()).isEqualTo(15);
        assertThat(share.limitW()).isEqualTo(1_440);
    }
}
