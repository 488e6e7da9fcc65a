package rigbrief.proposal;

import java.util.List;
import rigbrief.audit.Audit;
import rigbrief.build.BuildRecord;
import rigbrief.wording.Phrase;

/**
 * A build in a tier, with its audit, the reasons for its parts, and its proof.
 *
 * @param tier the tier
 * @param record the build as it is filed
 * @param audit everything the judge says of it
 * @param reasons one per filled slot, in slot order
 * @param proof how far it can be from the best
 * @param remarks what else to tell: what an overrun buys, why it is like another tier
 */
public record Proposal(
        Tier tier,
        BuildRecord record,
        Audit audit,
        List<PartReason> reasons,
        Proof proof,
        List<Phrase> remarks) {
    public Proposal {
        reasons = List.copyOf(reasons);
        remarks = List.copyOf(remarks);
    }
}
