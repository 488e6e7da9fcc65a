package rigbrief.build;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rigbrief.part.Board;
import rigbrief.part.Brace;
import rigbrief.part.Cables;
import rigbrief.part.Cooler;
import rigbrief.part.Display;
import rigbrief.part.Drive;
import rigbrief.part.Fan;
import rigbrief.part.Graphics;
import rigbrief.part.Memory;
import rigbrief.part.OperatingSystem;
import rigbrief.part.Part;
import rigbrief.part.PcCase;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.part.Wireless;

/**
 * A chosen part, or none, for every slot of one machine. Immutable.
 *
 * <p>The typed getters throw {@link IllegalStateException} on an empty slot: ask {@link #has}
 * first.
 */
public final class Build {
    private static final Slot[] SLOTS = Slot.values();
    private final Part[] parts;
    private final int[] pieces;

    private Build(Part[] parts, int[] pieces) {
        this.parts = parts;
        this.pieces = pieces;
    }

    /** A build with every slot empty. */
    public static Build empty() {
        return new Build(new Part[SLOTS.length], new int[SLOTS.length]);
    }

    /**
     * A build from one entry per slot, in slot order; a null part is an empty slot. The arrays are
     * copied.
     */
    public static Build of(Part[] parts, int[] pieces) {
        return new Build(parts.clone(), pieces.clone());
    }

    /** The same build with one slot filled otherwise. */
    public Build with(Slot slot, Part part, int count) {
        if (part.kind() != slot.kind() || count < 1) {
            throw new IllegalArgumentException(
                    "found %d of %s, a %s, for slot %s, expected at least one %s; choose a part of that kind"
                            .formatted(
                                    count,
                                    part.id(),
                                    part.kind().word(),
                                    slot.word(),
                                    slot.kind().word()));
        }
        Build copy = new Build(parts.clone(), pieces.clone());
        copy.parts[slot.ordinal()] = part;
        copy.pieces[slot.ordinal()] = count;
        return copy;
    }

    /** The same build with one slot empty. */
    public Build without(Slot slot) {
        Build copy = new Build(parts.clone(), pieces.clone());
        copy.parts[slot.ordinal()] = null;
        copy.pieces[slot.ordinal()] = 0;
        return copy;
    }

    /** Whether the slot is filled. */
    public boolean has(Slot slot) {
        return parts[slot.ordinal()] != null;
    }

    /** The part in a slot. */
    public Part part(Slot slot) {
        Part part = parts[slot.ordinal()];
        if (part == null) {
            throw new IllegalStateException(
                    "slot %s is empty, expected a part; ask has(slot) first"
                            .formatted(slot.word()));
        }
        return part;
    }

    /** How many packs of the part are in the slot; 0 when it is empty. */
    public int pieces(Slot slot) {
        return pieces[slot.ordinal()];
    }

    /** Filled slots in slot order, with their parts. */
    public Map<Slot, Part> filled() {
        Map<Slot, Part> filled = new EnumMap<>(Slot.class);
        for (Slot slot : SLOTS) {
            if (has(slot)) {
                filled.put(slot, parts[slot.ordinal()]);
            }
        }
        return filled;
    }

    /** Required slots that are empty, in slot order. */
    public List<Slot> missing() {
        List<Slot> missing = new ArrayList<>();
        for (Slot slot : SLOTS) {
            if (slot.required() && !has(slot)) {
                missing.add(slot);
            }
        }
        return missing;
    }

    /** The processor. */
    public Processor processor() {
        return (Processor) part(Slot.PROCESSOR);
    }

    /** The board. */
    public Board board() {
        return (Board) part(Slot.BOARD);
    }

    /** The memory kit. */
    public Memory memory() {
        return (Memory) part(Slot.MEMORY);
    }

    /** Memory modules of all kits together. */
    public int memoryModules() {
        return has(Slot.MEMORY) ? memory().modules() * pieces(Slot.MEMORY) : 0;
    }

    /** Memory of all kits together, in GB. */
    public int memoryGb() {
        return has(Slot.MEMORY) ? memory().kitGb() * pieces(Slot.MEMORY) : 0;
    }

    /** The graphics card. */
    public Graphics graphics() {
        return (Graphics) part(Slot.GRAPHICS);
    }

    /** The drives, first drive first. */
    public List<Drive> drives() {
        List<Drive> drives = new ArrayList<>(2);
        if (has(Slot.DRIVE)) {
            drives.add((Drive) part(Slot.DRIVE));
        }
        if (has(Slot.SECOND_DRIVE)) {
            drives.add((Drive) part(Slot.SECOND_DRIVE));
        }
        return drives;
    }

    /** The supply. */
    public Supply supply() {
        return (Supply) part(Slot.SUPPLY);
    }

    /** The cooler that was bought; none when the boxed one is used. */
    public Cooler cooler() {
        return (Cooler) part(Slot.COOLER);
    }

    /** The case. */
    public PcCase pcCase() {
        return (PcCase) part(Slot.CASE);
    }

    /** The fans beside those that come with the case. */
    public Fan fan() {
        return (Fan) part(Slot.FANS);
    }

    /** Number of added case fans, packs opened. */
    public int fanCount() {
        return has(Slot.FANS) ? fan().pack() * pieces(Slot.FANS) : 0;
    }

    /** The wireless card. */
    public Wireless wireless() {
        return (Wireless) part(Slot.WIRELESS);
    }

    /** The brace. */
    public Brace brace() {
        return (Brace) part(Slot.BRACE);
    }

    /** The cable set. */
    public Cables cables() {
        return (Cables) part(Slot.CABLES);
    }

    /** The operating-system licence. */
    public OperatingSystem system() {
        return (OperatingSystem) part(Slot.SYSTEM);
    }

    /** The display that is bought with the machine. */
    public Display display() {
        return (Display) part(Slot.DISPLAY);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Build build
                && java.util.Arrays.equals(parts, build.parts)
                && java.util.Arrays.equals(pieces, build.pieces);
    }

    @Override
    public int hashCode() {
        return 31 * java.util.Arrays.hashCode(parts) + java.util.Arrays.hashCode(pieces);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        filled().forEach(
                        (slot, part) ->
                                text.append(text.isEmpty() ? "" : ", ")
                                        .append(slot.word())
                                        .append('=')
                                        .append(part.id())
                                        .append(pieces(slot) > 1 ? " x" + pieces(slot) : ""));
        return text.toString();
    }
}
