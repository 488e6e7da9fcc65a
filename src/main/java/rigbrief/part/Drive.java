package rigbrief.part;

/**
 * A drive.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param form shape
 * @param bus how it moves data
 * @param capacityGb capacity in GB
 * @param readMbs sequential read in MB/s
 * @param writeMbs sequential write in MB/s
 * @param enduranceTbw terabytes written that the guarantee covers
 * @param cache what it keeps its map in
 * @param dba level when busy in dB(A); 0 when nothing moves in it
 */
public record Drive(
        Listing listing,
        DriveForm form,
        Bus bus,
        int capacityGb,
        int readMbs,
        int writeMbs,
        Fact<Integer> enduranceTbw,
        DriveCache cache,
        double dba)
        implements Part {
    static Drive from(Listing listing, Cells cells) {
        return new Drive(
                listing,
                cells.choice("form", DriveForm.class),
                cells.choice("interface", Bus.class),
                cells.whole("capacity_gb", 16, 100_000),
                cells.whole("read_mbs", 20, 30_000),
                cells.whole("write_mbs", 20, 30_000),
                cells.maybeWhole("endurance_tbw", 1, 100_000).stream()
                        .mapToObj(Fact::of)
                        .findFirst()
                        .orElse(Fact.notStated(listing.id(), "endurance_tbw")),
                cells.choiceOr("cache", DriveCache.NONE),
                cells.numberOr("dba", 0, 60, 0));
    }

    /** The same drive with other rates, in MB/s. */
    public Drive rated(int otherReadMbs, int otherWriteMbs) {
        return new Drive(
                listing,
                form,
                bus,
                capacityGb,
                otherReadMbs,
                otherWriteMbs,
                enduranceTbw,
                cache,
                dba);
    }

    @Override
    public Kind kind() {
        return Kind.DRIVE;
    }
}
