package rigbrief.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/**
 * Seconds that went by on the wall and on the processor. Neighbours on a shared machine slow the
 * wall clock much and the processor's little.
 */
public final class Clock {
    private static final OperatingSystemMXBean SYSTEM =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final long wall = System.nanoTime();
    private final long cpu = SYSTEM.getProcessCpuTime();

    private final long thread = THREADS.getCurrentThreadCpuTime();

    private Clock() {}

    /** A clock that starts now. */
    public static Clock start() {
        return new Clock();
    }

    /** Wall time since the start in s. */
    public double wallS() {
        return (System.nanoTime() - wall) / 1e9;
    }

    /**
     * Processor time of the thread that asks, which must be the one that started the clock, in s:
     * finer than that of the whole process, which comes in hundredths.
     */
    public double threadS() {
        return (THREADS.getCurrentThreadCpuTime() - thread) / 1e9;
    }

    /** Processor time of this process since the start in s. */
    public double cpuS() {
        return (SYSTEM.getProcessCpuTime() - cpu) / 1e9;
    }
}
