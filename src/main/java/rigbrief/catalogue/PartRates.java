package rigbrief.catalogue;

import java.util.OptionalDouble;
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
 */
public record PartRates(
        String part,
        OptionalDouble tflops,
        OptionalDouble bandwidthGbs,
        OptionalDouble rayRate,
        OptionalDouble rateSingle,
        OptionalDouble rateAll) {

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
        return listed;
    }
}
