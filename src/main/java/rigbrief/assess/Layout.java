package rigbrief.assess;

import java.util.List;
import java.util.Optional;
import rigbrief.part.Place;

/**
 * Where the parts of a build go: the same answer for rules, models and the assembly plan.
 *
 * @param radiator side the radiator is mounted on; empty for an air cooler, or when no side takes
 *     it
 * @param radiatorFits whether the radiator, if there is one, found a side
 * @param includedFans fans of the case that stay, per side in the case's order
 * @param addedFans added fans that found a place, per side
 * @param unplacedFans added fans that found none
 * @param driveM2 for each drive, first drive first: number of its M.2 slot from 1; 0 for a drive in
 *     a bay, -1 when no slot takes it
 * @param sataPortsLeft SATA ports after M.2 slots in use took theirs; negative when drives want
 *     more
 * @param bays35Left 3.5-inch bays left; negative when drives want more
 * @param bays25Left 2.5-inch bays left
 * @param cageInUse whether a drive sits in the drive cage
 * @param cardFirst position of the card's slot; 0 without a card, -1 when the board has no slot of
 *     its width
 * @param cardLast last position the card covers; 0 without a card
 * @param wirelessPosition position of the slot of an x1 wireless card; 0 without one, -1 when none
 *     is free
 * @param cardLengthTakenMm how much a front radiator with its fans takes from the card's room
 */
public record Layout(
        Optional<Place> radiator,
        boolean radiatorFits,
        List<PlacedFans> includedFans,
        List<PlacedFans> addedFans,
        int unplacedFans,
        List<Integer> driveM2,
        int sataPortsLeft,
        int bays35Left,
        int bays25Left,
        boolean cageInUse,
        int cardFirst,
        int cardLast,
        int wirelessPosition,
        int cardLengthTakenMm) {
    /** Thickness of a case fan in mm, the size nearly all cases are drawn for (common practice). */
    public static final int FAN_THICKNESS_MM = 25;

    /**
     * Fans on one side.
     *
     * @param place which side
     * @param count how many
     * @param sizeMm frame size
     */
    public record PlacedFans(Place place, int count, int sizeMm) {}

    /** All case fans, included and added, radiator fans not counted. */
    public int caseFans() {
        int count = 0;
        for (PlacedFans fans : includedFans) {
            count += fans.count();
        }
        for (PlacedFans fans : addedFans) {
            count += fans.count();
        }
        return count;
    }
}
