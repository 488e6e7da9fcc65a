package rigbrief.report.page;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.PartReason;
import rigbrief.proposal.Proof;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;
import rigbrief.proposal.Tier;
import rigbrief.quantity.Money;

/** Answers to make pages of: out of files, or of a few builds. */
final class Offered {
    private Offered() {}

    /** The answer to a scenario of the sample world. */
    static Proposals scenario(String name) throws BadInput {
        Catalogue catalogue = CatalogueReader.read(Path.of("catalog-sample"));
        Brief brief = BriefReader.read(Path.of("scenarios", name + ".yaml"), catalogue);
        return new Proposer(SearchLimits.usual()).propose(brief, catalogue);
    }

    /** An answer with one tier per build, least money first, and all of them on its front. */
    static Proposals of(BriefFixture wanted, CatalogueFixture offered, Build... builds) {
        Brief brief = wanted.make();
        Catalogue catalogue = offered.make();
        List<Proposal> proposals = new ArrayList<>();
        List<FrontPoint> front = new ArrayList<>();
        for (int i = 0; i < builds.length; i++) {
            Audit audit = new Auditor(brief, catalogue).audit(builds[i]);
            proposals.add(proposal(Tier.values()[i], brief, catalogue, builds[i], audit));
            front.add(new FrontPoint(audit.cost().totalMinor(), 0.3 + 0.2 * i, builds[i]));
        }
        return new Proposals(brief, catalogue, 1, proposals, front, Optional.empty(), List.of());
    }

    private static Proposal proposal(
            Tier tier, Brief brief, Catalogue catalogue, Build build, Audit audit) {
        BuildRecord record =
                new BuildRecord(
                        Optional.of(brief),
                        Optional.of(tier.word()),
                        catalogue.name(),
                        catalogue.digest(),
                        lines(build, brief));
        List<PartReason> reasons = new ArrayList<>();
        build.filled().forEach((slot, part) -> reasons.add(new PartReason(slot, "A reason.")));
        return new Proposal(
                tier, record, audit, reasons, new Proof("score", 1, 1, 0, 1), List.of());
    }

    private static List<BuildLine> lines(Build build, Brief brief) {
        List<BuildLine> lines = new ArrayList<>();
        build.filled()
                .forEach(
                        (slot, part) ->
                                lines.add(
                                        new BuildLine(
                                                slot,
                                                part,
                                                build.pieces(slot),
                                                Optional.empty(),
                                                Money.zero(brief.currency()),
                                                PartState.WANTED,
                                                false)));
        return lines;
    }
}
