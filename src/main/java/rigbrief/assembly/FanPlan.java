package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Layout;
import rigbrief.assess.Workings;
import rigbrief.assess.Workings.State;
import rigbrief.build.Build;
import rigbrief.model.air.Airflow;
import rigbrief.model.heat.CoolingCase;
import rigbrief.part.FanGroup;
import rigbrief.part.FanPosition;
import rigbrief.part.PcCase;
import rigbrief.part.Place;
import rigbrief.part.Slot;

/**
 * Where the fans of the case go, which way they blow, and how much comes in against what goes out.
 *
 * @param fans fans at the sides of the case, the radiator's included, in the order front, bottom,
 *     side, rear, top
 * @param free positions left empty, in the case's order
 * @param speedShare speed of the case fans under load over their full speed, 0 to 1
 * @param balance what comes in against what goes out
 * @param heatW heat set free in the case under load, W
 * @param neededM3h air that carries it off {@link #USUAL_RISE_K} warmer than it came, m³/h
 */
public record FanPlan(
        List<PlacedFan> fans,
        List<FreePosition> free,
        double speedShare,
        AirBalance balance,
        double heatW,
        double neededM3h) {
    /** Air that is this much warmer than the room where it leaves is usual. Common practice. */
    public static final int USUAL_RISE_K = 10;

    private static final Place[] ORDER = {
        Place.FRONT, Place.BOTTOM, Place.SIDE, Place.REAR, Place.TOP
    };

    public FanPlan {
        fans = List.copyOf(fans);
        free = List.copyOf(free);
    }

    /** Where a fan comes from. */
    public enum Origin {
        /** Mounted in the case by its maker. */
        CASE,
        /** Bought beside. */
        ADDED,
        /** On the radiator. */
        RADIATOR
    }

    /** Which way a fan blows. */
    public enum Direction {
        IN,
        OUT;

        /**
         * Cool air in at front, bottom and side, warm air out behind and above. Common practice;
         * the heat model takes the same.
         */
        public static Direction at(Place place) {
            return switch (place) {
                case FRONT, BOTTOM, SIDE -> IN;
                case REAR, TOP -> OUT;
            };
        }
    }

    /**
     * Like fans on one side.
     *
     * @param place which side
     * @param count how many
     * @param sizeMm frame size in mm
     * @param origin where they come from
     * @param flowM3h what they move together under load, in m³/h; 0 for radiator fans, whose flow
     *     no sheet states
     */
    public record PlacedFan(Place place, int count, int sizeMm, Origin origin, double flowM3h) {
        /** Which way they blow. */
        public Direction direction() {
            return Direction.at(place);
        }
    }

    /**
     * A side with room for fans and none on it.
     *
     * @param place which side
     * @param room the largest choice of fans
     */
    public record FreePosition(Place place, FanGroup room) {}

    /** The fans of a build. */
    public static FanPlan of(Assessment it) {
        CaseAir air = CaseAir.of(it);
        List<PlacedFan> fans = new ArrayList<>();
        for (Place place : ORDER) {
            addAt(place, it, air, fans);
        }
        CoolingCase.Air load = Workings.coolingCase(it, Workings.State.LOAD).air();
        return new FanPlan(
                fans,
                free(it.build().pcCase(), fans),
                air.share(),
                AirBalance.of(fans),
                load.heatW(),
                Airflow.forHeatM3h(load.heatW(), USUAL_RISE_K, load.densityKgM3()));
    }

    /** Fans on all sides together. */
    public int count() {
        return fans.stream().mapToInt(PlacedFan::count).sum();
    }

    private static void addAt(Place place, Assessment it, CaseAir air, List<PlacedFan> fans) {
        Layout layout = it.layout();
        if (layout.radiator().filter(place::equals).isPresent()) {
            fans.add(
                    new PlacedFan(
                            place,
                            it.build().cooler().fans(),
                            it.build().cooler().fanSizeMm(),
                            Origin.RADIATOR,
                            0));
        }
        for (Layout.PlacedFans group : layout.includedFans()) {
            if (group.place() == place) {
                fans.add(placed(group, Origin.CASE, air.includedM3h(group.count())));
            }
        }
        for (Layout.PlacedFans group : layout.addedFans()) {
            if (group.place() == place) {
                fans.add(placed(group, Origin.ADDED, air.addedM3h(group.count())));
            }
        }
    }

    private static PlacedFan placed(Layout.PlacedFans group, Origin origin, double flowM3h) {
        return new PlacedFan(group.place(), group.count(), group.sizeMm(), origin, flowM3h);
    }

    private static List<FreePosition> free(PcCase pcCase, List<PlacedFan> fans) {
        List<FreePosition> free = new ArrayList<>();
        for (FanPosition position : pcCase.positions()) {
            boolean taken = fans.stream().anyMatch(fan -> fan.place() == position.place());
            if (!taken && !position.choices().isEmpty()) {
                free.add(new FreePosition(position.place(), position.choices().get(0)));
            }
        }
        return free;
    }

    /**
     * The operating point of the case under load, shared out to its fans.
     *
     * <p>The climate model's own sum, taken apart: each fan moves its free flow less what the
     * pressure of the case holds back, everything times the share of full speed.
     *
     * @param it the build
     * @param pressurePa pressure of the case at full speed, in Pa
     * @param share speed over full speed
     */
    private record CaseAir(Assessment it, double pressurePa, double share) {
        static CaseAir of(Assessment it) {
            double flowM3h = Workings.coolingCase(it, State.LOAD).air().fullFlowM3h();
            double pressurePa = it.build().pcCase().impedance() * flowM3h * flowM3h;
            return new CaseAir(it, pressurePa, it.load().caseFanShare());
        }

        double includedM3h(int count) {
            PcCase pcCase = it.build().pcCase();
            return flowM3h(count, pcCase.includedFanM3h(), pcCase.includedFanPa());
        }

        double addedM3h(int count) {
            Build build = it.build();
            return build.has(Slot.FANS)
                    ? flowM3h(count, build.fan().flowM3h(), build.fan().pressurePa())
                    : 0;
        }

        private double flowM3h(int count, double freeM3h, double shutoffPa) {
            return share * count * freeM3h * (1 - pressurePa / shutoffPa);
        }
    }
}
