package rigbrief.measurement.calibrate;

import rigbrief.assess.MachineRates;
import rigbrief.assess.MachineRates.Picture;
import rigbrief.measurement.Rig;
import rigbrief.part.Drive;

/** The rates of a measured machine, as the speed model takes them. */
final class RigRates {
    /** Main memory that the processor's own graphics may borrow, in GB. Common practice. */
    private static final double BORROWED_GB = 4;

    /** Bytes that two channels move in one transfer. */
    private static final double CHANNEL_PAIR_BYTES = 16;

    private static final double PER_GIGA = 1_000;

    private RigRates() {}

    static MachineRates of(Rig rig) {
        return new MachineRates(
                rig.graphics().map(Picture::of).orElseGet(() -> ofProcessor(rig)),
                rig.processor().rateSingle(),
                rig.processor().rateAll(),
                rig.memoryMts(),
                rig.memoryGb(),
                rig.drive().map(Drive::readMbs).orElse(0),
                rig.drive().map(Drive::writeMbs).orElse(0));
    }

    private static Picture ofProcessor(Rig rig) {
        return new Picture(
                rig.processor().integratedTflops(),
                rig.memoryMts() * CHANNEL_PAIR_BYTES / PER_GIGA,
                0,
                BORROWED_GB,
                false,
                0,
                1);
    }

    /** The same machine whose card takes so many times as long. */
    static MachineRates slowed(MachineRates machine, double graphics, double rays) {
        Picture picture = machine.picture();
        return machine.with(
                new Picture(
                        picture.tflops() / graphics,
                        picture.bandwidthGbs() / graphics,
                        picture.rayRate() / rays,
                        picture.vramGb(),
                        picture.upscales(),
                        picture.linkS(),
                        picture.overflowTimes()));
    }
}
