package rigbrief.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets work be called off from the keyboard: the first signal to end sets a flag, and the process
 * waits a little until what is known has been printed.
 */
final class Interruption implements AutoCloseable {
    private static final int PATIENCE_S = 10;

    private final CountDownLatch printed = new CountDownLatch(1);
    private final Thread hook = new Thread(this::callOff, "call-off");
    private volatile boolean calledOff;

    private Interruption() {}

    /** Begins to listen. */
    static Interruption listening() {
        Interruption interruption = new Interruption();
        Runtime.getRuntime().addShutdownHook(interruption.hook);
        return interruption;
    }

    /** Whether the work was called off. */
    boolean calledOff() {
        return calledOff;
    }

    private void callOff() {
        calledOff = true;
        try {
            printed.await(PATIENCE_S, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Everything is printed. */
    @Override
    public void close() {
        printed.countDown();
        if (!calledOff) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException ending) {
                // The signal came just now: the hook runs, and the latch lets it end.
                calledOff = true;
            }
        }
    }
}
