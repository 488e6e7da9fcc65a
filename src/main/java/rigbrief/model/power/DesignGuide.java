package rigbrief.model.power;

import java.util.Arrays;
import java.util.Optional;

/**
 * The edition of the desktop supply design guide that a supply is built to.
 *
 * <p>Source: ATX Version 3 Multi Rail Desktop Platform Power Supply Design Guide, document 336521,
 * revisions 2.0 and 2.01 (ATX 3.0) and 2.1a (ATX 3.1). Earlier guides have no excursion table.
 */
public enum DesignGuide {
    /** Any guide before version 3. */
    ATX2("atx2", false),
    /** Version 3.0. */
    ATX3_0("atx3.0", true),
    /** Version 3.1. */
    ATX3_1("atx3.1", true);

    private final String id;
    private final boolean allowsExcursions;

    DesignGuide(String id, boolean allowsExcursions) {
        this.id = id;
        this.allowsExcursions = allowsExcursions;
    }

    /**
     * Gives the guide's id.
     *
     * @return as in a catalogue cell, for example {@code atx3.0}
     */
    public String id() {
        return id;
    }

    /**
     * Tells whether the guide asks a supply to stand more than its rating for a short time.
     *
     * @return true from version 3 on
     */
    public boolean allowsExcursions() {
        return allowsExcursions;
    }

    /**
     * Finds the guide which a catalogue cell names.
     *
     * @param id for example {@code atx3.1}
     * @return the guide, or nothing for an unknown id
     */
    public static Optional<DesignGuide> find(String id) {
        return Arrays.stream(values()).filter(it -> it.id.equals(id)).findFirst();
    }
}
