package rigbrief.report.page;

import java.util.List;
import java.util.Optional;
import rigbrief.audit.Audit;
import rigbrief.proposal.PartReason;
import rigbrief.proposal.Proof;
import rigbrief.proposal.Proposal;
import rigbrief.wording.Phrase;

/**
 * One build as a proposal shows it.
 *
 * @param tier word of its tier; empty for a build that no search proposed
 * @param audit everything the judge says of it
 * @param reasons what its parts were chosen over, where that is known
 * @param proof how far it can be from the best, where that is known
 * @param remarks what else to tell
 */
record Sheet(
        String tier,
        Audit audit,
        List<PartReason> reasons,
        Optional<Proof> proof,
        List<Phrase> remarks) {
    Sheet {
        reasons = List.copyOf(reasons);
        remarks = List.copyOf(remarks);
    }

    static Sheet of(Proposal proposal) {
        return new Sheet(
                proposal.tier().word(),
                proposal.audit(),
                proposal.reasons(),
                Optional.of(proposal.proof()),
                proposal.remarks());
    }
}
