package rigbrief.model.pcie;

import java.util.Arrays;
import java.util.Optional;

/**
 * The supply's plugs for graphics cards, with what each may give for longer than a second.
 *
 * <p>Source: ATX 3.0 design guide, document 336521, page 26, and ATX12VO guide 613768 revision
 * 2.01, table 3-5.
 */
public enum AuxiliaryConnector {
    /** Six contacts. */
    SIX_PIN("6pin", 75, 6.75),
    /** Eight contacts. */
    EIGHT_PIN("8pin", 150, 13.5),
    /** Twelve power and four sense contacts. */
    TWELVE_TWO_BY_SIX("12v2x6", 600, 55);

    private final String id;
    private final int sustainedW;
    private final double maxRmsA;

    AuxiliaryConnector(String id, int sustainedW, double maxRmsA) {
        this.id = id;
        this.sustainedW = sustainedW;
        this.maxRmsA = maxRmsA;
    }

    /**
     * Gives the plug's id.
     *
     * @return as in a catalogue cell, for example {@code 8pin}
     */
    public String id() {
        return id;
    }

    /**
     * Gives the power it may carry as an average over any second.
     *
     * @return W
     */
    public int sustainedW() {
        return sustainedW;
    }

    /**
     * Gives the greatest effective current.
     *
     * @return A
     */
    public double maxRmsA() {
        return maxRmsA;
    }

    /**
     * Finds the plug which a catalogue cell names.
     *
     * @param id for example {@code 12v2x6}
     * @return the plug, or nothing for an unknown id
     */
    public static Optional<AuxiliaryConnector> find(String id) {
        return Arrays.stream(values()).filter(it -> it.id.equals(id)).findFirst();
    }
}
