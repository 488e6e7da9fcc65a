package rigbrief.diagnostic;

import java.util.Optional;

/**
 * Finds the word somebody probably meant.
 *
 * <p>Distance is the number of letters put in, left out, exchanged or swapped with their neighbour
 * (optimal string alignment). Words further than a third of the typed length, or than three steps,
 * are not offered.
 */
public final class Nearest {
    private static final int MOST_STEPS = 3;

    private Nearest() {}

    /** The nearest word; the first of several equally near; empty when none is near. */
    public static Optional<String> to(String typed, Iterable<String> words) {
        int most = Math.min(MOST_STEPS, Math.max(1, typed.length() / 3));
        String best = null;
        for (String word : words) {
            int steps =
                    Math.abs(word.length() - typed.length()) > most
                            ? most + 1
                            : distance(typed, word);
            if (steps <= most) {
                best = word;
                most = steps - 1;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Number of steps from one word to another. */
    static int distance(String from, String to) {
        int[] beforeLast = new int[to.length() + 1];
        int[] last = new int[to.length() + 1];
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int[] spare = beforeLast;
            beforeLast = last;
            last = row;
            row = spare;
            fill(row, last, beforeLast, from, to, i);
        }
        return row[to.length()];
    }

    private static void fill(
            int[] row, int[] last, int[] beforeLast, String from, String to, int i) {
        row[0] = i;
        for (int j = 1; j <= to.length(); j++) {
            int exchanged = last[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
            row[j] = Math.min(exchanged, 1 + Math.min(row[j - 1], last[j]));
            if (i > 1
                    && j > 1
                    && from.charAt(i - 1) == to.charAt(j - 2)
                    && from.charAt(i - 2) == to.charAt(j - 1)) {
                row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
            }
        }
    }
}
