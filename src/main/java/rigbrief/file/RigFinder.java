package rigbrief.file;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.build.Build;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.CsvTable;
import rigbrief.file.cell.Expectation;
import rigbrief.measurement.Rig;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Kind;
import rigbrief.part.Memory;
import rigbrief.part.Part;
import rigbrief.part.Processor;
import rigbrief.part.Slot;

/** Finds the parts that rows of measurements name, or those of the builds they name. */
final class RigFinder {
    /** Channels a desktop board spreads modules over. */
    private static final int CHANNELS = 2;

    private final Known known;
    private final Catalogue catalogue;
    private final Path folder;
    private final Faults faults;
    private final Map<String, Optional<Build>> builds = new HashMap<>();
    private final Map<String, MeasuredRow> firstByMachine = new HashMap<>();

    RigFinder(Known known, Path folder, Faults faults) {
        this.known = known;
        this.catalogue = known.catalogue();
        this.folder = folder;
        this.faults = faults;
    }

    /** The parts; empty, with a fault, where one is missing or unknown. */
    Optional<Rig> of(MeasuredRow row, CsvTable table) {
        Optional<Rig> rig =
                row.build().isEmpty()
                        ? ofParts(row, table)
                        : build(row.build(), table)
                                .flatMap(build -> ofBuild(build, row.memoryMts(), table));
        checkSame(row, table);
        return rig;
    }

    private Optional<Rig> ofParts(MeasuredRow row, CsvTable table) {
        Optional<Processor> processor =
                part("processor", row.processor(), Kind.PROCESSOR, true, table)
                        .map(Processor.class::cast);
        Optional<Graphics> graphics =
                part("graphics", row.graphics(), Kind.GRAPHICS, false, table)
                        .map(Graphics.class::cast);
        Optional<Memory> memory =
                part("memory", row.memory(), Kind.MEMORY, true, table).map(Memory.class::cast);
        Optional<Drive> drive =
                part("drive", row.drive(), Kind.DRIVE, false, table).map(Drive.class::cast);
        if (processor.isEmpty() || memory.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                rig(
                        processor.get(),
                        graphics,
                        memory.get(),
                        memory.get().modules() * row.memoryKits(),
                        row.memoryMts(),
                        drive));
    }

    private static Rig rig(
            Processor processor,
            Optional<Graphics> graphics,
            Memory memory,
            int modules,
            int measuredMts,
            Optional<Drive> drive) {
        int allowedMts = Math.min(memory.mts(), processor.memoryMts(memory.type()));
        int mts = measuredMts > 0 ? measuredMts : allowedMts;
        return new Rig(
                processor,
                graphics,
                mts * Math.min(modules, CHANNELS) / CHANNELS,
                modules * memory.moduleGb(),
                drive);
    }

    private Optional<Part> part(
            String column, String id, Kind kind, boolean required, CsvTable table) {
        if (id.isEmpty()) {
            if (required) {
                boolean there = table.knows(column);
                table.fault(
                        there ? column : "machine",
                        "",
                        "the id of a %s in the catalogue%s"
                                .formatted(kind.word(), there ? "" : " in a column " + column),
                        "write the part that was measured, or the build file in a column build");
            }
            return Optional.empty();
        }
        Optional<Part> part = catalogue.part(id).filter(it -> it.kind() == kind);
        if (part.isEmpty() && known.whole()) {
            List<String> ids = catalogue.parts(kind).stream().map(Part::id).toList();
            String what = "the id of a %s in the catalogue".formatted(kind.word());
            Expectation name = Expectation.name(id, what, ids);
            table.fault(column, id, name.text(), name.advice());
        }
        return part;
    }

    private Optional<Build> build(String name, CsvTable table) {
        return builds.computeIfAbsent(
                name, any -> MeasurementReader.named(folder, "build", table).flatMap(this::read));
    }

    private Optional<Build> read(Path file) {
        return SourceText.refusesSpecial(file, faults)
                ? Optional.empty()
                : BuildReader.read(file, known, faults).map(BuildRecord::build);
    }

    private static Optional<Rig> ofBuild(Build build, int measuredMts, CsvTable table) {
        if (!build.has(Slot.PROCESSOR) || !build.has(Slot.MEMORY)) {
            table.fault(
                    "build",
                    table.cell("build"),
                    "a build with a processor and memory",
                    "name another, or name the parts in columns of their own");
            return Optional.empty();
        }
        Optional<Graphics> graphics =
                build.has(Slot.GRAPHICS) ? Optional.of(build.graphics()) : Optional.empty();
        return Optional.of(
                rig(
                        build.processor(),
                        graphics,
                        build.memory(),
                        build.memoryModules(),
                        measuredMts,
                        build.drives().stream().findFirst()));
    }

    /** One name for two machines would let the fit take one for the other. */
    private void checkSame(MeasuredRow row, CsvTable table) {
        MeasuredRow first = firstByMachine.putIfAbsent(row.machine(), row);
        boolean other =
                first != null
                        && !(first.processor().equals(row.processor())
                                && first.graphics().equals(row.graphics())
                                && first.build().equals(row.build()));
        if (other && !row.machine().isEmpty()) {
            table.fault(
                    "machine",
                    row.machine(),
                    "a name used for one processor and card",
                    "give the machine another name, or correct its parts");
        }
    }
}
