package rigbrief.model.speed;

import rigbrief.model.Expect;

/**
 * What a machine attains when either arithmetic or memory holds it up.
 *
 * <p>Formula: attainable rate = min(peak, bandwidth x intensity); time = max(operations / peak,
 * bytes / bandwidth); ridge point = peak / bandwidth.
 *
 * <p>Source: Williams, Waterman, Patterson, "Roofline: An Insightful Visual Performance Model for
 * Multicore Architectures", Communications of the ACM 52(4), April 2009, pages 65 to 76.
 */
public final class Roofline {
    private Roofline() {}

    /**
     * Gives the attainable rate.
     *
     * @param peakPerS peak operations per second
     * @param bytesPerS memory bandwidth, bytes per second
     * @param operationsPerByte operational intensity of the work
     * @return operations per second
     * @throws IllegalArgumentException for a negative value
     */
    public static double attainablePerS(
            double peakPerS, double bytesPerS, double operationsPerByte) {
        Expect.notNegative(peakPerS, "peakPerS");
        Expect.notNegative(bytesPerS, "bytesPerS");
        return Math.min(
                peakPerS, bytesPerS * Expect.notNegative(operationsPerByte, "operationsPerByte"));
    }

    /**
     * Gives the intensity from which arithmetic is what holds a machine up.
     *
     * @param peakPerS peak operations per second
     * @param bytesPerS memory bandwidth, bytes per second, above 0
     * @return operations per byte
     * @throws IllegalArgumentException for a bandwidth not above 0
     */
    public static double ridgePerByte(double peakPerS, double bytesPerS) {
        return Expect.notNegative(peakPerS, "peakPerS") / Expect.positive(bytesPerS, "bytesPerS");
    }

    /**
     * Gives the time of a piece of work.
     *
     * @param operations how many
     * @param peakPerS peak operations per second
     * @param bytes moved to and from memory
     * @param bytesPerS memory bandwidth, bytes per second
     * @return s; infinite for work that the machine has no means for
     * @throws IllegalArgumentException for a negative value
     */
    public static double seconds(
            double operations, double peakPerS, double bytes, double bytesPerS) {
        return Math.max(workSeconds(operations, peakPerS), workSeconds(bytes, bytesPerS));
    }

    /**
     * Gives the time of work at a rate; no work takes no time even without a rate.
     *
     * @param work amount, 0 or more
     * @param perS amount per second, 0 or more
     * @return s; infinite for work without a rate
     * @throws IllegalArgumentException for a negative value
     */
    public static double workSeconds(double work, double perS) {
        Expect.notNegative(work, "work");
        Expect.notNegative(perS, "perS");
        return work == 0 ? 0 : work / perS;
    }
}
