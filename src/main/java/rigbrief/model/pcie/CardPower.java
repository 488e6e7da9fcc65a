package rigbrief.model.pcie;

import java.util.List;
import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * What a graphics card may draw through its slot and its plugs.
 *
 * <p>Formula: available = slot + sum of the plugs' sustained power.
 *
 * <p>Source: PCI Express Card Electromechanical Specification as restated in three places (slot
 * limits); ATX design guide 336521 revision 2.1a, chapter "PCI Express Add-in Card Considerations"
 * (300, 600 and 675 W per card); revision 2.0, page 29 (sharing among several cards).
 */
public final class CardPower {
    /** Card powers that the standards foresee. */
    public static final Range CARD_W = new Range("card power", 0, 675, "W");

    /** The x16 slot of a graphics card, W. */
    public static final int SLOT_X16_W = 75;

    /** x4 and x8 cards, and a full-height x1 card set for high power, W. */
    public static final int SLOT_X4_W = 25;

    /** An x1 card at its start, and a half-height one always, W. */
    public static final int SLOT_X1_W = 10;

    /** The greatest card before edition 5.0 of the card specification, W. */
    public static final int CARD_BEFORE_5_0_W = 300;

    /** The greatest card in edition 5.0, W. */
    public static final int CARD_5_0_W = 600;

    /** The greatest card in edition 5.1: a 600 W plug and the slot, W. */
    public static final int CARD_5_1_W = 675;

    /** The powers which the sense contacts of the 16-contact plug can signal, rising, W. */
    private static final int[] SIGNALLED_W = {150, 300, 450, 600};

    private CardPower() {}

    /**
     * Gives what a card may draw for longer than a second.
     *
     * @param slotW what its slot gives, W
     * @param connectors the plugs in its sockets, each as often as it is there
     * @return W
     */
    public static int availableW(int slotW, List<AuxiliaryConnector> connectors) {
        int sumW = (int) Expect.notNegative(slotW, "slotW");
        for (AuxiliaryConnector connector : connectors) {
            sumW += connector.sustainedW();
        }
        return sumW;
    }

    /**
     * Gives by how much a card draws more than its slot and plugs give.
     *
     * @param cardW the card's board power, W
     * @param availableW as from {@link #availableW}
     * @return W, 0 when it is enough
     */
    public static int shortfallW(int cardW, int availableW) {
        Expect.notNegative(cardW, "cardW");
        Expect.notNegative(availableW, "availableW");
        return Math.max(0, cardW - availableW);
    }

    /**
     * Gives the power that each of several cards may be told when they share a supply's budget.
     *
     * @param budgetW what the supply can give to all cards, W
     * @param cards how many
     * @return the greatest signalled power within an equal share, W; 0 below the least one
     */
    public static int signalledEachW(int budgetW, int cards) {
        int shareW =
                (int) Expect.notNegative(budgetW, "budgetW") / Expect.atLeastOne(cards, "cards");
        int eachW = 0;
        for (int signalledW : SIGNALLED_W) {
            if (signalledW <= shareW) {
                eachW = signalledW;
            }
        }
        return eachW;
    }
}
