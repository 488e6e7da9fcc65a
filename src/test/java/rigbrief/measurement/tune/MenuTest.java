package rigbrief.measurement.tune;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.assess.FrameLoad;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Factors;
import rigbrief.catalogue.FrameRate.RayStep;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.measurement.tune.Menu.Frame;

class MenuTest {
    private static final double CLOSE = 1e-9;

    /** Hand calculation: shadows cost 0.02, 0.05, 0.10; mirrors 0.01, 0.08 of the card's work. */
    private static FrameRate title(double raysGraphics) {
        Map<String, Factors> presets = new LinkedHashMap<>();
        presets.put("low", new Factors(0.5, 0.8, 0.6));
        presets.put("medium", new Factors(0.75, 0.9, 0.8));
        presets.put("high", new Factors(1, 1, 1));
        presets.put("ultra", new Factors(1.4, 1.2, 1.3));
        Map<String, RayStep> rays = new LinkedHashMap<>();
        rays.put("off", new RayStep(0, 1, 1));
        rays.put("on", new RayStep(1, raysGraphics, 1.1));
        return Titles.title(
                100,
                0.5,
                0.3,
                presets,
                rays,
                Map.of("half", 0.5),
                List.of(new Scene("weir", 1, 1, 1)),
                List.of(
                        Titles.setting(
                                "shadows",
                                1,
                                Titles.step("low", 0.02, 0),
                                Titles.step("medium", 0.05, 0.01),
                                Titles.step("high", 0.10, 0.03)),
                        Titles.standIn(
                                "mirrors",
                                2,
                                Titles.step("low", 0.01, 0),
                                Titles.step("high", 0.08, 0))),
                OptionalDouble.empty());
    }

    /** Hand calculation: a preset with its own steps costs what the catalogue states for it. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0, 0.5", "1, 1, 1, 0.75", "2, 2, 1, 1", "3, 2, 1, 1.4"})
    void a_preset_at_its_own_steps_costs_what_is_stated(
            int preset, int shadows, int mirrors, double graphics) {
        Menu menu = new Menu(title(0.95));

        FrameLoad load = menu.load(new Frame(preset, 0, 1), mix(shadows, mirrors, false), 4);

        assertThat(load.graphics()).isCloseTo(graphics, within(CLOSE));
    }

    @Test
    void the_top_of_the_menu_asks_what_the_brief_would_ask_for_by_name() {
        FrameRate title = title(1);
        Settings named = new Settings(Optional.of("ultra"), Optional.empty(), Optional.of("half"));

        FrameLoad load = new Menu(title).load(new Frame(3, 0, 0), mix(2, 1, false), 4);

        FrameLoad same = FrameLoad.of(title, named, 4, true);
        assertThat(load.megapixels()).isEqualTo(same.megapixels());
        assertThat(load.graphics()).isCloseTo(same.graphics(), within(CLOSE));
        assertThat(load.processor()).isCloseTo(same.processor(), within(CLOSE));
        assertThat(load.vramGb()).isEqualTo(same.vramGb());
    }

    /** Hand calculation: 1 - (0.10 - 0.05). */
    @Test
    void one_step_down_takes_off_what_it_costs() {
        FrameLoad load = new Menu(title(1)).load(new Frame(2, 0, 1), mix(1, 1, false), 4);

        assertThat(load.graphics()).isCloseTo(0.95, within(CLOSE));
        assertThat(load.processor()).isCloseTo(0.98, within(CLOSE));
    }

    /**
     * Hand calculation: the stand-in saves 0.07 of the work. A step of rays that takes off 0.05
     * leaves 0.93, one that takes off 0.10 leaves 0.90, one that adds 0.2 leaves 1.13.
     */
    @ParameterizedTest
    @CsvSource({"0.95, 0.93", "0.90, 0.90", "1.2, 1.13"})
    void rays_and_their_stand_in_are_not_both_taken_off(double rays, double graphics) {
        FrameLoad load = new Menu(title(rays)).load(new Frame(2, 1, 1), mix(2, 0, true), 4);

        assertThat(load.graphics()).isCloseTo(graphics, within(CLOSE));
        assertThat(load.rays()).isEqualTo(1);
    }

    @Test
    void choices_stand_lowest_first_and_whole_pixels_last() {
        Menu menu = new Menu(title(1));

        assertThat(menu.presetNames()).containsExactly("low", "medium", "high", "ultra");
        assertThat(menu.rayNames()).containsExactly("off", "on");
        assertThat(menu.upscalingNames()).containsExactly("half", "off");
    }

    private static Mix mix(int shadows, int mirrors, boolean raysOn) {
        FrameRate title = title(1);
        Mix none = new Mix(0, 0, 0, List.of());
        Mix one = SettingsFront.with(none, title.settings().get(0), shadows, false);
        return SettingsFront.with(one, title.settings().get(1), mirrors, raysOn);
    }
}
