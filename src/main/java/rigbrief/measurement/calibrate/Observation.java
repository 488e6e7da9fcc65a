package rigbrief.measurement.calibrate;

import java.util.Optional;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.measurement.Measurement;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;

/**
 * A measurement with what the speed model makes of it.
 *
 * @param measured the measurement
 * @param workload what was measured
 * @param speed the model of it
 * @param ofLow whether the 1 % low stands for an average that was not measured
 * @param log natural logarithm of what was measured
 */
record Observation(
        Measurement measured, Workload workload, Speed speed, boolean ofLow, double log) {
    /** A measurement of a workload that has a speed. */
    static Observation of(Measurement measured, Catalogue catalogue) {
        Workload workload = catalogue.workload(measured.workload()).orElseThrow();
        if (workload instanceof FrameRate title) {
            boolean ofLow = measured.averageFps().isEmpty();
            double fps = measured.averageFps().orElseGet(() -> measured.lowFps().getAsDouble());
            return new Observation(
                    measured, title, FrameSpeed.of(title, measured, ofLow), ofLow, Math.log(fps));
        }
        return new Observation(
                measured,
                workload,
                TaskSpeed.of((TaskTime) workload, measured.rig().orElseThrow()),
                false,
                Math.log(measured.seconds().getAsDouble()));
    }

    /** Whether average and 1 % low were both measured. */
    boolean hasBothRates() {
        return measured.averageFps().isPresent() && measured.lowFps().isPresent();
    }

    /** 1 where more is slower, a time; -1 where more is faster, a rate. */
    int slowness() {
        return measured.seconds().isPresent() ? 1 : -1;
    }

    /** The card; empty for the processor's own graphics, whose rate is not fitted. */
    Optional<String> card() {
        return measured.rig().orElseThrow().graphics().map(Graphics::id);
    }

    /** The processor. */
    String processor() {
        return measured.rig().orElseThrow().processor().id();
    }

    /** The part that a channel leans on; empty where its rate is not fitted. */
    Optional<String> part(Channel channel) {
        if (channel == Channel.DRIVE) {
            return measured.rig().orElseThrow().drive().map(Drive::id);
        }
        return channel.ofCard() ? card() : Optional.of(processor());
    }
}
