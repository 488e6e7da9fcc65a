package rigbrief.assembly;

import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.part.Board;
import rigbrief.part.Fact;
import rigbrief.part.FamilySupport;

/**
 * A firmware update that has to come before the first boot.
 *
 * @param how how the new firmware gets onto the board
 * @param family the processor family that wants it
 * @param shipped version the board leaves the shop with
 * @param needed first version that knows the family
 */
public record FirmwareStep(How how, String family, String shipped, String needed) {
    /** Ways to write firmware. */
    public enum How {
        /** The board writes it by itself, with no processor fitted. */
        WITHOUT_PROCESSOR,
        /** A processor that the shipped firmware knows is lent to the board. */
        WITH_HELPER,
        /** Nothing at hand can write it: the shop has to. */
        BY_THE_SHOP
    }

    /**
     * The update a build needs; empty when the shipped firmware knows the processor, and when the
     * board's list is not stated or does not hold the family, which rule {@code family} tells.
     */
    public static Optional<FirmwareStep> of(Assessment it) {
        Board board = it.build().board();
        String family = it.build().processor().family();
        if (!(board.families() instanceof Fact.Stated<List<FamilySupport>> stated)) {
            return Optional.empty();
        }
        return stated.value().stream()
                .filter(support -> support.family().equals(family))
                .findFirst()
                .filter(s -> !FamilySupport.atLeast(board.shippedFirmware(), s.firmware()))
                .map(s -> new FirmwareStep(how(it), family, board.shippedFirmware(), s.firmware()));
    }

    private static How how(Assessment it) {
        if (it.build().board().firmwareWithoutProcessor()) {
            return How.WITHOUT_PROCESSOR;
        }
        return it.brief().place().helperProcessor() ? How.WITH_HELPER : How.BY_THE_SHOP;
    }
}
