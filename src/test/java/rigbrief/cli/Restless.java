package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;

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
     * @param arguments {@code order} or {@code import}, and the folder to work in
     */
    public static void main(String... arguments) throws IOException {
        Path folder = Path.of(arguments[1]);
        for (int run = 1; ; run++) {
            ExitStatus status =
                    arguments[0].equals("order") ? order(folder, run) : takeIn(folder, run);
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
}
