package rigbrief.assess;

import rigbrief.assess.SpeedModel.Rig;
import rigbrief.part.Graphics;

/**
 * What a machine brings to a workload: the rates of its parts, and nothing else about them.
 *
 * <p>A machine that is set up wrongly is the same machine with other rates.
 *
 * @param picture what draws the picture
 * @param rateSingle processor work per second on one thread
 * @param rateAll processor work per second on all threads
 * @param mts memory rate in MT/s, halved when one module feeds two channels
 * @param memoryGb memory in GB
 * @param readMbs reading rate of the drive in MB/s; 0 without a drive
 * @param writeMbs writing rate of the drive in MB/s; 0 without a drive
 */
public record MachineRates(
        Picture picture,
        double rateSingle,
        double rateAll,
        double mts,
        double memoryGb,
        double readMbs,
        double writeMbs) {
    private static final double CHANNEL_PAIR_BYTES = 16;
    private static final double PER_GIGA = 1_000;

    /**
     * What draws the picture: a card, or the processor's own graphics.
     *
     * @param tflops arithmetic in TFLOP/s
     * @param bandwidthGbs graphics memory bandwidth in GB/s
     * @param rayRate ray work per second; 0 for none
     * @param vramGb graphics memory in GB
     * @param upscales whether it draws fewer pixels than it shows when asked to
     * @param linkS time that a link narrower than planned adds for each GB of graphics memory
     *     traffic, in s; 0 for the planned link
     * @param overflowTimes by how much such a link lengthens the way out of a full graphics memory;
     *     1 for the planned link
     */
    public record Picture(
            double tflops,
            double bandwidthGbs,
            double rayRate,
            double vramGb,
            boolean upscales,
            double linkS,
            double overflowTimes) {
        /** What a card draws with on the planned link. */
        public static Picture of(Graphics card) {
            return new Picture(
                    card.tflops(),
                    card.bandwidthGbs(),
                    card.rayRate(),
                    card.vramGb(),
                    card.upscaling().isPresent(),
                    0,
                    1);
        }

        /** The better of two in everything. */
        public Picture atLeast(Picture other) {
            return new Picture(
                    Math.max(tflops, other.tflops),
                    Math.max(bandwidthGbs, other.bandwidthGbs),
                    Math.max(rayRate, other.rayRate),
                    Math.max(vramGb, other.vramGb),
                    upscales || other.upscales,
                    Math.min(linkS, other.linkS),
                    Math.min(overflowTimes, other.overflowTimes));
        }

        /** The worse of two in everything. */
        public Picture atMost(Picture other) {
            return new Picture(
                    Math.min(tflops, other.tflops),
                    Math.min(bandwidthGbs, other.bandwidthGbs),
                    Math.min(rayRate, other.rayRate),
                    Math.min(vramGb, other.vramGb),
                    upscales && other.upscales,
                    Math.max(linkS, other.linkS),
                    Math.max(overflowTimes, other.overflowTimes));
        }

        /** The same with arithmetic and rays at another pace. */
        public Picture paced(double factor) {
            return new Picture(
                    tflops * factor,
                    bandwidthGbs,
                    rayRate * factor,
                    vramGb,
                    upscales,
                    linkS,
                    overflowTimes);
        }

        /** The same with its memory at another bandwidth, in GB/s. */
        public Picture withBandwidth(double other) {
            return new Picture(tflops, other, rayRate, vramGb, upscales, linkS, overflowTimes);
        }

        /** The same behind a narrower link; units as above. */
        public Picture behind(double addedS, double times) {
            return new Picture(tflops, bandwidthGbs, rayRate, vramGb, upscales, addedS, times);
        }
    }

    /** The rates of a build. */
    public static MachineRates of(Assessment it) {
        return of(SpeedModel.rig(it));
    }

    /** The rates of a build whose picture comes from the processor, card or not. */
    public static MachineRates withoutCard(Assessment it) {
        Rig rig = SpeedModel.rig(it);
        return of(rig, ownPicture(rig));
    }

    static MachineRates of(Rig rig) {
        return of(rig, rig.graphics() == null ? ownPicture(rig) : Picture.of(rig.graphics()));
    }

    private static Picture ownPicture(Rig rig) {
        return new Picture(
                rig.processor().integratedTflops(),
                rig.mts() * CHANNEL_PAIR_BYTES / PER_GIGA,
                0,
                FramePredictor.BORROWED_GB,
                false,
                0,
                1);
    }

    private static MachineRates of(Rig rig, Picture picture) {
        return new MachineRates(
                picture,
                rig.processor().rateSingle(),
                rig.processor().rateAll(),
                rig.mts(),
                rig.memoryGb(),
                rig.drive() == null ? 0 : rig.drive().readMbs(),
                rig.drive() == null ? 0 : rig.drive().writeMbs());
    }

    /** The same machine with another picture. */
    public MachineRates with(Picture other) {
        return new MachineRates(other, rateSingle, rateAll, mts, memoryGb, readMbs, writeMbs);
    }

    /** The same machine with its processor at another pace, on one thread and on all. */
    public MachineRates paced(double single, double all) {
        return new MachineRates(
                picture, rateSingle * single, rateAll * all, mts, memoryGb, readMbs, writeMbs);
    }

    /** The same machine with other memory: its rate in MT/s and its size in GB. */
    public MachineRates withMemory(double rateMts, double sizeGb) {
        return new MachineRates(picture, rateSingle, rateAll, rateMts, sizeGb, readMbs, writeMbs);
    }
}
