package rigbrief.measurement.tune;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.assess.MachineRates;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Setting;
import rigbrief.measurement.tune.Menu.Frame;

/** The search against plain enumeration of every settings there are. */
class SettingsSearchTest {
    private static final double SURE = 0.96;

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_best_settings_are_those_that_enumeration_finds(int seed) {
        Random random = new Random(seed);
        FrameRate title = Titles.random(random);
        MachineRates machine = Titles.machine(seed % 5 == 0 ? 0 : 100, seed % 7 != 0);
        SettingsSearch search = search(title, machine, seed);
        List<Choice> all = enumerated(title, search, machine);

        for (double share : List.of(0.35, 0.6, 0.85, 1.1)) {
            Wanted wanted = wanted(all, share, seed);
            Optional<Choice> truth =
                    all.stream()
                            .filter(choice -> search.holds(choice, wanted))
                            .reduce((one, other) -> other.prettierThan(one) ? other : one);

            Optional<Choice> found = search.best(wanted, Floor.NONE);

            assertThat(found.map(Choice::loss)).isEqualTo(truth.map(Choice::loss));
            assertThat(found.map(Choice::heldFps)).isEqualTo(truth.map(Choice::heldFps));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_fastest_settings_are_those_that_enumeration_finds(int seed) {
        FrameRate title = Titles.random(new Random(seed));
        SettingsSearch search = search(title, Titles.machine(), seed);
        Choice truth =
                enumerated(title, search, Titles.machine()).stream()
                        .reduce((one, other) -> other.fasterThan(one) ? other : one)
                        .orElseThrow();

        Choice found = search.fastest();

        assertThat(found.heldFps()).isEqualTo(truth.heldFps());
        assertThat(found.loss()).isEqualTo(truth.loss());
    }

    @Test
    void enumeration_is_not_vacuous() {
        long withAnAnswer = seeds().filter(SettingsSearchTest::hasMiddlingAnswer).count();

        assertThat(withAnAnswer).isGreaterThan(100);
    }

    /** Something had to be turned down, and not everything. */
    private static boolean hasMiddlingAnswer(int seed) {
        FrameRate title = Titles.random(new Random(seed));
        SettingsSearch search = search(title, Titles.machine(), seed);
        List<Choice> all = enumerated(title, search, Titles.machine());
        Optional<Choice> found = search.best(wanted(all, 0.6, seed), Floor.NONE);
        long most = all.stream().mapToLong(Choice::loss).max().orElseThrow();
        return found.isPresent() && found.get().loss() > 0 && found.get().loss() < most;
    }

    private static SettingsSearch search(FrameRate title, MachineRates machine, int seed) {
        HeldScenes held = seed % 3 == 0 ? HeldScenes.ALL : HeldScenes.ALL_BUT_WORST;
        return new SettingsSearch(new Menu(title), machine, Titles.SHOWN_MEGAPIXELS, SURE, held);
    }

    /** A share of what the fastest settings hold; now and then with an average and a low. */
    private static Wanted wanted(List<Choice> all, double share, int seed) {
        double fastest = all.stream().mapToLong(Choice::heldFps).max().orElseThrow() / 100.0;
        double target = fastest * share;
        return seed % 2 == 0
                ? Wanted.held(target)
                : new Wanted(
                        target, OptionalDouble.of(target * 1.1), OptionalDouble.of(target * 0.8));
    }

    /** Every preset, rays, upscaling and step, one by one; none of the search's own listing. */
    private static List<Choice> enumerated(
            FrameRate title, SettingsSearch search, MachineRates machine) {
        Menu menu = new Menu(title);
        List<Choice> all = new ArrayList<>();
        for (int preset = 0; preset < menu.presetNames().size(); preset++) {
            for (int rays = 0; rays < menu.rayNames().size(); rays++) {
                for (int upscaling = 0; upscaling < menu.upscalingNames().size(); upscaling++) {
                    Frame frame = new Frame(preset, rays, upscaling);
                    boolean drawn = rays == 0 || machine.picture().rayRate() > 0;
                    boolean whole = upscaling == menu.upscalingNames().size() - 1;
                    if (drawn && (whole || machine.picture().upscales())) {
                        for (Mix mix : every(title, menu.raysOn(frame))) {
                            all.add(search.choice(frame, mix));
                        }
                    }
                }
            }
        }
        return all;
    }

    private static List<Mix> every(FrameRate title, boolean raysOn) {
        List<Mix> mixes = new ArrayList<>(List.of(new Mix(0, 0, 0, List.of())));
        for (Setting setting : title.settings()) {
            List<Mix> longer = new ArrayList<>();
            boolean idle = raysOn && setting.standsInForRays();
            for (Mix mix : mixes) {
                for (int step = 0; step < (idle ? 1 : setting.steps().size()); step++) {
                    longer.add(SettingsFront.with(mix, setting, step, idle));
                }
            }
            mixes = longer;
        }
        return mixes;
    }
}
