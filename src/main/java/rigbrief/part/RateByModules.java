package rigbrief.part;

/**
 * The fastest memory rate with up to a number of modules fitted, written {@code 2:6000}.
 *
 * @param modules number of modules, the table ascending
 * @param mts transfers per second in millions
 */
public record RateByModules(int modules, int mts) {
    static RateByModules read(String entry) throws Cells.Malformed {
        if (!entry.matches("[0-9]{1,2}:[0-9]{3,5}")) {
            throw new Cells.Malformed(
                    "a number of modules and a rate in MT/s",
                    "write 2:6000;4:4800, fewest modules first");
        }
        int colon = entry.indexOf(':');
        return new RateByModules(
                Integer.parseInt(entry.substring(0, colon)),
                Integer.parseInt(entry.substring(colon + 1)));
    }
}
