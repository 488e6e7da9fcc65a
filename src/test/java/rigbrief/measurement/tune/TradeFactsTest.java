package rigbrief.measurement.tune;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.ScreenFixture.aScreen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rigbrief.assess.FrameLoad;
import rigbrief.assess.FrameModel;
import rigbrief.assess.MachineRates;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Factors;
import rigbrief.catalogue.FrameRate.RayStep;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.fixture.NeedFixture;
import rigbrief.measurement.tune.MenuLine.Reason;
import rigbrief.measurement.tune.SceneLine.Pace;

/**
 * What people who set machines up have learnt, on titles and machines of our own.
 *
 * <p>Expected values: common practice, all of them.
 */
class TradeFactsTest {
    private static final List<Scene> ONE_SCENE = List.of(new Scene("weir", 1, 1, 1));
    private static final Map<String, Factors> ONE_PRESET = Map.of("high", new Factors(1, 1, 1));
    private static final Map<String, RayStep> NO_RAYS = Map.of("off", new RayStep(0, 1, 1));

    @Test
    void an_engine_cap_of_300_is_never_exceeded() {
        FrameRate title =
                Titles.title(
                        2,
                        0.01,
                        0,
                        ONE_PRESET,
                        NO_RAYS,
                        Map.of(),
                        ONE_SCENE,
                        List.of(),
                        OptionalDouble.of(300));

        TunedTitle tuned = tuned(title, aNeed("mill-race").mustAverage(500), 360);

        assertThat(tuned.scenes().get(0).fps()).isGreaterThan(300);
        assertThat(tuned.uncapped().averageFps()).isLessThanOrEqualTo(300);
        assertThat(tuned.uncapped().lowFps()).isLessThanOrEqualTo(300);
        assertThat(tuned.cap()).hasValueSatisfying(cap -> assertThat(cap.fps()).isEqualTo(300));
    }

    @Test
    void about_70_with_dense_places_at_50_to_60_and_a_worst_spot_at_40_is_capped_at_60() {
        FrameRate title =
                Titles.plain(
                        128,
                        0.05,
                        List.of(
                                new Scene("open road", 0.7, 1, 1),
                                new Scene("market town", 0.22, 1.32, 1.2),
                                new Scene("siege", 0.08, 1.87, 1.5)),
                        List.of());

        TunedTitle tuned = tuned(title, aNeed("mill-race").mustAverage(60), 165);

        assertThat(tuned.uncapped().averageFps()).isBetween(66.0, 74.0);
        assertThat(tuned.scenes().get(1).fps()).isBetween(50.0, 60.0);
        assertThat(tuned.scenes().get(2).fps()).isBetween(38.0, 42.0);
        assertThat(tuned.cap()).hasValueSatisfying(cap -> assertThat(cap.fps()).isEqualTo(60));
        assertThat(tuned.scenes().stream().map(SceneLine::pace))
                .containsExactly(Pace.STEADY, Pace.HIDDEN_DIP, Pace.DIP);
    }

    @Test
    void a_large_open_map_with_many_players_runs_at_two_thirds_of_the_small_maps_rate() {
        FrameRate title =
                Titles.plain(
                        60,
                        0.6,
                        List.of(
                                new Scene("courtyard, ten players", 0.5, 1, 1),
                                new Scene("moor, a hundred players", 0.5, 1.2, 1.5)),
                        List.of());

        var scenes = FrameModel.scenes(title, load(title), Titles.machine());

        assertThat(scenes.get(1).rateFps() / scenes.get(0).rateFps()).isBetween(0.6, 0.73);
    }

    @Test
    void without_rays_and_at_low_a_processor_that_is_the_limit_gives_only_some_30_percent_more() {
        FrameRate title = withRays(40, 1.4);
        MachineRates machine = Titles.machine();

        double high = FrameModel.scenes(title, load(title), machine).get(0).rateFps();
        FrameLoad least =
                FrameLoad.of(
                        title,
                        new Settings(Optional.of("low"), Optional.of("off"), Optional.empty()),
                        Titles.SHOWN_MEGAPIXELS,
                        true);
        double low = FrameModel.scenes(title, least, machine).get(0).rateFps();

        assertThat(FrameModel.scenes(title, load(title), machine).get(0).processorBound()).isTrue();
        assertThat(low / high).isBetween(1.2, 1.4);
    }

