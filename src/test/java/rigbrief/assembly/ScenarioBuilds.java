package rigbrief.assembly;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;

/** Every proposal of every scenario that has any, found by a short search, once for all tests. */
public final class ScenarioBuilds {
    private static final List<String> SCENARIOS =
            List.of(
                    "potter",
                    "writer",
                    "editor",
                    "competitor",
                    "living-room",
                    "cad",
                    "forty-desks",
                    "keeper",
                    "tight-600",
                    "streamer",
                    "school-workshop");

    /** Sound builds are wanted here, not proven ones. */
    private static final SearchLimits SHORT = new SearchLimits(1, 500, 4_000, Optional.empty());

    private static final List<Filed> ALL = find();

    private ScenarioBuilds() {}

    /**
     * A proposal of a scenario.
     *
     * @param name scenario and tier
     * @param brief the brief
     * @param catalogue the sample catalogue
     * @param record the build as it is filed
     */
    public record Filed(String name, Brief brief, Catalogue catalogue, BuildRecord record) {
        /** The build on the bench. */
        public Bench bench() {
            return Bench.of(brief, catalogue, record.build());
        }

        @Override
        public String toString() {
            return name;
        }
    }

    /** All of them. */
    public static List<Filed> all() {
        return ALL;
    }

    private static List<Filed> find() {
        try {
            Catalogue catalogue = CatalogueReader.read(Path.of("catalog-sample"));
            List<Filed> found = new ArrayList<>();
            for (String scenario : SCENARIOS) {
                Brief brief = BriefReader.read(Path.of("scenarios", scenario + ".yaml"), catalogue);
                for (Proposal proposal :
                        new Proposer(SHORT).propose(brief, catalogue).proposals()) {
                    String name = scenario + ", " + proposal.tier().word();
                    found.add(new Filed(name, brief, catalogue, proposal.record()));
                }
            }
            return List.copyOf(found);
        } catch (BadInput bad) {
            throw new IllegalStateException(bad);
        }
    }
}
