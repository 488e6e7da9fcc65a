package rigbrief.model.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoundSumTest {

    /** Source: lecture slides "Decibel values: sum and difference", which print 86.2. */
    @Test
    @DisplayName("SND-01: 80 and 85 dB make 86.19 dB")
    void two_unlike_sources() {
        assertThat(SoundSum.dba(80, 85)).isCloseTo(86.19, within(0.01));
    }

    /** Source: a fan maker's technical note "Acoustics", which prints 87. */
    @Test
    @DisplayName("SND-02: 86 and 80 dB make 86.97 dB")
    void two_sources_of_a_fan_maker() {
        assertThat(SoundSum.dba(86, 80)).isCloseTo(86.97, within(0.01));
    }

    /** By hand: 21 + 10 log10(7) = 21 + 8.451. */
    @Test
    @DisplayName("SND-03: seven fans of 21 dB make 29.45 dB")
    void seven_like_fans() {
        assertThat(SoundSum.ofEqualDba(21, 7)).isCloseTo(29.45, within(0.01));
        assertThat(SoundSum.dba(21, 21, 21, 21, 21, 21, 21)).isCloseTo(29.45, within(0.01));
    }

    /** By hand: 10 log10(10^3.4 - 10^3.0) = 10 log10(1511.9). */
    @Test
    @DisplayName("SND-04: 34 dB measured over a background of 30 dB is a source of 31.80 dB")
    void a_source_is_taken_out_of_its_background() {
        assertThat(SoundSum.aloneDba(34, 30)).isCloseTo(31.80, within(0.01));
    }

    /** Computed apart from this program: 10 log10(1 + 10^(-difference/10)). */
    @ParameterizedTest
    @CsvSource({
        "0,3.010", "1,2.539", "2,2.124", "3,1.764", "4,1.455", "5,1.193", "6,0.973",
        "7,0.790", "8,0.639", "9,0.515", "10,0.414", "12,0.266", "15,0.135", "20,0.043"
    })
    void the_weaker_source_adds_what_the_table_says(double differenceDb, double addedDb) {
        assertThat(SoundSum.dba(40, 40 - differenceDb) - 40).isCloseTo(addedDb, within(0.0006));
    }

    /** Source: the lecture slides' table of equal sources. */
    @ParameterizedTest
    @CsvSource({"2,3", "3,4.8", "4,6", "5,7", "10,10", "15,11.8", "20,13"})
    void equal_sources_add_what_the_slides_say(int count, double addedDb) {
        assertThat(SoundSum.ofEqualDba(30, count) - 30).isCloseTo(addedDb, within(0.05));
    }

    @Test
    void silence_adds_nothing() {
        assertThat(SoundSum.dba(30, SoundSum.SILENCE_DBA)).isCloseTo(30, within(1e-12));
        assertThat(SoundSum.dba()).isEqualTo(SoundSum.SILENCE_DBA);
        assertThat(SoundSum.ofEqualDba(30, 0)).isEqualTo(SoundSum.SILENCE_DBA);
        assertThat(SoundSum.energy(SoundSum.SILENCE_DBA)).isZero();
        assertThat(SoundSum.aloneDba(30, SoundSum.SILENCE_DBA)).isCloseTo(30, within(1e-12));
    }

    /** By the definition of the decibel: 0 dB is 1, 10 dB ten times as much. */
    @Test
    void energies_are_those_of_the_definition() {
        assertThat(SoundSum.energy(0)).isEqualTo(1);
        assertThat(SoundSum.energy(10)).isCloseTo(10, within(1e-12));
        assertThat(SoundSum.levelDba(100)).isCloseTo(20, within(1e-12));
        assertThat(SoundSum.levelDba(0)).isEqualTo(SoundSum.SILENCE_DBA);
    }

    @Test
    void nonsense_is_refused() {
        refused("levelDba", () -> SoundSum.energy(Double.NaN));
        refused("energy", () -> SoundSum.levelDba(-1));
        refused("count", () -> SoundSum.ofEqualDba(30, -1));
        refused("measuredDba above backgroundDba", () -> SoundSum.aloneDba(30, 30));
        refused("measuredDba above backgroundDba", () -> SoundSum.aloneDba(30, 34));
    }

    @Property(tries = 300)
    void two_equal_sources_add_three_decibels(
            @ForAll @DoubleRange(min = -20, max = 120) double levelDba) {
        assertThat(SoundSum.dba(levelDba, levelDba) - levelDba).isCloseTo(3.0103, within(1e-4));
    }

    @Property(tries = 300)
    void a_sum_is_never_below_its_loudest_source_nor_depends_on_order(
            @ForAll @DoubleRange(min = -20, max = 120) double oneDba,
            @ForAll @DoubleRange(min = -20, max = 120) double otherDba) {
        double sumDba = SoundSum.dba(oneDba, otherDba);

        assertThat(sumDba).isGreaterThanOrEqualTo(Math.max(oneDba, otherDba) - 1e-9);
        assertThat(sumDba).isEqualTo(SoundSum.dba(otherDba, oneDba));
    }

    @Property(tries = 300)
    void one_more_source_never_makes_it_quieter(
            @ForAll @DoubleRange(min = 0, max = 60) double levelDba,
            @ForAll @IntRange(min = 0, max = 30) int count) {
        assertThat(SoundSum.ofEqualDba(levelDba, count + 1))
                .isGreaterThan(SoundSum.ofEqualDba(levelDba, count));
    }
}
