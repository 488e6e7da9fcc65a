package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import rigbrief.diagnostic.Quotation;

/**
 * Runs command lines over a {@link SmallShop} and demands of each what is promised of all: one of
 * the documented exit statuses but the internal fault, an end within a minute, no stack trace, no
 * character that acts, a place for every fault of a file, and no input file changed.
 */
final class Ordeal implements AutoCloseable {
    /** Not a measure of speed: only what never ends is longer. */
    private static final long MOST_SECONDS = 120;

    private static final Pattern PLACE =
            Pattern.compile("(?m)^.*:[1-9][0-9]*:[1-9][0-9]*: .+: found .+, expected .+; .+$");
    private static final Pattern TRACE =
            Pattern.compile("(?m)^\\s+at [a-z]+[.].*[(]|[a-z]Exception: |internal fault: ");

    private final SmallShop shop;
    private final Map<ExitStatus, Integer> countByStatus = new TreeMap<>();
    private ExecutorService worker = Executors.newSingleThreadExecutor(Ordeal::daemon);
    private volatile Thread working;

    Ordeal(SmallShop shop) {
        this.shop = shop;
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(null, work, "ordeal", 0);
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Puts files in the place of sound ones, runs a command line, and puts everything back.
     *
     * @param spoilt bytes by name of file
     * @param input what stands on standard input
     * @param mayWrite names of files that the command may change or make if it succeeds
     * @return how it ended
     */
    ExitStatus run(
            Map<String, byte[]> spoilt, byte[] input, Set<String> mayWrite, String... arguments)
            throws IOException {
        for (var file : spoilt.entrySet()) {
            shop.spoil(file.getKey(), file.getValue());
        }
        Captured captured = new Captured().input(input);
        String what = "rigbrief " + String.join(" ", arguments) + " with " + shown(spoilt);
        List<String> changed = new ArrayList<>();
        try {
            ExitStatus status = ended(captured, arguments, what);
            changed.addAll(shop.changed());
            check(captured, status, what);
            checkFiles(changed, status, mayWrite, what);
            countByStatus.merge(status, 1, Integer::sum);
            return status;
        } finally {
            changed.addAll(spoilt.keySet());
            shop.restore(changed);
        }
    }

    private ExitStatus ended(Captured captured, String[] arguments, String what) {
        // A stack trace is never wanted, but should there be one it had better tell all.
        String[] debugged = Arrays.copyOf(arguments, arguments.length + 1);
        debugged[arguments.length] = RootCommand.DEBUG;
        var run =
                worker.submit(
                        () -> {
                            working = Thread.currentThread();
                            return captured.run(debugged);
                        });
        try {
            return run.get(MOST_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException endless) {
            String where = List.of(working.getStackTrace()).toString();
            worker.shutdownNow();
            worker = Executors.newSingleThreadExecutor(Ordeal::daemon);
            return fail("no end within %d s: %s at %s", MOST_SECONDS, what, where);
        } catch (ExecutionException thrown) {
            return fail("thrown by " + what, thrown.getCause());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return fail("interrupted");
        }
    }

    private static void check(Captured captured, ExitStatus status, String what) {
        String said = captured.err() + captured.out();
        assertThat(status).as("%s\n%s", what, said).isNotEqualTo(ExitStatus.INTERNAL_FAULT);
        assertThat(TRACE.matcher(said).find()).as("a trace in: %s\n%s", what, said).isFalse();
        assertThat(acting(captured.err()))
                .as("characters that act in: %s\n%s", what, captured.err())
                .isEmpty();
        if (!captured.out().startsWith("%PDF")) {
            assertThat(acting(captured.out()))
                    .as("characters that act in: %s\n%s", what, captured.out())
                    .isEmpty();
        }
        if (status == ExitStatus.BAD_INPUT && !said.contains("suspicious")) {
            assertThat(PLACE.matcher(said).find() || said.contains("\"line\" : "))
                    .as("no place in: %s\n%s", what, said)
                    .isTrue();
        }
        if (status == ExitStatus.WRONG_USE) {
            // A batch tells on standard output which result it left alone, and why.
            boolean told = captured.out().contains("; choose another --out");
            assertThat(told || !captured.err().isBlank()).as("no reason in: %s", what).isTrue();
        }
    }

    private static List<String> acting(String text) {
        return text.codePoints()
                .filter(c -> c != '\n' && !Quotation.prints(c))
                .mapToObj("U+%04X"::formatted)
                .distinct()
                .toList();
    }

    /** New files are nobody's input; one that was there may only change where that was asked. */
    private void checkFiles(
            List<String> changed, ExitStatus status, Set<String> mayWrite, String what) {
        for (String name : changed) {
            boolean asked =
                    mayWrite.stream()
                            .anyMatch(
                                    it ->
                                            name.equals(it)
                                                    || it.endsWith("/") && name.startsWith(it));
            assertThat((asked || !shop.has(name)) && !name.endsWith(".part"))
                    .as("%s was changed (%s) by: %s", name, status, what)
                    .isTrue();
        }
    }

    private static String shown(Map<String, byte[]> spoilt) {
        StringBuilder text = new StringBuilder();
        spoilt.forEach(
                (name, bytes) -> {
                    String content =
                            Quotation.visible(
                                    new String(bytes, StandardCharsets.UTF_8)
                                            .replace("\n", "\u21B5"));
                    text.append(name).append(": ");
                    text.append(content.length() > 6_000 ? content.substring(0, 6_000) : content);
                    text.append('\n');
                });
        return text.toString();
    }

    /** How many cases ended how. */
    Map<ExitStatus, Integer> countByStatus() {
        return countByStatus;
    }

    @Override
    public void close() {
        worker.shutdownNow();
    }
}
