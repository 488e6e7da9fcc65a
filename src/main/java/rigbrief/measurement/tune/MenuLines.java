package rigbrief.measurement.tune;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.MachineRates;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.catalogue.FrameRate.Factors;
import rigbrief.catalogue.FrameRate.Setting;
import rigbrief.catalogue.FrameRate.Step;
import rigbrief.measurement.tune.Menu.Frame;
import rigbrief.measurement.tune.MenuLine.Reason;

/** Writes a choice as lines of the title's menu. */
final class MenuLines {
    private static final double PERCENT = 100;

    private final Menu menu;
    private final Settings asked;
    private final MachineRates machine;

    MenuLines(Menu menu, Settings asked, MachineRates machine) {
        this.menu = menu;
        this.asked = asked;
        this.machine = machine;
    }

    List<MenuLine> of(Choice choice) {
        List<MenuLine> lines = new ArrayList<>();
        Frame frame = choice.frame();
        lines.add(preset(frame.preset()));
        if (menu.rayNames().size() > 1) {
            lines.add(rays(frame.rays()));
        }
        if (menu.upscalingNames().size() > 1) {
            lines.add(upscaling(frame.upscaling()));
        }
        List<Setting> settings = menu.title().settings();
        for (int i = 0; i < settings.size(); i++) {
            lines.add(setting(settings.get(i), choice.mix().steps().get(i), menu.raysOn(frame)));
        }
        return lines;
    }

    private MenuLine preset(int index) {
        List<String> names = menu.presetNames();
        Factors top = menu.preset(names.size() - 1);
        Factors set = menu.preset(index);
        return new MenuLine(
                "preset",
                names.get(index),
                last(names),
                reason(index, names, asked.preset()),
                VisibleLoss.SEEN_AT_ONCE,
                PERCENT * (top.graphics() - set.graphics()),
                PERCENT * (top.processor() - set.processor()));
    }

    private MenuLine rays(int index) {
        boolean can = machine.picture().rayRate() > 0;
        List<String> names = menu.rayNames();
        return unshared("rays", index, names, can, asked.rays());
    }

    private MenuLine upscaling(int index) {
        boolean can = machine.picture().upscales();
        MenuLine line = unshared("upscaling", index, menu.upscalingNames(), can, asked.upscaling());
        return line.reason() == Reason.TURNED_DOWN ? line.because(Reason.FEWER_PIXELS) : line;
    }

    /** The top of upscaling is to do without, which takes no upscaler. */
    private static MenuLine unshared(
            String name, int index, List<String> names, boolean can, Optional<String> asked) {
        Reason reason =
                can || index == names.size() - 1
                        ? reason(index, names, asked)
                        : Reason.MACHINE_CANNOT;
        return new MenuLine(
                name, names.get(index), last(names), reason, VisibleLoss.SEEN_AT_ONCE, 0, 0);
    }

    private static Reason reason(int index, List<String> names, Optional<String> asked) {
        if (index == names.size() - 1) {
            return Reason.HIGHEST;
        }
        boolean wanted = asked.isPresent() && asked.get().equals(names.get(index));
        return wanted ? Reason.ASKED : Reason.TURNED_DOWN;
    }

    private static MenuLine setting(Setting setting, int index, boolean raysOn) {
        int top = setting.steps().size() - 1;
        Step highest = setting.steps().get(top);
        Step set = setting.steps().get(index);
        return new MenuLine(
                setting.name(),
                set.name(),
                highest.name(),
                index == top
                        ? Reason.HIGHEST
                        : raysOn && setting.standsInForRays()
                                ? Reason.RAYS_DRAW_IT
                                : Reason.TURNED_DOWN,
                setting.visible(),
                PERCENT * (highest.graphics() - set.graphics()),
                PERCENT * (highest.processor() - set.processor()));
    }

    private static String last(List<String> names) {
        return names.get(names.size() - 1);
    }
}
