package rigbrief.measurement.calibrate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import rigbrief.measurement.fit.FitResult;

/** Logarithms of measured over predicted, by what the prediction knows. */
final class Residuals {
    private final double[] before;
    private final double[] after;
    private final double[] leftOut;
    private final double[] newMachine;

    Residuals(List<Observation> observations, SpeedEquations equations, FitResult fit) {
        int count = observations.size();
        before = new double[count];
        after = new double[count];
        leftOut = new double[count];
        newMachine = new double[count];
        for (int i = 0; i < count; i++) {
            before[i] =
                    observations.get(i).log()
                            - observations.get(i).speed().log(new double[Channel.values().length]);
            after[i] = fit.residual(i);
            leftOut[i] = fit.residualLeftOut(i);
        }
        for (int[] group : machines(observations)) {
            double[] out = fit.residualsLeftOut(group);
            for (int i = 0; i < group.length; i++) {
                newMachine[group[i]] = out[i];
            }
        }
    }

    private static List<int[]> machines(List<Observation> observations) {
        Map<String, List<Integer>> byMachine = new LinkedHashMap<>();
        for (int i = 0; i < observations.size(); i++) {
            byMachine
                    .computeIfAbsent(
                            observations.get(i).measured().machine(), any -> new ArrayList<>())
                    .add(i);
        }
        return byMachine.values().stream()
                .map(list -> list.stream().mapToInt(i -> i).toArray())
                .toList();
    }

    /** Of a measurement on a machine that the fit has not seen. */
    double newMachine(int observation) {
        return newMachine[observation];
    }

    /** The errors of those measurements that are asked for. */
    ErrorTable errors(IntPredicate which) {
        int[] chosen = IntStream.range(0, before.length).filter(which).toArray();
        return new ErrorTable(
                errors(before, chosen),
                errors(after, chosen),
                errors(leftOut, chosen),
                errors(newMachine, chosen));
    }

    private static Errors errors(double[] logs, int[] chosen) {
        return Errors.of(IntStream.of(chosen).mapToDouble(i -> logs[i]).toArray());
    }
}
