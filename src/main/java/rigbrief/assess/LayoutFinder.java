package rigbrief.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Layout.PlacedFans;
import rigbrief.build.Build;
import rigbrief.part.CardPlace;
import rigbrief.part.Cooler;
import rigbrief.part.CoolerType;
import rigbrief.part.ExpansionSlot;
import rigbrief.part.FanPosition;
import rigbrief.part.IncludedFans;
import rigbrief.part.PcCase;
import rigbrief.part.Place;
import rigbrief.part.RadiatorPosition;
import rigbrief.part.Slot;

/**
 * Finds where the parts of a build go.
 *
 * <p>One fixed order of preference, so that the same build always gets the same places.
 */
final class LayoutFinder {
    /**
     * Where a radiator goes first: the front last, because there it shortens the room for the card.
     */
    private static final Place[] RADIATOR_ORDER = {
        Place.TOP, Place.REAR, Place.SIDE, Place.BOTTOM, Place.FRONT
    };

    /**
     * Where fans go first: cool air in at the front, warm air out behind and above (common
     * practice).
     */
    private static final Place[] FAN_ORDER = {
        Place.FRONT, Place.REAR, Place.TOP, Place.BOTTOM, Place.SIDE
    };

    private LayoutFinder() {}

    static Layout find(Build build) {
        PcCase pcCase = build.pcCase();
        Place radiator = radiator(build, pcCase);
        boolean wantsRadiator = wantsRadiator(build);
        List<PlacedFans> included = included(pcCase, radiator);
        List<PlacedFans> added = new ArrayList<>(4);
        int unplaced = addFans(build, pcCase, radiator, included, added);
        DrivePlaces drives = DrivePlaces.of(build);
        int cardFirst = cardFirst(build);
        int cardLast = cardFirst > 0 ? cardFirst + build.graphics().wholeSlots() - 1 : 0;
        int taken =
                radiator == Place.FRONT ? thicknessMm(build.cooler()) + Layout.FAN_THICKNESS_MM : 0;
        return new Layout(
                Optional.ofNullable(radiator),
                !wantsRadiator || radiator != null,
                included,
                added,
                unplaced,
                drives.m2Slots(),
                drives.sataPortsLeft(),
                drives.bays35Left(),
                drives.bays25Left(),
                drives.cageInUse(),
                cardFirst,
                cardLast,
                wirelessPosition(build, pcCase, cardFirst, cardLast, drives.lostPositions()),
                taken);
    }

    private static boolean wantsRadiator(Build build) {
        return build.has(Slot.COOLER) && build.cooler().type() == CoolerType.LIQUID;
    }

    private static Place radiator(Build build, PcCase pcCase) {
        if (!wantsRadiator(build)) {
            return null;
        }
        Cooler cooler = build.cooler();
        for (Place place : RADIATOR_ORDER) {
            for (RadiatorPosition position : pcCase.radiators()) {
                if (position.place() == place
                        && position.sizesMm().contains(cooler.radiatorMm())
                        && thicknessMm(cooler) <= position.thicknessMm()) {
                    return place;
                }
            }
        }
        return null;
    }

    /** The usual 27 mm stands in for a thickness that is not stated (common practice). */
    private static int thicknessMm(Cooler cooler) {
        return cooler.thickness().map(length -> length.millimetres()).or(27);
    }

    private static List<PlacedFans> included(PcCase pcCase, Place radiator) {
        List<PlacedFans> stay = new ArrayList<>(pcCase.includedFans().size());
        for (IncludedFans fans : pcCase.includedFans()) {
            if (fans.place() != radiator) {
                stay.add(new PlacedFans(fans.place(), fans.fans().count(), fans.fans().sizeMm()));
            }
        }
        return stay;
    }

    private static int addFans(
            Build build,
            PcCase pcCase,
            Place radiator,
            List<PlacedFans> included,
            List<PlacedFans> added) {
        int left = build.fanCount();
        if (left == 0) {
            return 0;
        }
        int sizeMm = build.fan().sizeMm();
        for (Place place : FAN_ORDER) {
            if (place != radiator && left > 0) {
                int fit = Math.min(left, freeRoom(pcCase, place, sizeMm, included));
                if (fit > 0) {
                    added.add(new PlacedFans(place, fit, sizeMm));
                    left -= fit;
                }
            }
        }
        return left;
    }

    private static int freeRoom(PcCase pcCase, Place place, int sizeMm, List<PlacedFans> included) {
        int room = 0;
        for (FanPosition position : pcCase.positions()) {
            if (position.place() == place) {
                room = Math.max(room, position.room(sizeMm));
            }
        }
        for (PlacedFans fans : included) {
            if (fans.place() == place) {
                // A side drilled for one size has no room beside fans of another.
                room = fans.sizeMm() == sizeMm ? room - fans.count() : 0;
            }
        }
        return Math.max(0, room);
    }

    private static int cardFirst(Build build) {
        if (!build.has(Slot.GRAPHICS)) {
            return 0;
        }
        int first = -1;
        for (ExpansionSlot slot : build.board().slots()) {
            if (slot.lanes() == 16 && (first < 0 || slot.position() < first)) {
                first = slot.position();
            }
        }
        return first;
    }

    private static int wirelessPosition(
            Build build, PcCase pcCase, int cardFirst, int cardLast, List<Integer> lost) {
        if (!build.has(Slot.WIRELESS) || build.wireless().place() != CardPlace.X1) {
            return 0;
        }
        for (ExpansionSlot slot : build.board().slots()) {
            boolean covered = slot.position() >= cardFirst && slot.position() <= cardLast;
            if (!covered
                    && slot.position() <= pcCase.expansionSlots()
                    && !lost.contains(slot.position())) {
                return slot.position();
            }
        }
        return -1;
    }
}
