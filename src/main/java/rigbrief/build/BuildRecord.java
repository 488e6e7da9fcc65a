package rigbrief.build;

import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;

/**
 * A build as it is filed: what was chosen, from whom, at what price, for which brief, out of which
 * catalogue.
 *
 * @param brief the brief it answers; empty for a plain parts list
 * @param tier the tier it was proposed in; empty for a plain parts list
 * @param catalogueName name of the catalogue
 * @param catalogueDigest digest of the catalogue
 * @param lines one line per filled slot, in slot order
 */
public record BuildRecord(
        Optional<Brief> brief,
        Optional<String> tier,
        String catalogueName,
        String catalogueDigest,
        List<BuildLine> lines) {
    public BuildRecord {
        lines = List.copyOf(lines);
    }

    /** The parts alone. */
    public Build build() {
        Build build = Build.empty();
        for (BuildLine line : lines) {
            build = build.with(line.slot(), line.part(), line.pieces());
        }
        return build;
    }
}
