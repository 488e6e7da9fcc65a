package rigbrief.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.WorkloadFixture.MARSH;
import static rigbrief.fixture.WorkloadFixture.aWorkload;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.assess.FrameModel.SceneTime;
import rigbrief.assess.MachineRates.Picture;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.catalogue.FrameRate;
import rigbrief.part.Slot;

class FrameModelTest {
    private static final double CLOSE = 1e-9;
    private static final FrameRate TITLE = aWorkload().gflop(200).serial(0.5).vramGb(6).frames();
    private static final Picture CARD = new Picture(20, 400, 100, 8, true, 0, 1);
    private static final MachineRates MACHINE =
            new MachineRates(CARD, 100, 600, 4_800, 32, 3_000, 2_000);

    /** Hand calculation: 200 GFLOP at 20 TFLOP/s are 10 ms; 0.5 at 100 a second are 5 ms. */
    @Test
    void a_frame_takes_the_fourth_root_of_the_two_times_to_the_fourth() {
        SceneTime scene = scene(MACHINE);

        assertThat(scene.cardS()).isCloseTo(0.010, within(CLOSE));
        assertThat(scene.serialS()).isCloseTo(0.005, within(CLOSE));
        assertThat(scene.frameS()).isCloseTo(0.010 * Math.pow(1.0625, 0.25), within(CLOSE));
        assertThat(scene.processorBound()).isFalse();
    }

    /** Hand calculation: 6 GB where 4 are there: 1 + 2 x (6 / 4 - 1) = 2 times as long. */
    @Test
    void too_little_graphics_memory_lengthens_the_cards_time() {
        Picture small = new Picture(20, 400, 100, 4, true, 0, 1);

        assertThat(scene(MACHINE.with(small)).cardS()).isCloseTo(0.020, within(CLOSE));
    }

    /** Hand calculation: the link's four times narrower way out: 1 + 8 x 0.5 = 5 times as long. */
    @Test
    void a_narrow_link_lengthens_the_way_out_of_a_full_graphics_memory() {
        Picture small = new Picture(20, 400, 100, 4, true, 0, 1).behind(0, 4);

        assertThat(scene(MACHINE.with(small)).cardS()).isCloseTo(0.050, within(CLOSE));
    }

    /** Hand calculation, as above: 10 and 5 ms; p = 1 adds them up, p = 2 is Pythagoras. */
    @Test
    void a_title_of_its_own_shape_overlaps_and_overflows_in_its_own_way() {
        FrameRate waiting = aWorkload().gflop(200).serial(0.5).vramGb(6).shape(1, 0, 3).frames();
        FrameRate half = aWorkload().gflop(200).serial(0.5).vramGb(6).shape(2, 0, 3).frames();
        Picture small = new Picture(20, 400, 100, 4, true, 0, 1);

        assertThat(frameS(waiting, MACHINE)).isCloseTo(0.015, within(CLOSE));
        assertThat(frameS(half, MACHINE)).isCloseTo(0.005 * Math.sqrt(5), within(CLOSE));
        // 1 + 3 x (6 / 4 - 1) = 2.5 times 10 ms, and 5 ms.
        assertThat(frameS(waiting, MACHINE.with(small))).isCloseTo(0.030, within(CLOSE));
    }

    private static double frameS(FrameRate title, MachineRates machine) {
        return FrameModel.scenes(title, load(), machine).get(0).frameS();
    }

    /** The normal distribution's first percentile, from any printed table: 2.3263. */
    @Test
    void the_spread_of_frame_times_sets_the_low() {
        var scenes = FrameModel.scenes(TITLE, load(), MACHINE);
        double ms = 1_000 * scenes.get(0).frameS();

        var rates = FrameModel.rates(scenes, Double.POSITIVE_INFINITY, 0.2);

        assertThat(rates.averagePerS()).isCloseTo(1_000 / ms, within(1e-6));
        assertThat(rates.lowPerS())
                .isCloseTo(1_000 / (ms * Math.exp(2.3263 * 0.2 - 0.02)), within(1e-3));
        assertThat(FrameModel.rates(scenes, Double.POSITIVE_INFINITY, 0).lowPerS())
                .isCloseTo(1_000 / ms, within(1e-6));
    }

    @Test
    void a_card_at_half_its_pace_takes_twice_as_long() {
        assertThat(scene(MACHINE.with(CARD.paced(0.5))).cardS()).isCloseTo(0.020, within(CLOSE));
    }

    @Test
    void a_machine_without_means_draws_nothing() {
        Picture none = new Picture(0, 0, 0, 4, false, 0, 1);
        var scenes = FrameModel.scenes(TITLE, load(), MACHINE.with(none));

        var rates = FrameModel.rates(scenes, Double.POSITIVE_INFINITY, 0.12);

        assertThat(rates.averagePerS()).isZero();
        assertThat(rates.lowPerS()).isZero();
    }

    @Test
    void a_build_without_its_card_has_the_rates_of_the_processors_graphics() {
        var brief = aBrief().use(aNeed(MARSH));
        var catalogue = aCatalogue().workload(TITLE);
        Assessment with = assessed(aBuild(), brief, catalogue);
        Assessment without = assessed(aBuild().without(Slot.GRAPHICS), brief, catalogue);

        assertThat(MachineRates.withoutCard(with)).isEqualTo(MachineRates.of(without));
        assertThat(MachineRates.of(with)).isNotEqualTo(MachineRates.of(without));
    }

    private static SceneTime scene(MachineRates machine) {
        return FrameModel.scenes(TITLE, load(), machine).get(0);
    }

    private static FrameLoad load() {
        Settings plain = new Settings(Optional.empty(), Optional.empty(), Optional.empty());
        return FrameLoad.of(TITLE, plain, 2, true);
    }
}
