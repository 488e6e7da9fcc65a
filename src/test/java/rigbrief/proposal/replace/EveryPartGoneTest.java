package rigbrief.proposal.replace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.Certificate;
import rigbrief.search.Certifier;
import rigbrief.search.Objective;
import rigbrief.search.SearchSpace;
import rigbrief.search.SmallWorld;

/**
 * Every part of every proposal for the scenarios goes out of stock, one at a time.
 *
 * <p>Check: each answer is judged by the auditor with a catalogue without the part, and where there
 * is no answer, a search that knows nothing of the build is asked whether any build exists.
 */
class EveryPartGoneTest {
    private static final long STEPS = 2_000_000;

    @ParameterizedTest
    @ValueSource(
            strings = {
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
                "school-workshop"
            })
    void every_answer_audits_clean_or_truly_none_exists(String scenario) {
        Catalogue catalogue = SmallWorld.sample();
        Brief brief = SmallWorld.scenario(scenario, catalogue);
        for (Proposal proposal :
                new Proposer(SearchLimits.usual()).propose(brief, catalogue).proposals()) {
            for (BuildLine line : proposal.record().lines()) {
                if (!line.kept()) {
                    String name =
                            "%s %s without %s"
                                    .formatted(scenario, proposal.tier().word(), line.part().id());
                    goes(name, brief, catalogue, proposal.record(), line);
                }
            }
        }
    }

    private static void goes(
            String name, Brief brief, Catalogue catalogue, BuildRecord record, BuildLine line) {
        Trouble trouble = Trouble.without(line.part().id());
        Catalogue left = OffersLeft.of(catalogue, trouble, record);

        Replacer replacer = new Replacer(Limits.usual(), Disturbance.usual(catalogue.currency()));
        // The other ways take the longest; one tier of each scenario shows them all.
        Replacement answer =
                record.tier().equals(Optional.of("lean"))
                        ? replacer.replace(record, trouble, catalogue)
                        : replacer.leastChange(record, trouble, catalogue);

        for (Way way : answer.ways()) {
            assertThat(new Auditor(brief, left).audit(way.record()).fits()).as(name).isTrue();
            assertThat(way.record().build().filled().values()).as(name).doesNotContain(line.part());
        }
        if (answer.impossible() && answer.proven()) {
            assertThat(exists(brief, left)).as(name).isEqualTo(Optional.of(false));
        }
    }

    /** Whether any build at all keeps every must; empty when that was not found out. */
    private static Optional<Boolean> exists(Brief brief, Catalogue left) {
        SearchSpace space = SearchSpace.of(brief, left);
        if (space.candidates().impossible()) {
            return Optional.of(false);
        }
        Certificate certificate =
                new Certifier(
                                space.within(CeilingRule.limitMinor(brief)),
                                Objective.leastMoney(),
                                STEPS,
                                () -> false)
                        .untilFirst()
                        .run(Optional.empty());
        return certificate.complete() || certificate.best().isPresent()
                ? Optional.of(certificate.best().isPresent())
                : Optional.empty();
    }
}
