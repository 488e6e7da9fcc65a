package rigbrief.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.part.Slot;

/**
 * A build as it is filed: what was chosen, from whom, at what price, for which brief, out of which
 * catalogue, how far its order has come, and what was done to it.
 *
 * @param brief the brief it answers; empty for a plain parts list
 * @param tier the tier it was proposed in; empty for a plain parts list
 * @param catalogueName name of the catalogue
 * @param catalogueDigest digest of the catalogue
 * @param lines one line per filled slot, in slot order
 * @param aside parts that were replaced after they had been ordered, oldest first
 * @param history what was done, oldest first
 */
public record BuildRecord(
        Optional<Brief> brief,
        Optional<String> tier,
        String catalogueName,
        String catalogueDigest,
        List<BuildLine> lines,
        List<SetAside> aside,
        List<HistoryEntry> history) {
    public BuildRecord {
        lines = List.copyOf(lines);
        aside = List.copyOf(aside);
        history = List.copyOf(history);
    }

    /** A build that nothing was done to yet. */
    public BuildRecord(
            Optional<Brief> brief,
            Optional<String> tier,
            String catalogueName,
            String catalogueDigest,
            List<BuildLine> lines) {
        this(brief, tier, catalogueName, catalogueDigest, lines, List.of(), List.of());
    }

    /** The parts alone. */
    public Build build() {
        Build build = Build.empty();
        for (BuildLine line : lines) {
            build = build.with(line.slot(), line.part(), line.pieces());
        }
        return build;
    }

    /** How many machines are built alike. */
    public int machines() {
        return brief.map(Brief::quantity).orElse(1);
    }

    /** The line of a slot. */
    public Optional<BuildLine> line(Slot slot) {
        return lines.stream().filter(line -> line.slot() == slot).findFirst();
    }

    /** The same build with other lines, set aside lines and history. */
    public BuildRecord with(
            List<BuildLine> newLines, List<SetAside> newAside, List<HistoryEntry> newHistory) {
        return new BuildRecord(
                brief, tier, catalogueName, catalogueDigest, newLines, newAside, newHistory);
    }

    /** The same build, filed for another catalogue. */
    public BuildRecord from(String name, String digest) {
        return new BuildRecord(brief, tier, name, digest, lines, aside, history);
    }

    /**
     * The same build with another part in a slot. What was ordered of the part before is set aside,
     * so that no order is lost, and the history tells of the swap.
     *
     * @param to the new line of the slot
     */
    public BuildRecord swapped(
            BuildLine to, LocalDate date, Optional<String> by, Optional<String> note) {
        return swapped(to.slot(), Optional.of(to), date, by, note);
    }

    /** The same build with a slot left empty, as {@link #swapped} would leave it. */
    public BuildRecord emptied(
            Slot slot, LocalDate date, Optional<String> by, Optional<String> note) {
        return swapped(slot, Optional.empty(), date, by, note);
    }

    private BuildRecord swapped(
            Slot slot,
            Optional<BuildLine> to,
            LocalDate date,
            Optional<String> by,
            Optional<String> note) {
        List<BuildLine> newLines = new ArrayList<>(lines);
        List<SetAside> newAside = new ArrayList<>(aside);
        Optional<BuildLine> before = line(slot);
        before.ifPresent(newLines::remove);
        before.flatMap(this::begun).ifPresent(newAside::add);
        to.ifPresent(newLines::add);
        newLines.sort(Comparator.comparing(BuildLine::slot));
        List<HistoryEntry> newHistory = new ArrayList<>(history);
        newHistory.add(
                new HistoryEntry.Swap(
                        date,
                        by,
                        slot,
                        before.map(line -> line.part().id()),
                        to.map(line -> line.part().id()),
                        note));
        return with(newLines, newAside, newHistory);
    }

    /** What of a line has been ordered at least; empty when nothing has. */
    private Optional<SetAside> begun(BuildLine line) {
        List<Units> begun =
                line.units(machines()).stream()
                        .filter(units -> units.state() != PartState.WANTED)
                        .toList();
        return begun.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new SetAside(
                                line.slot(),
                                line.part().id(),
                                line.part().name(),
                                line.supplier(),
                                line.unitPrice(),
                                line.kept(),
                                begun));
    }
}