    @Test
    void turning_a_hidden_setting_down_is_preferred_to_turning_a_visible_one_down() {
        FrameRate title =
                Titles.plain(
                        175,
                        0.05,
                        ONE_SCENE,
                        List.of(
                                Titles.setting(
                                        "water",
                                        3,
                                        Titles.step("low", 0, 0),
                                        Titles.step("high", 0.12, 0)),
                                Titles.setting(
                                        "ropes in the cellar",
                                        0,
                                        Titles.step("low", 0, 0),
                                        Titles.step("high", 0.12, 0))));

        TunedTitle tuned = tuned(title, aNeed("mill-race").mustAverage(60), 165);

        assertThat(line(tuned, "water").setTo()).isEqualTo("high");
        assertThat(line(tuned, "ropes in the cellar").setTo()).isEqualTo("low");
        assertThat(line(tuned, "ropes in the cellar").reason()).isEqualTo(Reason.TURNED_DOWN);
    }

    @Test
    void nothing_is_turned_down_while_the_target_holds_without() {
        TunedTitle tuned = tuned(withRays(40, 0.1), aNeed("mill-race").mustAverage(60), 165);

        assertThat(tuned.menu()).filteredOn(line -> line.reason() == Reason.TURNED_DOWN).isEmpty();
    }

    @Test
    void rasterised_reflections_go_to_low_when_rays_are_on() {
        TunedTitle tuned = tuned(withRays(40, 0.1), aNeed("mill-race").mustAverage(60), 165);

        assertThat(line(tuned, "rays").setTo()).isEqualTo("high");
        assertThat(line(tuned, "pond mirrors").setTo()).isEqualTo("low");
        assertThat(line(tuned, "pond mirrors").reason()).isEqualTo(Reason.RAYS_DRAW_IT);
    }

    @Test
    void rasterised_reflections_stay_high_when_the_client_wants_no_rays() {
        TunedTitle tuned =
                tuned(withRays(40, 0.1), aNeed("mill-race").mustAverage(60).rays("off"), 165);

        assertThat(line(tuned, "rays").setTo()).isEqualTo("off");
        assertThat(line(tuned, "rays").reason()).isEqualTo(Reason.ASKED);
        assertThat(line(tuned, "pond mirrors").setTo()).isEqualTo("high");
    }

    /** Two presets, rays with a stand-in worth a tenth of the card's work. */
    private static FrameRate withRays(double gflop, double serial) {
        Map<String, Factors> presets = new LinkedHashMap<>();
        presets.put("low", new Factors(0.5, 0.85, 0.6));
        presets.put("high", new Factors(1, 1, 1));
        Map<String, RayStep> rays = new LinkedHashMap<>();
        rays.put("off", new RayStep(0, 1, 1));
        rays.put("high", new RayStep(1, 0.95, 1.1));
        return Titles.title(
                gflop,
                serial,
                0.3,
                presets,
                rays,
                Map.of("quality", 0.667),
                ONE_SCENE,
                List.of(
                        Titles.standIn(
                                "pond mirrors",
                                2,
                                Titles.step("low", 0.02, 0),
                                Titles.step("high", 0.12, 0.01))),
                OptionalDouble.empty());
    }

    /** High with rays. */
    private static FrameLoad load(FrameRate title) {
        return FrameLoad.of(
                title,
                new Settings(Optional.of("high"), Optional.of("high"), Optional.empty()),
                Titles.SHOWN_MEGAPIXELS,
                true);
    }

    private static TunedTitle tuned(FrameRate title, NeedFixture need, int refreshHz) {
        var brief = aBrief().screen(aScreen().mode(2560, 1440, refreshHz)).use(need).make();
        return new TitleTuner(
                        brief,
                        need.make(),
                        title,
                        TuneTerms.USUAL,
                        new ScreenPace(OptionalInt.of(refreshHz), OptionalInt.empty()))
                .tune(Titles.machine());
    }

    private static MenuLine line(TunedTitle tuned, String name) {
        return tuned.menu().stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
