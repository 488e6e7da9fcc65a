package rigbrief.assembly.handover;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import rigbrief.assembly.Bench;
import rigbrief.assembly.FirmwareStep;
import rigbrief.assembly.ScreenPlug;
import rigbrief.measurement.tune.FrameCap;
import rigbrief.measurement.tune.MenuLine;
import rigbrief.measurement.tune.TuneTerms;
import rigbrief.measurement.tune.TunedTitle;
import rigbrief.measurement.tune.Tuner;
import rigbrief.part.OperatingSystem;
import rigbrief.part.Slot;
import rigbrief.wording.Measured;

/** Gathers the settings a machine is handed over with: firmware, screens, titles. */
final class Settings {
    private static final int WHOLE = 100;
    private static final int CAP_DECIMALS = 2;

    private final Bench bench;
    private final List<Setting> settings = new ArrayList<>();

    private Settings(Bench bench) {
        this.bench = bench;
    }

    static List<Setting> of(Bench bench) {
        Settings settings = new Settings(bench);
        settings.firmware();
        settings.screens();
        settings.titles();
        return List.copyOf(settings.settings);
    }

    private void add(String where, String name, String value) {
        settings.add(new Setting(where, name, value));
    }

    private void firmware() {
        add(bench.say("set.firmware"), bench.say("set.memory"), bench.it().memoryMts() + " MT/s");
        FirmwareStep.of(bench.it())
                .ifPresent(
                        step ->
                                add(
                                        bench.say("set.firmware"),
                                        bench.say("set.version"),
                                        step.needed() + bench.say("set.newer")));
        if (bench.it().layout().caseFans() > 0) {
            add(
                    bench.say("set.firmware"),
                    bench.say("set.fans"),
                    bench.say(
                            "set.fans.value",
                            percent(bench.it().idle().caseFanShare()),
                            percent(bench.it().load().caseFanShare())));
        }
        if (bench.build().has(Slot.SYSTEM)) {
            OperatingSystem system = bench.build().system();
            if (!system.requires().isEmpty()) {
                add(
                        bench.say("set.firmware"),
                        bench.say("set.on"),
                        String.join(", ", system.requires()));
            }
        }
    }

    private static long percent(double share) {
        return Math.round(share * WHOLE);
    }

    private void screens() {
        for (ScreenPlug screen : ScreenPlug.of(bench.it())) {
            if (screen.resolution().isPresent()) {
                add(
                        bench.say("set.screen") + screen.screen(),
                        screen.path(bench.texts()),
                        screen.picture(bench.texts()));
            }
        }
    }

    /** Each title's menu, its lines at the top left out, and its cap. */
    private void titles() {
        Tuner.tune(bench.brief(), bench.it().catalogue(), bench.build(), TuneTerms.USUAL)
                .titles()
                .forEach(this::title);
    }

    private void title(TunedTitle tuned) {
        String where = tuned.title().title();
        int before = settings.size();
        for (MenuLine line : tuned.menu()) {
            if (line.reason() != MenuLine.Reason.HIGHEST) {
                add(where, named(line.name()), named(line.setTo()));
            }
        }
        boolean highest =
                tuned.menu().stream().anyMatch(line -> line.reason() == MenuLine.Reason.HIGHEST);
        if (highest) {
            String which =
                    settings.size() == before ? bench.say("set.all") : bench.say("set.others");
            add(where, which, bench.say("set.highest"));
        }
        tuned.cap().ifPresent(cap -> add(where, bench.say("set.cap"), cap(cap)));
    }

    /** What every game's menu calls alike is told in the reader's language. */
    private String named(String menu) {
        String key = "menu." + menu.replace(' ', '-');
        return bench.texts().has(key) ? bench.say(key) : menu;
    }

    private String cap(FrameCap cap) {
        BigDecimal rate =
                BigDecimal.valueOf(cap.hundredthsFps(), CAP_DECIMALS).stripTrailingZeros();
        return bench.texts().figure(new Measured(rate.scale() < 0 ? rate.setScale(0) : rate, ""))
                + bench.say("set.fps");
    }
}
