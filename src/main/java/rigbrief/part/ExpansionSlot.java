package rigbrief.part;

/**
 * An expansion slot of a board, written {@code x16:gen4:1}.
 *
 * @param lanes mechanical width in lanes
 * @param generation PCI Express generation
 * @param position which of the case's openings it lines up with, 1 nearest the processor
 */
public record ExpansionSlot(int lanes, int generation, int position) {
    static ExpansionSlot read(String entry) throws Cells.Malformed {
        if (!entry.matches("x(1|2|4|8|16):gen[2-6]:[1-9]")) {
            throw new Cells.Malformed(
                    "a width, a generation and a position",
                    "write x16:gen4:1, with ; between several");
        }
        String[] parts = entry.split(":");
        return new ExpansionSlot(
                Integer.parseInt(parts[0].substring(1)),
                Integer.parseInt(parts[1].substring(3)),
                Integer.parseInt(parts[2]));
    }
}
