package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A program that runs the same command over and over until it is killed. After each run it prints
 * how many have ended; what is on its way then is nobody's promise.
 */
public final class Restless {
    /** The day of the first price list. */
    static final LocalDate FIRST_DAY = LocalDate.of(2026, 12, 1);

    private Restless() {}

    /**
     * Runs until killed.
     *
     * @param arguments {@code order}, {@code import} or {@code others}, and the folder to work in
     */
    public static void main(String... arguments) throws IOException {
        Path folder = Path.of(arguments[1]);
        for (int run = 1; ; run++) {
            ExitStatus status =
                    switch (arguments[0]) {
                        case "order" -> order(folder, run);
                        case "import" -> takeIn(folder, run);
                        default -> overwrite(folder, run);
                    };
            if (status != ExitStatus.DONE) {
                System.out.println("status " + status);
                return;
            }
            System.out.println("done " + run);
            System.out.flush();
        }
    }

    private static ExitStatus order(Path folder, int run) {
        String state = run % 2 == 1 ? "received" : "fitted";
        return new Captured()
                .run(
                        "order",
                        folder.resolve("desk.build.yaml").toString(),
                        "wireless",
                        state,
                        "--date",
                        "2026-12-01",
                        "--catalog",
                        folder.toString());
    }

    private static ExitStatus takeIn(Path folder, int run) throws IOException {
        Path list = folder.resolve("list.csv");
        StringBuilder text = new StringBuilder("id,price,stock,days\n");
        int row = 0;
        for (String part : Files.readAllLines(folder.resolve("listed"))) {
            text.append("%s,%d.%02d,%d,2%n".formatted(part, 20 + row, run % 90 + 1, run));
            row++;
        }
        Files.writeString(list, text);
        return new Captured()
                .run(
                        "catalog",
                        "import",
                        list.toString(),
                        "--map",
                        folder.resolve("map.yaml").toString(),
                        "--as-of",
                        FIRST_DAY.plusDays(run).toString(),
                        "--catalog",
                        folder.toString());
    }

    /** Writes every other kind of file over the one of the run before. */
    private static ExitStatus overwrite(Path folder, int run) {
        for (List<String> line : overwriting(folder, folder.resolve("out"), run % 2)) {
            ExitStatus status = new Captured().run(line.toArray(String[]::new));
            if (status != ExitStatus.DONE) {
                return status;
            }
        }
        return ExitStatus.DONE;
    }

    /**
     * Command lines that write over what is there.
     *
     * @param folder holds the builds and measurements to write of
     * @param out where to
     * @param which of two contents, 0 or 1
     */
    static List<List<String>> overwriting(Path folder, Path out, int which) {
        String build = folder.resolve("build-" + which).toString();
        String measured = folder.resolve("measured-" + which).toString();
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("document", build, "--what", "orders", "--format", "csv"));
        lines.add(List.of("document", build, "--format", "html"));
        lines.add(List.of("accept", build));
        lines.add(List.of("replace", build, "--unavailable", "drive"));
        lines.add(List.of("calibrate", "--measured", measured));
        lines.add(List.of("propose", folder.resolve("desk.yaml").toString()));
        List<List<String>> whole = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            List<String> line = new ArrayList<>(lines.get(i));
            line.addAll(List.of("--out", out.resolve("made-" + i).toString(), "--force"));
            whole.add(line);
        }
        return whole;
    }
}
