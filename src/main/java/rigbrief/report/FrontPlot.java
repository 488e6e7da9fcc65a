package rigbrief.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import rigbrief.proposal.budget.FrontStep;
import rigbrief.quantity.Money;

/** A front as lines of letters: money to the right, utility upwards. */
final class FrontPlot {
    private static final int WIDTH = 66;
    private static final int HEIGHT = 15;
    private static final int LABEL = 7;
    private static final int TICKS = 4;

    /** Letters to draw with. */
    enum Letters {
        ASCII('|', '-', '+', '*', 'K'),
        UNICODE('\u2502', '\u2500', '\u2514', '\u2022', '\u25c6');

        private final char side;
        private final char floor;
        private final char corner;
        private final char point;
        private final char knee;

        Letters(char side, char floor, char corner, char point, char knee) {
            this.side = side;
            this.floor = floor;
            this.corner = corner;
            this.point = point;
            this.knee = knee;
        }
    }

    private final List<FrontStep> steps;
    private final Currency currency;
    private final Letters letters;
    private final double leastMinor;
    private final double mostMinor;
    private final double least;
    private final double most;

    /**
     * A plot.
     *
     * @param steps at least two, cheapest first
     */
    FrontPlot(List<FrontStep> steps, Currency currency, Letters letters) {
        this.steps = steps;
        this.currency = currency;
        this.letters = letters;
        FrontStep first = steps.get(0);
        FrontStep last = steps.get(steps.size() - 1);
        this.leastMinor = first.totalMinor();
        this.mostMinor = Math.max(last.totalMinor(), first.totalMinor() + 1);
        this.least = Math.floor(first.utility() * 10) / 10;
        this.most = Math.max(least + 0.1, Math.ceil(last.utility() * 10) / 10);
    }

    /** The lines, none wider than 80 columns with an indent of two. */
    List<String> lines() {
        char[][] rows = new char[HEIGHT][WIDTH];
        for (char[] row : rows) {
            Arrays.fill(row, ' ');
        }
        for (FrontStep step : steps) {
            mark(rows, step, letters.point);
        }
        steps.stream().filter(FrontStep::knee).forEach(step -> mark(rows, step, letters.knee));
        List<String> lines = new ArrayList<>();
        for (int row = 0; row < HEIGHT; row++) {
            lines.add(label(row) + letters.side + new String(rows[row]));
        }
        lines.add(" ".repeat(LABEL) + letters.corner + String.valueOf(letters.floor).repeat(WIDTH));
        lines.add(moneyLabels());
        return lines;
    }

    private void mark(char[][] rows, FrontStep step, char letter) {
        double across = (step.totalMinor() - leastMinor) / (mostMinor - leastMinor);
        double up = (step.utility() - least) / (most - least);
        int column = (int) Math.round(across * (WIDTH - 1));
        int row = HEIGHT - 1 - (int) Math.round(up * (HEIGHT - 1));
        rows[row][column] = letter;
    }

    private String label(int row) {
        boolean told = row % ((HEIGHT - 1) / 2) == 0;
        double value = most - (most - least) * row / (HEIGHT - 1);
        return told ? " %5s ".formatted(Rounded.print(2, value, "")) : " ".repeat(LABEL);
    }

    private String moneyLabels() {
        StringBuilder line = new StringBuilder(" ".repeat(LABEL));
        for (int tick = 0; tick <= TICKS; tick++) {
            long minor = Math.round(leastMinor + (mostMinor - leastMinor) * tick / TICKS);
            String words = Money.ofMinor(minor, currency).grouped();
            int centre = LABEL + 1 + (WIDTH - 1) * tick / TICKS;
            int from = Math.max(line.length(), centre - words.length() / 2);
            from = Math.min(from, LABEL + 1 + WIDTH + 4 - words.length());
            line.append(" ".repeat(Math.max(0, from - line.length()))).append(words);
        }
        return line.toString();
    }
}
