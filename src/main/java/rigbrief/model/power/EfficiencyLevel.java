package rigbrief.model.power;

import java.util.Arrays;
import java.util.Optional;

/**
 * The 80 PLUS levels with their least efficiency at 20, 50 and 100 % of the rating, and at lower
 * loads where a level has such points.
 *
 * <p>Source: the 80 PLUS programme's certification table, in a trade-press reproduction. {@link
 * #RUBY} is from memory. {@link #NONE} holds what any supply has to reach: in the Union the 82 / 85
 * / 82 % that Commission Regulation (EU) No 617/2013, Annex II asks of the internal supply of a
 * computer sold from July 2014 on (figures from memory), elsewhere the 65 / 72 / 70 % of ATX12V
 * design guide 2.2 (from memory; version 2.0 has 60 / 70 / 70 %).
 */
public enum EfficiencyLevel {
    /** No label: only what law or the design guide of its day asks for. */
    NONE("none", three(65, 72, 70), three(82, 85, 82), three(65, 72, 70)),
    /** The base level; not offered for redundant supplies. */
    WHITE("80plus", three(80, 80, 80), three(82, 85, 82), null),
    /** Bronze. */
    BRONZE("bronze", three(82, 85, 82), three(85, 88, 85), three(81, 85, 81)),
    /** Silver. */
    SILVER("silver", three(85, 88, 85), three(87, 90, 87), three(85, 89, 85)),
    /** Gold. */
    GOLD("gold", three(87, 90, 87), three(90, 92, 89), three(88, 92, 88)),
    /** Platinum. */
    PLATINUM("platinum", three(90, 92, 89), three(92, 94, 90), three(90, 94, 91)),
    /** Titanium, which also has a point at 10 % load. */
    TITANIUM("titanium", four(90, 92, 94, 90), four(90, 94, 96, 94), four(90, 94, 96, 91)),
    /** Ruby, for redundant supplies only, with points at 5 and 10 % load. */
    RUBY("ruby", null, null, EfficiencyRow.of(5, 90, 10, 91, 20, 95, 50, 96.5, 100, 92));

    private final String id;
    private final EfficiencyRow at115V;
    private final EfficiencyRow at230VEu;
    private final EfficiencyRow redundant;

    EfficiencyLevel(
            String id, EfficiencyRow at115V, EfficiencyRow at230VEu, EfficiencyRow redundant) {
        this.id = id;
        this.at115V = at115V;
        this.at230VEu = at230VEu;
        this.redundant = redundant;
    }

    private static EfficiencyRow three(double at20, double at50, double at100) {
        return EfficiencyRow.of(20, at20, 50, at50, 100, at100);
    }

    private static EfficiencyRow four(double at10, double at20, double at50, double at100) {
        return EfficiencyRow.of(10, at10, 20, at20, 50, at50, 100, at100);
    }

    /**
     * Gives the level's id.
     *
     * @return as in a catalogue cell, for example {@code gold}
     */
    public String id() {
        return id;
    }

    /**
     * Finds the level which a catalogue cell names.
     *
     * @param id for example {@code 80plus} or {@code gold}
     * @return the level, or nothing for an unknown id
     */
    public static Optional<EfficiencyLevel> find(String id) {
        return Arrays.stream(values()).filter(it -> it.id.equals(id)).findFirst();
    }

    /**
     * Tells whether the programme offers the level under a column.
     *
     * @param column which test
     * @return true when it has a row
     */
    public boolean isOffered(MainsColumn column) {
        return row(column) != null;
    }

    private EfficiencyRow row(MainsColumn column) {
        return switch (column) {
            case V115_INTERNAL -> at115V;
            case V230_EU_INTERNAL -> at230VEu;
            case V230_REDUNDANT -> redundant;
        };
    }

    EfficiencyRow rowFor(MainsColumn column) {
        EfficiencyRow row = row(column);
        if (row == null) {
            throw new IllegalArgumentException(
                    "column: found %s for %s, expected one with that level; ask isOffered first"
                            .formatted(column, id));
        }
        return row;
    }
}
