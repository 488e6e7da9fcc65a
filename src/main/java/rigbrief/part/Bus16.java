package rigbrief.part;

/**
 * The PCI Express side of a graphics card, written {@code gen4x16}.
 *
 * @param generation PCI Express generation
 * @param lanes lanes wired on the card
 */
public record Bus16(int generation, int lanes) {
    static Bus16 read(String entry) throws Cells.Malformed {
        if (!entry.matches("gen[2-6]x(1|4|8|16)")) {
            throw new Cells.Malformed("a generation and a number of lanes", "write gen4x16");
        }
        return new Bus16(entry.charAt(3) - '0', Integer.parseInt(entry.substring(5)));
    }
}
