package rigbrief.search;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/** Threads for searches: they end with the program, and none outlives its work. */
public final class Hands implements AutoCloseable {
    private final ExecutorService threads;

    /** So many threads of a name. */
    public Hands(String name, int count) {
        threads =
                Executors.newFixedThreadPool(
                        count,
                        work -> {
                            Thread thread = new Thread(work, name);
                            thread.setDaemon(true);
                            return thread;
                        });
    }

    /** Where to hand work in. */
    public ExecutorService threads() {
        return threads;
    }

    /** The answer to what was handed in; whatever went wrong there goes wrong here. */
    public static <T> T joined(Future<T> answer) {
        try {
            return answer.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while waiting for a search", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (e.getCause() instanceof Error cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    /** Done with, they are idle: a moment is enough, and then none is left behind. */
    @Override
    public void close() {
        threads.shutdownNow();
        try {
            threads.awaitTermination(1, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
