package rigbrief.catalogue;

import java.util.OptionalDouble;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Part;
import rigbrief.part.Processor;

/**
 * Rates of a part that were measured, in place of those of its sheet.
 *
 * @param part its id
 * @param tflops of a card, in TFLOP/s; empty leaves the part's own, as everywhere here
 * @param bandwidthGbs of a card, in GB/s
 * @param rayRate of a card, relative to a reference of 100
 * @param rateSingle of a processor, relative to a reference of 100
 * @param rateAll of a processor, same scale
 * @param readMbs of a drive, in MB/s
 * @param writeMbs of a drive, in MB/s
 */
public record PartRates(
        String part,
        OptionalDouble tflops,
        OptionalDouble bandwidthGbs,
        OptionalDouble rayRate,
        OptionalDouble rateSingle,
        OptionalDouble rateAll,
        OptionalDouble readMbs,
        OptionalDouble writeMbs) {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** Rates of a card. */
    public static PartRates ofCard(
            String part,
            OptionalDouble tflops,
            OptionalDouble bandwidthGbs,
            OptionalDouble rayRate) {
        return new PartRates(part, tflops, bandwidthGbs, rayRate, NONE, NONE, NONE, NONE);
    }

    /** Rates of a processor. */
    public static PartRates ofProcessor(
            String part, OptionalDouble rateSingle, OptionalDouble rateAll) {
        return new PartRates(part, NONE, NONE, NONE, rateSingle, rateAll, NONE, NONE);
    }

    /** Rates of a drive. */
    public static PartRates ofDrive(String part, OptionalDouble readMbs, OptionalDouble writeMbs) {
        return new PartRates(part, NONE, NONE, NONE, NONE, NONE, readMbs, writeMbs);
    }

    /** A part with these rates; as it is, where they are of no concern to its kind. */
    public Part applyTo(Part listed) {
        if (listed instanceof Graphics card) {
            return card.rated(
                    tflops.orElse(card.tflops()),
                    bandwidthGbs.orElse(card.bandwidthGbs()),
                    rayRate.orElse(card.rayRate()));
        }
        if (listed instanceof Processor processor) {
            return processor.rated(
                    rateSingle.orElse(processor.rateSingle()), rateAll.orElse(processor.rateAll()));
        }
        if (listed instanceof Drive drive) {
            return drive.rated(
                    (int) Math.round(readMbs.orElse(drive.readMbs())),
                    (int) Math.round(writeMbs.orElse(drive.writeMbs())));
        }
        return listed;
    }
}
