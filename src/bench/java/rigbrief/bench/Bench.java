package rigbrief.bench;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import rigbrief.bench.agree.Agreement;
import rigbrief.bench.agree.Cross;
import rigbrief.bench.micro.Micro;
import rigbrief.bench.process.Phases;
import rigbrief.bench.process.WholeProcess;
import rigbrief.bench.process.Worlds;
import rigbrief.bench.quality.Quality;

/**
 * Runs the benchmarks named, one after the other, and writes their tables and plots into {@code
 * bench} in the build folder.
 */
public final class Bench {
    private static final Map<String, String> SETS =
            Map.of(
                    "quick",
                    "agreement=50 jmh=600 phases=600,2000 presolve=600,2000,20000,60000 process=600,2000 quality=3,600 cross=10,600",
                    "full",
                    "process=600,2000,20000,60000,200000 phases=600,2000,20000,60000,200000"
                            + " agreement=500 jmh=600,20000 quality=10,600 quality=10,2000 quality=10,20000"
                            + " cross=60,600 cross=60,2000");

    private Bench() {}

    /** Arguments: the build folder, then what to run, with blanks between. */
    public static void main(String[] args) throws Exception {
        Path build = Path.of(args[0]);
        Path out = build.resolve("bench");
        List<String> runs =
                Arrays.stream(args)
                        .skip(1)
                        .flatMap(words -> Arrays.stream(words.strip().split("\\s+")))
                        .flatMap(word -> Arrays.stream(SETS.getOrDefault(word, word).split(" ")))
                        .toList();
        Machine.table(out);
        boolean good = true;
        for (String run : runs) {
            good &= run(run, build, out);
        }
        System.exit(good ? 0 : 1);
    }

    private static boolean run(String run, Path build, Path out) throws Exception {
        String[] words = run.split("=", 2);
        if (words.length < 2) {
            throw new IllegalArgumentException(
                    "found benchmark %s, expected one of %s or NAME=NUMBERS"
                            .formatted(run, SETS.keySet()));
        }
        List<Integer> numbers = Arrays.stream(words[1].split(",")).map(Integer::valueOf).toList();
        switch (words[0]) {
            case "agreement" -> {
                return Agreement.run(numbers.get(0), out);
            }
            case "cross" -> {
                return Cross.run(Worlds.folder(out, numbers.get(1)), numbers.get(0), out);
            }
            case "jmh" -> Micro.run(out, words[1]);
            case "phases" -> Phases.run(out, numbers, true);
            case "presolve" -> Phases.run(out, numbers, false);
            case "process" -> WholeProcess.run(build, out, numbers);
            case "quality" -> Quality.run(Worlds.folder(out, numbers.get(1)), numbers.get(0), out);
            default -> throw new IllegalArgumentException("no benchmark " + words[0]);
        }
        return true;
    }
}
