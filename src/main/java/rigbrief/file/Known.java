package rigbrief.file;

import rigbrief.catalogue.Catalogue;

/**
 * What is known of a catalogue while the files that name its parts are read.
 *
 * <p>Of one with faults nothing is looked up: whatever a brief or build names may stand in a row
 * that could not be read, and would be called unknown with no reason. All else about such a file is
 * told, so that the faults of all files are heard of at once.
 *
 * @param catalogue the catalogue; where it has faults, its name and currency alone
 * @param whole whether all of it could be read
 */
public record Known(Catalogue catalogue, boolean whole) {
    /** A catalogue without a fault. */
    public static Known of(Catalogue catalogue) {
        return new Known(catalogue, true);
    }
}
