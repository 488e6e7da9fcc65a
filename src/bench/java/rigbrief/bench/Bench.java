package rigbrief.bench;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import rigbrief.bench.agree.Agreement;
import rigbrief.bench.agree.Cross;
import rigbrief.bench.micro.Micro;
import rigbrief.bench.process.Phases;
import rigbrief.bench.process.WholeProcess;
import rigbrief.bench.process.Worlds;
import rigbrief.bench.quality.Quality;

/** Runs the benchmarks named and writes their tables. */
public final class Bench {
    private Bench() {}

    /** Arguments: the build folder, then what to run. */
    public static void main(String[] args) throws Exception {
        Path build = Path.of(args[0]);
        Path out = build.resolve("bench");
        List<String> runs = Arrays.asList(args).subList(1, args.length);
        boolean good = true;
        for (String run : runs) {
            String[] words = run.split("=", 2);
            switch (words[0]) {
                case "agreement" -> good &= Agreement.run(Integer.parseInt(words[1]), out);
                case "cross" -> {
                    String[] more = words[1].split(",", 2);
                    double seconds = Double.parseDouble(more[0]);
                    good &= Cross.run(Worlds.folder(out, sizes(more[1]).get(0)), seconds, out);
                }
                case "process" -> WholeProcess.run(build, out, sizes(words[1]));
                case "phases" -> Phases.run(out, sizes(words[1]));
                case "quality" -> Quality.run(Worlds.folder(out, sizes(words[1]).get(0)), out);
                case "jmh" -> Micro.run(out, words[1]);
                default -> throw new IllegalArgumentException("no benchmark " + run);
            }
        }
        System.exit(good ? 0 : 1);
    }

    private static List<Integer> sizes(String words) {
        return Arrays.stream(words.split(",")).map(Integer::valueOf).toList();
    }
}
