package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;

/** Marks the units of a build that somebody says are faulty. */
final class Marking {
    private Marking() {}

    /**
     * The build with the units of the faulty parts marked, and the marking in its history.
     *
     * <p>Where the build file already has faulty units of a part, it is these that are meant; else
     * all its units.
     */
    static BuildRecord faulty(BuildRecord build, Trouble trouble, Catalogue catalogue) {
        List<BuildLine> lines = new ArrayList<>();
        List<HistoryEntry> history = new ArrayList<>(build.history());
        for (BuildLine line : build.lines()) {
            boolean named = trouble.faulty().contains(line.part().id());
            boolean meant = named && !broken(line, build.machines());
            lines.add(meant ? marked(line, build.machines(), catalogue, history) : line);
        }
        return build.with(lines, build.aside(), history);
    }

    private static BuildLine marked(
            BuildLine line, int machines, Catalogue catalogue, List<HistoryEntry> history) {
        List<Units> groups = new ArrayList<>();
        for (Units units : line.units(machines)) {
            if (!affected(units)) {
                groups.add(units);
                continue;
            }
            groups.add(
                    new Units(
                            units.count(),
                            PartState.FAULTY,
                            Optional.of(catalogue.asOf()),
                            units.supplier(),
                            units.paid(),
                            units.refunded()));
            history.add(
                    new HistoryEntry.Move(
                            catalogue.asOf(),
                            Optional.empty(),
                            line.slot(),
                            line.part().id(),
                            units.count(),
                            units.state(),
                            PartState.FAULTY,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty()));
        }
        return line.with(groups);
    }

    private static boolean affected(Units units) {
        return units.state().promised();
    }

    /**
     * Whether units have to be replaced whatever their part's offers. For a returned unit another
     * is wanted already.
     */
    static boolean broken(Units units) {
        return units.state() == PartState.FAULTY;
    }

    /** Whether some units of a line have to be. */
    static boolean broken(BuildLine line, int machines) {
        return line.units(machines).stream().anyMatch(Marking::broken);
    }
}
