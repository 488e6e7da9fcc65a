package rigbrief.measurement;

import java.util.Optional;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Processor;

/**
 * The parts of a measured machine that speed depends on.
 *
 * @param processor the processor
 * @param graphics the card; empty for the processor's own graphics
 * @param memoryMts rate the memory ran at, in MT/s, halved when one module feeds two channels
 * @param memoryGb memory in GB
 * @param drive the drive the work is on; empty where no measured workload moves data
 */
public record Rig(
        Processor processor,
        Optional<Graphics> graphics,
        int memoryMts,
        int memoryGb,
        Optional<Drive> drive) {}
