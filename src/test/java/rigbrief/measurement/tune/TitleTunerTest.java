package rigbrief.measurement.tune;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.ScreenFixture.aScreen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rigbrief.assess.MachineRates;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Factors;
import rigbrief.catalogue.FrameRate.RayStep;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.fixture.NeedFixture;
import rigbrief.measurement.tune.MenuLine.Reason;
import rigbrief.measurement.tune.TunedTitle.Outcome;

class TitleTunerTest {

    @Test
    void what_the_brief_asks_of_settings_is_not_turned_lower_while_the_target_holds() {
        TunedTitle tuned =
                tuned(title(90), aNeed("mill-race").mustAverage(60).preset("high").rays("on"));

        assertThat(tuned.outcome()).isEqualTo(Outcome.HELD);
        assertThat(line(tuned, "preset").setTo()).isIn("high", "ultra");
        assertThat(line(tuned, "rays").setTo()).isEqualTo("on");
        assertThat(tuned.heldFps()).isGreaterThanOrEqualTo(60);
    }

    @Test
    void the_briefs_settings_are_given_up_only_when_the_target_asks_for_it() {
        TunedTitle tuned =
                tuned(title(400), aNeed("mill-race").mustAverage(60).preset("ultra").rays("on"));

        assertThat(tuned.outcome()).isEqualTo(Outcome.BELOW_BRIEF);
        assertThat(tuned.heldFps()).isGreaterThanOrEqualTo(60);
    }

    @Test
    void a_target_out_of_reach_gives_way_to_the_next_usual_rate_that_holds() {
        TunedTitle tuned = tuned(title(500), aNeed("mill-race").mustAverage(120));

        assertThat(tuned.outcome()).isEqualTo(Outcome.LOWER_TARGET);
        assertThat(CapFinder.USUAL).contains((int) tuned.tunedForFps());
        assertThat(tuned.heldFps()).isGreaterThanOrEqualTo(tuned.tunedForFps());
        assertThat(tuned.mustsHold()).isFalse();
    }

    @Test
    void where_nothing_can_be_held_the_fastest_settings_are_given() {
        TunedTitle tuned = tuned(title(9_000), aNeed("mill-race").mustAverage(60));

        assertThat(tuned.outcome()).isEqualTo(Outcome.NOT_HELD);
        assertThat(line(tuned, "preset").setTo()).isEqualTo("low");
        assertThat(line(tuned, "upscaling").setTo()).isEqualTo("half");
        assertThat(tuned.cap()).isEmpty();
    }

    @Test
    void a_must_low_that_the_scenes_alone_would_miss_is_held_too() {
        NeedFixture need = aNeed("mill-race").mustLow(55);

        TunedTitle tuned = tuned(title(120), need);

        assertThat(tuned.mustsHold()).isTrue();
        assertThat(tuned.uncapped().lowFps()).isGreaterThan(55);
    }

    @Test
    void a_card_that_can_neither_cast_rays_nor_upscale_is_not_asked_to() {
        TunedTitle tuned =
                tuned(title(250), aNeed("mill-race").mustAverage(60), Titles.machine(0, false));

        assertThat(line(tuned, "rays").reason()).isEqualTo(Reason.MACHINE_CANNOT);
        assertThat(line(tuned, "rays").setTo()).isEqualTo("off");
        assertThat(line(tuned, "upscaling").setTo()).isEqualTo("off");
    }

    @Test
    void without_any_figure_in_the_brief_60_is_the_target() {
        assertThat(tuned(title(90), aNeed("mill-race")).askedFps()).isEqualTo(60);
    }

    @Test
    void a_builders_own_target_replaces_the_briefs_figures() {
        TuneTerms terms =
                new TuneTerms(OptionalInt.of(40), HeldScenes.ALL_BUT_WORST, OptionalInt.empty());

        TunedTitle tuned =
                tuned(title(250), aNeed("mill-race").mustAverage(60), Titles.machine(), terms);

        assertThat(tuned.askedFps()).isEqualTo(40);
        assertThat(tuned.outcome()).isEqualTo(Outcome.HELD);
    }

    private static FrameRate title(double gflop) {
        Map<String, Factors> presets = new LinkedHashMap<>();
        presets.put("low", new Factors(0.5, 0.8, 0.6));
        presets.put("high", new Factors(1, 1, 1));
        presets.put("ultra", new Factors(1.4, 1.2, 1.3));
        Map<String, RayStep> rays = new LinkedHashMap<>();
        rays.put("off", new RayStep(0, 1, 1));
        rays.put("on", new RayStep(1, 0.95, 1.1));
        return Titles.title(
                gflop,
                0.2,
                0.2,
                presets,
                rays,
                Map.of("half", 0.5),
                List.of(new Scene("weir", 0.8, 1, 1), new Scene("flood", 0.2, 1.4, 1.3)),
                List.of(
                        Titles.setting(
                                "shadows",
                                1,
                                Titles.step("low", 0.02, 0),
                                Titles.step("high", 0.12, 0.03))),
                OptionalDouble.empty());
    }

    private static TunedTitle tuned(FrameRate title, NeedFixture need) {
        return tuned(title, need, Titles.machine());
    }

    private static TunedTitle tuned(FrameRate title, NeedFixture need, MachineRates machine) {
        return tuned(title, need, machine, TuneTerms.USUAL);
    }

    private static TunedTitle tuned(
            FrameRate title, NeedFixture need, MachineRates machine, TuneTerms terms) {
        var brief = aBrief().screen(aScreen()).use(need).make();
        ScreenPace screen = new ScreenPace(OptionalInt.of(144), OptionalInt.of(48));
        return new TitleTuner(brief, need.make(), title, terms, screen).tune(machine);
    }

    private static MenuLine line(TunedTitle tuned, String name) {
        return tuned.menu().stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
