package rigbrief.model.power;

import rigbrief.model.Expect;

/**
 * The three test columns of the 80 PLUS programme.
 *
 * <p>Source: the programme's certification table, in a trade-press reproduction. The split at 180 V
 * is common practice: mains is nominally 100 to 127 V or 220 to 240 V.
 */
public enum MainsColumn {
    /** 115 V, internal supply without redundancy. */
    V115_INTERNAL,
    /** 230 V, internal supply without redundancy, the EU column. */
    V230_EU_INTERNAL,
    /** 230 V, redundant supply of a data centre. */
    V230_REDUNDANT;

    private static final double SPLIT_V = 180;

    /**
     * Gives the column of a desktop supply for a mains voltage.
     *
     * @param mainsV nominal voltage, V
     * @return the 115 V column below 180 V, else the EU column
     * @throws IllegalArgumentException for a voltage that is not above 0
     */
    public static MainsColumn forMains(double mainsV) {
        return Expect.positive(mainsV, "mainsV") < SPLIT_V ? V115_INTERNAL : V230_EU_INTERNAL;
    }
}
