package rigbrief.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.assess.Cost;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.build.BuildLine;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.BuildReader;
import rigbrief.file.BuildWriter;
import rigbrief.file.CatalogueReader;

/** Every scenario on the sample catalogue, from files to filed builds. */
class ScenariosTest {
    private static Catalogue catalogue;

    @BeforeAll
    static void read() throws BadInput {
        catalogue = CatalogueReader.read(Path.of("catalog-sample"));
    }

    private static Brief brief(String name) throws BadInput {
        return BriefReader.read(Path.of("scenarios", name + ".yaml"), catalogue);
    }

    private static Proposals propose(String name) throws BadInput {
        return new Proposer(SearchLimits.usual()).propose(brief(name), catalogue);
    }

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
    void a_scenario_is_answered_with_sound_builds_whose_sums_are_right(String name)
            throws BadInput {
        Proposals answer = propose(name);

        assertThat(answer.proposals()).isNotEmpty();
        for (Proposal proposal : answer.proposals()) {
            Brief brief = answer.brief();
            assertThat(proposal.audit().fits()).isTrue();
            assertThat(new Auditor(brief, catalogue).audit(proposal.record().build()).fits())
                    .isTrue();
            assertThat(proposal.reasons()).hasSize(proposal.record().lines().size());
            sumsAreRight(proposal, brief);
        }
        tiersStandInOrder(answer);
    }

    /** The sum is taken anew from the filed lines and the catalogue's deliveries. */
    private static void sumsAreRight(Proposal proposal, Brief brief) {
        Cost cost = proposal.audit().cost();
        long parts = 0;
        for (BuildLine line : proposal.record().lines()) {
            parts += line.unitPrice().minorUnits() * line.pieces() * brief.quantity();
        }
        long delivery =
                proposal.record().lines().stream()
                        .flatMap(line -> line.supplier().stream())
                        .distinct()
                        .mapToLong(ScenariosTest::delivery)
                        .sum();
        long fees = brief.fees().assembly().minorUnits() * brief.quantity();
        long untaxed = parts + delivery + fees;
        long tax = Math.round(untaxed * (brief.fees().taxBasisPoints() / 10_000.0));
        assertThat(cost.totalMinor()).isEqualTo(untaxed + tax);
        long most =
                brief.ceiling().minorUnits()
                        + brief.ceiling().minorUnits() * brief.overrunBasisPoints() / 10_000;
        assertThat(cost.totalMinor()).isLessThanOrEqualTo(most);
    }

    private static long delivery(String supplier) {
        return catalogue.suppliers().stream()
                .filter(one -> one.id().equals(supplier))
                .mapToLong(one -> one.delivery().minorUnits())
                .sum();
    }

    private static void tiersStandInOrder(Proposals answer) {
        for (int i = 1; i < answer.proposals().size(); i++) {
            Proposal before = answer.proposals().get(i - 1);
            Proposal after = answer.proposals().get(i);
            assertThat(after.audit().cost().totalMinor())
                    .isGreaterThanOrEqualTo(before.audit().cost().totalMinor());
            assertThat(after.audit().points()).isGreaterThanOrEqualTo(before.audit().points());
            assertThat(after.record().build()).isNotEqualTo(before.record().build());
        }
    }

    @Test
    void the_potter_gets_three_different_builds() throws BadInput {
        Proposals answer = propose("potter");

        assertThat(answer.proposals()).hasSize(3);
    }

    @Test
    void the_impossible_scenario_names_musts_that_clash() throws BadInput {
        Proposals answer = propose("impossible");

        assertThat(answer.proposals()).isEmpty();
        Clash clash = answer.clash().orElseThrow();
        assertThat(clash.needs()).isNotEmpty();
        assertThat(clash.minimal()).isTrue();
    }

    @Test
    void two_searches_with_one_seed_file_the_same_bytes() throws BadInput {
        Proposals one = propose("competitor");
        Proposals two = propose("competitor");

        assertThat(one.proposals()).hasSameSizeAs(two.proposals());
        for (int i = 0; i < one.proposals().size(); i++) {
            assertThat(BuildWriter.write(one.proposals().get(i).record()))
                    .isEqualTo(BuildWriter.write(two.proposals().get(i).record()));
            assertThat(one.proposals().get(i).proof()).isEqualTo(two.proposals().get(i).proof());
        }
    }

    @Test
    void a_filed_build_reads_back_as_the_same_build() throws BadInput {
        Proposal proposal = propose("writer").proposals().get(0);

        String text = BuildWriter.write(proposal.record());

        assertThat(
                        BuildReader.read(
                                        new java.io.ByteArrayInputStream(
                                                text.getBytes(
                                                        java.nio.charset.StandardCharsets.UTF_8)),
                                        "filed",
                                        catalogue)
                                .build())
                .isEqualTo(proposal.record().build());
    }
}
