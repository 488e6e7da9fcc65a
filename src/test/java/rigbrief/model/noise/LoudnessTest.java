package rigbrief.model.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class LoudnessTest {

    /** Source: definition of the sone, encyclopedia article "Sone". */
    @Test
    @DisplayName("SND-09: 50 phon are 2 sone and 60 phon are 4")
    void ten_phon_double_the_loudness() {
        assertThat(Loudness.sone(40)).isEqualTo(1);
        assertThat(Loudness.sone(50)).isEqualTo(2);
        assertThat(Loudness.sone(60)).isEqualTo(4);
    }

    @Test
    void a_level_below_forty_phon_gets_a_caution() {
        assertThat(Loudness.PHON.remark(39)).isPresent();
        assertThat(Loudness.PHON.remark(40)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("phon", () -> Loudness.sone(Double.NaN));
        refused("sone", () -> Loudness.phon(0));
    }

    @Property(tries = 200)
    void phon_and_sone_are_each_other_s_inverse(
            @ForAll @DoubleRange(min = 0, max = 120) double phon) {
        assertThat(Loudness.phon(Loudness.sone(phon))).isCloseTo(phon, within(1e-9));
    }
}
