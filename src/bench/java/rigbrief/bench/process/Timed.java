package rigbrief.bench.process;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;

/**
 * One run of the packaged program as its user starts it.
 *
 * <p>A shell waits for it and prints with {@code times} what the kernel charged the program, which
 * is exact; the peak of resident memory is the last {@code VmHWM} that a look into {@code /proc}
 * every few milliseconds shows, which can only be short of what came within the last look.
 *
 * @param wallS seconds on the wall, the shell's start included (about 2 ms)
 * @param cpuS seconds on the processor, user and system, all threads
 * @param peakMb most resident memory in MB
 * @param status exit status
 * @param out what it printed
 */
public record Timed(double wallS, double cpuS, double peakMb, int status, Path out) {
    private static final long LOOK_MS = 3;
    private static final double KB_A_MB = 1000;
    private static final String SCRIPT =
            "out=$1; shift; \"$@\" >\"$out\" 2>\"$out.err\" & p=$!; echo $p; wait $p; s=$?; times; echo $s";

    /**
     * Runs a command.
     *
     * @param out where its output goes
     * @param minutes most time; it is stopped then, and the status is that of a killed program
     */
    public static Timed run(
            Path out, Map<String, String> variables, int minutes, List<String> words)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("sh", "-c", SCRIPT, "sh", out.toString()));
        command.addAll(words);
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().putAll(variables);
        builder.redirectErrorStream(true);
        long start = System.nanoTime();
        Process shell = builder.start();
        try (BufferedReader lines = shell.inputReader(StandardCharsets.UTF_8)) {
            long pid = Long.parseLong(lines.readLine().strip());
            long peakKb = watch(shell, pid, minutes);
            List<String> rest = lines.lines().toList();
            double wall = (System.nanoTime() - start) / 1e9;
            String[] children = rest.get(1).strip().split("\\s+");
            return new Timed(
                    wall,
                    seconds(children[0]) + seconds(children[1]),
                    peakKb / KB_A_MB,
                    Integer.parseInt(rest.get(2).strip()),
                    out);
        }
    }

    private static long watch(Process shell, long pid, int minutes) throws InterruptedException {
        long deadline = System.nanoTime() + TimeUnit.MINUTES.toNanos(minutes);
        long peak = 0;
        while (!shell.waitFor(LOOK_MS, TimeUnit.MILLISECONDS)) {
            peak = Math.max(peak, peakKb(pid).orElse(0));
            if (System.nanoTime() > deadline) {
                ProcessHandle.of(pid).ifPresent(ProcessHandle::destroyForcibly);
            }
        }
        return peak;
    }

    private static OptionalLong peakKb(long pid) {
        try {
            for (String line : Files.readAllLines(Path.of("/proc/" + pid + "/status"))) {
                if (line.startsWith("VmHWM:")) {
                    return OptionalLong.of(Long.parseLong(line.replaceAll("\\D", "")));
                }
            }
        } catch (IOException | java.io.UncheckedIOException gone) {
            return OptionalLong.empty();
        }
        return OptionalLong.empty();
    }

    /** Seconds of the form {@code 1m2.34s}. */
    private static double seconds(String text) {
        int m = text.indexOf('m');
        return 60 * Double.parseDouble(text.substring(0, m))
                + Double.parseDouble(text.substring(m + 1, text.length() - 1));
    }
}
