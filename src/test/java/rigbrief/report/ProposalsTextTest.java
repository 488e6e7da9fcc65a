package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.audit.Audit;
import rigbrief.build.BuildRecord;
import rigbrief.part.Slot;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.PartReason;
import rigbrief.proposal.Proof;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Tier;
import rigbrief.wording.Phrase;

class ProposalsTextTest {
    private static final Proof PROVEN = new Proof("total", 103_000, 103_000, 0, 812);

    @Test
    void proposals_are_laid_out_as_before() {
        Keep.assertKept("proposals.txt", text(fixed()));
    }

    @Test
    void an_impossible_brief_is_laid_out_as_before() {
        Keep.assertKept("impossible.txt", text(Answers.impossible()));
    }

    @Test
    void no_line_is_wider_than_the_page() {
        assertThat(text(fixed()).lines()).allMatch(line -> line.length() <= TextPage.WIDTH);
        assertThat(text(Answers.proposed()).lines())
                .allMatch(line -> line.length() <= TextPage.WIDTH);
    }

    @Test
    void what_comes_out_of_files_can_not_act_on_a_terminal() {
        var brief = Answers.brief().make();
        var draft = new rigbrief.brief.BriefDraft(brief).client("\u001b]0;owned\u0007").toBrief();

        String text = text(Answers.proposed(draft, Answers.catalogue().make()));

        assertThat(text).doesNotContain("\u001b").contains("\\u001B]0;owned\\u0007");
    }

    @ParameterizedTest
    @CsvSource({
        "total, 0, meets every must for less",
        "score, 0, reaches a higher score",
        "balance, 0, better balance of money and score",
        "score, 1.21, at most 1.3 %",
        "score, Infinity, is not known",
    })
    void the_proof_says_what_was_proven_or_how_far_off_the_best_may_be(
            String figure, double gapPercent, String words) {
        var proof = new Proof(figure, 1, 2, gapPercent, 1);

        String text = text(answer(List.of(proposal(Tier.LEAN, ordinary(), proof))));

        assertThat(text.replaceAll("\\s+", " ")).contains(words);
    }

    @Test
    void one_build_is_not_set_beside_itself() {
        String text = text(answer(List.of(proposal(Tier.LEAN, ordinary(), PROVEN))));

        assertThat(text).doesNotContain("SIDE BY SIDE");
    }

    private static Proposals fixed() {
        Audit fuller =
                FixedAudit.of(aBuild().with(aMemoryKit().id("other-kit"), 2).make(), List.of());
        return answer(
                List.of(
                        proposal(Tier.LEAN, ordinary(), PROVEN),
                        proposal(
                                Tier.FULL,
                                fuller,
                                new Proof("score", 45_000, 46_000, 2.17, 9_000))));
    }

    private static Audit ordinary() {
        return FixedAudit.ofOrdinaryBuild();
    }

    private static Proposals answer(List<Proposal> proposals) {
        return new Proposals(
                Answers.brief().make(),
                Answers.catalogue().make(),
                1,
                proposals,
                List.of(
                        new FrontPoint(103_000, 0.6485, aBuild().make()),
                        new FrontPoint(
                                110_000,
                                0.71,
                                aBuild().with(aMemoryKit().id("other-kit"), 2).make())),
                Optional.empty(),
                List.of(
                        Phrase.data(
                                "No balanced build of its own: it would be like the lean one.")));
    }

    private static Proposal proposal(Tier tier, Audit audit, Proof proof) {
        return new Proposal(
                tier,
                new BuildRecord(
                        Optional.empty(),
                        Optional.of(tier.word()),
                        "fixture",
                        "sha256:0",
                        List.of()),
                audit,
                List.of(
                        new PartReason(
                                Slot.PROCESSOR,
                                "8 cores; works 33 % of the time in Lantern Marsh. Chosen over"
                                        + " another: EUR 74.36 dearer, better for workloads."),
                        new PartReason(Slot.CASE, "The client's own.")),
                proof,
                List.of(Phrase.data("The overrun of EUR 12.00 buys the wish for 100 fps.")));
    }

    private static String text(Proposals answer) {
        return new ProposalsText().write(answer, Style.PLAIN);
    }
}
