package rigbrief.measurement.accept;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.fixture.WorkloadFixture;
import rigbrief.measurement.accept.Walk.Leg;

class WalkTest {

    /** Hand calculation: shares of ten minutes. */
    @Test
    void a_walk_gives_each_scene_its_share_of_ten_minutes() {
        Walk walk = Walk.of(title(0.7, 0.2, 0.1));

        assertThat(walk.legs())
                .containsExactly(new Leg("a", 420), new Leg("b", 120), new Leg("c", 60));
        assertThat(walk.seconds()).isEqualTo(600);
    }

    /** Hand calculation: 2 % of 1,500 s are half a minute. */
    @Test
    void a_rare_scene_lengthens_the_walk_until_it_gets_half_a_minute() {
        Walk walk = Walk.of(title(0.9, 0.08, 0.02));

        assertThat(walk.seconds()).isEqualTo(1_500);
        assertThat(walk.legs().get(2).seconds()).isEqualTo(30);
    }

    private static FrameRate title(double a, double b, double c) {
        FrameRate plain = WorkloadFixture.aWorkload().frames();
        return new FrameRate(
                plain.id(),
                plain.title(),
                plain.memoryGb(),
                plain.vram(),
                plain.diskGb(),
                plain.fitted(),
                plain.engineCapFps(),
                plain.work(),
                plain.referencePreset(),
                plain.presets(),
                plain.rays(),
                plain.upscaling(),
                List.of(new Scene("a", a, 1, 1), new Scene("b", b, 1, 1), new Scene("c", c, 1, 1)),
                List.of(),
                plain.shape());
    }
}
