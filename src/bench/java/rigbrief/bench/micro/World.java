package rigbrief.bench.micro;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import rigbrief.bench.Scenarios;
import rigbrief.bench.process.Worlds;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.search.Certifier;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;

/** One scenario on one catalogue, and builds to score. */
@State(Scope.Thread)
public class World {
    /** System property: folder for generated catalogues. */
    static final String OUT = "rigbrief.bench.out";

    private static final int CHOICES = 512;
    private static final int CHANGED = 2;
    private static final long STEPS = 60_000;

    /** Number of parts. */
    @Param({"600", "20000"})
    public int parts;

    /** Name of the scenario. */
    @Param({"potter", "tight-600"})
    public String scenario;

    Path folder;
    Catalogue catalogue;
    Brief brief;
    Problem problem;
    private List<List<Candidate>> choices;
    private int next;

    /** Reads and draws. */
    @Setup
    public void read() throws IOException {
        folder = Worlds.folder(Path.of(System.getProperty(OUT)), parts);
        catalogue = Scenarios.catalogue(folder);
        brief = Scenarios.brief(Path.of("scenarios", scenario + ".yaml"), catalogue);
        problem = problem();
        Standing best =
                new Certifier(problem, Objective.leastMoney(), STEPS, () -> false)
                        .run(Optional.empty())
                        .best()
                        .orElseThrow();
        Random random = new Random(1);
        choices = new ArrayList<>();
        for (int i = 0; i < CHOICES; i++) {
            List<Candidate> changed = new ArrayList<>(best.choices());
            for (int c = 0; c < CHANGED; c++) {
                Slot slot = Slot.values()[random.nextInt(changed.size())];
                List<Candidate> all = problem.candidates().of(slot);
                changed.set(slot.ordinal(), all.get(random.nextInt(all.size())));
            }
            choices.add(changed);
        }
    }

    /** A problem that no search has warmed. */
    Problem problem() {
        return SearchSpace.of(brief, catalogue).within(brief.ceiling().minorUnits());
    }

    /** The least total's build with two slots changed, another one each time. */
    List<Candidate> choices() {
        next = (next + 1) % CHOICES;
        return choices.get(next);
    }
}
