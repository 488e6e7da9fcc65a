package rigbrief.measurement.tune;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.FrameModel;
import rigbrief.assess.FrameModel.SceneTime;
import rigbrief.assess.MachineRates;
import rigbrief.measurement.tune.Menu.Frame;

/**
 * The settings with the least visible loss that hold what is wanted: an exact search.
 *
 * <p>Every preset, step of rays and step of upscaling is taken with every mix of {@link
 * SettingsFront}, least loss first; what loses more than the best found so far is not looked at.
 */
final class SettingsSearch {
    private final Menu menu;
    private final MachineRates machine;
    private final double shownMegapixels;
    private final double sureShare;
    private final HeldScenes heldIn;
    private final List<Mix> withoutRays;
    private final List<Mix> withRays;

    /**
     * A search.
     *
     * @param shownMegapixels millions of pixels shown
     * @param sureShare what of a predicted rate is sure, 0 to 1
     */
    SettingsSearch(
            Menu menu,
            MachineRates machine,
            double shownMegapixels,
            double sureShare,
            HeldScenes heldIn) {
        this.menu = menu;
        this.machine = machine;
        this.shownMegapixels = shownMegapixels;
        this.sureShare = sureShare;
        this.heldIn = heldIn;
        this.withoutRays = SettingsFront.of(menu.title(), false);
        this.withRays = SettingsFront.of(menu.title(), true);
    }

    /** The settings that lose least of those that hold what is wanted; empty when none do. */
    Optional<Choice> best(Wanted wanted, Floor floor) {
        Choice best = null;
        for (Frame frame : frames(floor)) {
            if (best != null && menu.loss(frame) > best.loss()) {
                break;
            }
            for (Mix mix : mixes(frame)) {
                if (best != null && menu.loss(frame) + mix.loss() > best.loss()) {
                    break;
                }
                Choice choice = choice(frame, mix);
                if (holds(choice, wanted) && (best == null || choice.prettierThan(best))) {
                    best = choice;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The settings that come nearest where nothing can be held: the fastest there are. */
    Choice fastest() {
        Choice fastest = null;
        for (Frame frame : frames(Floor.NONE)) {
            for (Mix mix : mixes(frame)) {
                Choice choice = choice(frame, mix);
                if (fastest == null || choice.fasterThan(fastest)) {
                    fastest = choice;
                }
            }
        }
        return fastest;
    }

    boolean holds(Choice choice, Wanted wanted) {
        return choice.heldFps() >= Wanted.hundredths(wanted.heldFps())
                && wanted.mixHeldBy(
                        choice.scenes(), sureShare, capFps(), menu.title().shape().spread());
    }

    private double capFps() {
        return menu.title().engineCapFps().orElse(Double.POSITIVE_INFINITY);
    }

    Choice choice(Frame frame, Mix mix) {
        List<SceneTime> scenes =
                FrameModel.scenes(menu.title(), menu.load(frame, mix, shownMegapixels), machine);
        long held = Wanted.hundredths(heldIn.rateFps(scenes) * sureShare);
        return new Choice(frame, mix, menu.loss(frame) + mix.loss(), scenes, held);
    }

    List<Mix> mixes(Frame frame) {
        return menu.raysOn(frame) ? withRays : withoutRays;
    }

    /** What the machine can do of what the floor leaves, least loss first. */
    List<Frame> frames(Floor floor) {
        List<Frame> frames = new ArrayList<>();
        for (int preset = menu.presetNames().size() - 1; preset >= floor.preset(); preset--) {
            for (int rays = topRays(floor);
                    rays >= Math.min(floor.rays(), topRays(floor));
                    rays--) {
                addUpscaling(frames, preset, rays, floor);
            }
        }
        frames.sort(Comparator.comparingLong(menu::loss));
        return frames;
    }

    private void addUpscaling(List<Frame> frames, int preset, int rays, Floor floor) {
        int whole = menu.upscalingNames().size() - 1;
        int coarsest = machine.picture().upscales() ? floor.upscaling() : whole;
        for (int upscaling = whole; upscaling >= coarsest; upscaling--) {
            frames.add(new Frame(preset, rays, upscaling));
        }
    }

    /** A card without ray units draws none. */
    private int topRays(Floor floor) {
        boolean can = machine.picture().rayRate() > 0;
        return can ? Math.min(floor.mostRays(), menu.rayNames().size() - 1) : 0;
    }
}
