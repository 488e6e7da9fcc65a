package rigbrief.file;

import java.util.Optional;
import rigbrief.build.BuildLine;
import rigbrief.build.PartState;
import rigbrief.file.cell.Ids;
import rigbrief.file.cell.PartCells;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.YamlText;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * Reads and writes the data sheet of a part that was ordered at least, or that the client brings,
 * so that it stays known after its maker's range has moved on and the catalogue no longer lists it.
 *
 * <p>While the catalogue lists the part, what the catalogue says holds.
 */
final class PartSheet {
    /** The key of a build's line that holds it. */
    static final String KEY = "sheet";

    private PartSheet() {}

    /** The part as the file kept it, under the id that it names. */
    static Optional<Part> read(Keys line, Slot slot) {
        return line.maybe("part", Forms::id)
                .flatMap(id -> line.keys(KEY).flatMap(it -> KeepSection.described(id, slot, it)));
    }

    /** Writes it where something depends on it. */
    static void write(BuildLine line, YamlText yaml) {
        boolean begun =
                line.kept()
                        || line.state() != PartState.WANTED
                        || line.units().stream().anyMatch(it -> it.state() != PartState.WANTED);
        // The client's own parts that no catalogue ever had are described under another key.
        if (begun && !Ids.owned(line.part().id())) {
            yaml.begin(KEY);
            PartCells.of(line.part()).forEach(yaml::text);
            yaml.end();
        }
    }
}
