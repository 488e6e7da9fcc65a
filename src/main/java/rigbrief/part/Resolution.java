package rigbrief.part;

/**
 * A picture size, written {@code 2560x1440}.
 *
 * @param widthPx pixels across
 * @param heightPx pixels down
 */
public record Resolution(int widthPx, int heightPx) {
    /** Reads one. */
    public static Resolution read(String entry) throws Cells.Malformed {
        if (!entry.matches("[1-9][0-9]{2,4}x[1-9][0-9]{2,4}")) {
            throw new Cells.Malformed("pixels across and down", "write 2560x1440");
        }
        int x = entry.indexOf('x');
        return new Resolution(
                Integer.parseInt(entry.substring(0, x)), Integer.parseInt(entry.substring(x + 1)));
    }

    /** Number of pixels in a million. */
    public double megapixels() {
        return (double) widthPx * heightPx / 1e6;
    }

    @Override
    public String toString() {
        return widthPx + "x" + heightPx;
    }
}
