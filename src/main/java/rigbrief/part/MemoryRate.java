package rigbrief.part;

/**
 * A memory generation with a rate, written {@code ddr5@5600}.
 *
 * @param type memory generation
 * @param mts transfers per second in millions
 */
public record MemoryRate(MemoryType type, int mts) {
    static MemoryRate read(String entry) throws Cells.Malformed {
        for (MemoryType type : MemoryType.values()) {
            String prefix = type.word() + "@";
            if (entry.startsWith(prefix)
                    && entry.substring(prefix.length()).matches("[0-9]{3,5}")) {
                return new MemoryRate(type, Integer.parseInt(entry.substring(prefix.length())));
            }
        }
        throw new Cells.Malformed(
                "a generation and a rate in MT/s", "write ddr5@5600, with ; between several");
    }
}
