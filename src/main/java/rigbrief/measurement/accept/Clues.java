package rigbrief.measurement.accept;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What was measured, set against what a hypothesis lets expect.
 *
 * <p>Formulas: a speed counts as the logarithm of measured over expected, spread by what the fit
 * leaves and by repeating; of an average and a 1 % low from one log the second counts by how far
 * the two moved apart. Rates that are read off count by their logarithm, temperatures by kelvin.
 *
 * <p>Common practice: the spreads.
 */
final class Clues {
    /** How well a run repeats, on the log scale. */
    private static final double REPEAT_SIGMA = 0.02;

    /** How well a 1 % low repeats against its average, on the log scale. */
    private static final double LOW_SIGMA = 0.06;

    private static final double READ_OFF_SIGMA = 0.02;
    private static final double HEAT_SIGMA_K = 4;
    private static final double USE_SIGMA_PERCENT = 5;
    private static final double CHECK_SIGMA = 0.25;
    private static final double NEXT_TO_NOTHING = 1e-3;

    /** Lines beside speed in which causes differ: draw, noise and ports say nothing. */
    private static final List<String> READ =
            List.of(
                    SheetIds.MEMORY_RATE,
                    SheetIds.MEMORY_SIZE,
                    SheetIds.MEMORY_MODULES,
                    SheetIds.MEMORY_CHANNELS,
                    SheetIds.CARD_LANES,
                    SheetIds.PROCESSOR_C,
                    SheetIds.CARD_C,
                    SheetIds.IDLE_USE,
                    SheetIds.ON_CARD);

    private final List<JudgedLine> lines;
    private final List<Trial> trials;
    private final Map<String, Double> measured = new LinkedHashMap<>();

    /**
     * One clue.
     *
     * @param apart measured less expected, on the clue's own scale
     * @param sigma spread expected of that
     */
    record Clue(double apart, double sigma) {}

    Clues(List<JudgedLine> lines, List<Trial> trials) {
        this.lines = List.copyOf(lines);
        this.trials = List.copyOf(trials);
        for (JudgedLine line : lines) {
            line.measured().ifPresent(figure -> measured.put(line.line().id(), figure));
        }
    }

    /** Whether a line says anything about the causes. */
    static boolean speaks(SheetLine line) {
        return line.part() == SheetLine.Station.SPEED || READ.contains(line.id());
    }

    double measured(String id) {
        return measured.get(id);
    }

    /** Lines about speed that were measured. */
    List<SheetLine> speedLines() {
        return lines.stream()
                .map(JudgedLine::line)
                .filter(line -> line.part() == SheetLine.Station.SPEED)
                .filter(line -> measured.containsKey(line.id()))
                .toList();
    }

    /** What a hypothesis lets expect of every speed. */
    Map<String, Double> expected(Hypothesis hypothesis) {
        Map<String, Double> expected = new LinkedHashMap<>();
        for (Trial trial : trials) {
            trial.on(hypothesis.machine())
                    .forEach(
                            (id, figure) ->
                                    expected.put(
                                            id,
                                            id.endsWith(Trial.LOW)
                                                    ? figure * hypothesis.lowFactor()
                                                    : figure));
        }
        return expected;
    }

    /** All clues under a hypothesis. */
    List<Clue> under(Hypothesis hypothesis) {
        List<Clue> clues = new ArrayList<>();
        Map<String, Double> expected = expected(hypothesis);
        for (Trial trial : trials) {
            addSpeed(clues, trial, expected);
        }
        for (JudgedLine line : lines) {
            if (line.measured().isPresent()) {
                addRead(clues, line.line(), line.measured().getAsDouble(), hypothesis.shows());
            }
        }
        return clues;
    }

    private void addSpeed(List<Clue> clues, Trial trial, Map<String, Double> expected) {
        double fitted = trial.workload().fitted().sigma();
        double sigma = Math.hypot(fitted, REPEAT_SIGMA);
        String average = trial.name() + Trial.AVERAGE;
        String low = trial.name() + Trial.LOW;
        String finish = trial.name() + Trial.FINISH;
        if (measured.containsKey(average)) {
            clues.add(new Clue(log(average, expected), sigma));
        }
        if (measured.containsKey(low)) {
            boolean both = measured.containsKey(average);
            double apart = log(low, expected) - (both ? log(average, expected) : 0);
            clues.add(new Clue(apart, both ? LOW_SIGMA : Math.hypot(sigma, LOW_SIGMA)));
        }
        if (measured.containsKey(finish)) {
            clues.add(new Clue(log(finish, expected), sigma));
        }
    }

    private double log(String id, Map<String, Double> expected) {
        return Math.log(measured.get(id) / expected.get(id));
    }

    private static void addRead(
            List<Clue> clues, SheetLine line, double figure, Map<String, Double> shows) {
        if (!READ.contains(line.id())) {
            return;
        }
        double expected = shows.getOrDefault(line.id(), line.middle().orElse(1));
        clues.add(
                switch (line.unit()) {
                    case CELSIUS -> new Clue(figure - expected, HEAT_SIGMA_K);
                    case PERCENT -> new Clue(figure - expected, USE_SIGMA_PERCENT);
                    case CHECK -> new Clue(figure - expected, CHECK_SIGMA);
                    default -> new Clue(logOf(figure / expected), READ_OFF_SIGMA);
                });
    }

    /** Nothing seen at all counts as next to nothing. */
    private static double logOf(double ratio) {
        return Math.log(Math.max(ratio, NEXT_TO_NOTHING));
    }
}
