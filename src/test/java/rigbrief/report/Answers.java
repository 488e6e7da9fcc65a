package rigbrief.report;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.WorkloadFixture.KILN;
import static rigbrief.fixture.WorkloadFixture.MARSH;
import static rigbrief.fixture.WorkloadFixture.aWorkload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Slot;
import rigbrief.proposal.Clash;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.PartReason;
import rigbrief.proposal.Proof;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Tier;
import rigbrief.proposal.clash.Change;
import rigbrief.proposal.clash.WayOut;
import rigbrief.wording.Phrase;

/** Small answers to write out: the fixtures' ordinary build, and one with two memory kits. */
final class Answers {
    static final String FAST_KIT = "kit-of-the-fuller-build";

    private Answers() {}

    /** A brief with a rate, a task, a noise limit and a fee. */
    static BriefFixture brief() {
        return aBrief().use(aNeed(MARSH).mustAverage(60).wishAverage(500))
                .use(aNeed(KILN).wishFinishS(30))
                .noiseMustDba(45)
                .memory(16, false)
                .fees("120.00", 0)
                .wish("workloads", 4)
                .wish("quiet", 3)
                .wish("value", 2);
    }

    /** A catalogue that offers all parts of both builds, delivered for 6.90. */
    static CatalogueFixture catalogue() {
        return aCatalogue()
                .supplier(CatalogueFixture.KESTREL, "6.90")
                .offering(fuller())
                .offering(aBuild().make())
                .workload(aWorkload().sigma(0.07).frames())
                .workload(aWorkload().sigma(0.10).task());
    }

    private static Build fuller() {
        return aBuild().with(aMemoryKit().id(FAST_KIT), 2).make();
    }

    /** Two tiers: one proven, one not. */
    static Proposals proposed() {
        return proposed(brief().make(), catalogue().make());
    }

    /** Two tiers for a brief. */
    static Proposals proposed(Brief brief, Catalogue catalogue) {
        Build lean = aBuild().make();
        double totalMinor = new Auditor(brief, catalogue).audit(lean).cost().totalMinor();
        return new Proposals(
                brief,
                catalogue,
                7,
                List.of(
                        proposal(
                                brief,
                                catalogue,
                                Tier.LEAN,
                                lean,
                                new Proof("total", totalMinor, totalMinor, 0, 812)),
                        proposal(
                                brief,
                                catalogue,
                                Tier.FULL,
                                fuller(),
                                new Proof("score", 60_000, 61_000.4, 1.234, 4_000_000))),
                List.of(
                        new FrontPoint(92_690, 0.61, lean),
                        new FrontPoint(112_690, 0.66, fuller())),
                Optional.empty(),
                List.of(Phrase.data("No balanced build of its own.")));
    }

    private static Proposal proposal(
            Brief brief, Catalogue catalogue, Tier tier, Build build, Proof proof) {
        List<PartReason> reasons = new ArrayList<>();
        build.filled()
                .forEach(
                        (slot, part) ->
                                reasons.add(
                                        new PartReason(slot, "Fills the " + slot.word() + ".")));
        BuildRecord record =
                new BuildRecord(
                        Optional.of(brief),
                        Optional.of(tier.word()),
                        catalogue.name(),
                        catalogue.digest(),
                        List.of());
        return new Proposal(
                tier,
                record,
                new Auditor(brief, catalogue).audit(build),
                reasons,
                proof,
                List.of());
    }

    /** No build: two musts clash. */
    static Proposals impossible() {
        List<Phrase> needs =
                List.of(Phrase.data("ceiling EUR 300.00"), Phrase.data("lantern-marsh average 60"));
        Brief brief = brief().make();
        return new Proposals(
                brief,
                catalogue().make(),
                1,
                List.of(),
                List.of(),
                Optional.of(
                        new Clash(
                                needs,
                                true,
                                List.of(Phrase.data("Either of them alone can be met.")),
                                List.of(needs),
                                true,
                                List.of(
                                        new WayOut(
                                                List.of(
                                                        new Change(
                                                                needs.get(0),
                                                                Phrase.data("EUR 300.00"),
                                                                Phrase.data("EUR 926.90"))),
                                                92_690,
                                                true,
                                                aBuild().make(),
                                                brief)))),
                List.of());
    }

    /** An audit of the ordinary build. */
    static AuditAnswer audited() {
        return audited(aBuild().make());
    }

    /** An audit of a build. */
    static AuditAnswer audited(Build build) {
        Brief brief = brief().make();
        Catalogue catalogue = catalogue().make();
        return new AuditAnswer(
                "potter.build.yaml", brief, catalogue, new Auditor(brief, catalogue).audit(build));
    }

    /** An audit of a build without a case. */
    static AuditAnswer unfinished() {
        return audited(aBuild().without(Slot.CASE).make());
    }
}
