package rigbrief.proposal;

import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.wording.Phrase;

/**
 * The answer to a brief.
 *
 * @param brief the brief
 * @param catalogue the catalogue
 * @param seed seed of the search
 * @param proposals at most one per tier, least money first; empty when no build meets the musts
 * @param front builds on the convex part of the front of money and utility, cheapest first
 * @param clash why there is none; empty when there are proposals
 * @param remarks what else to tell: why there are fewer than three tiers, that the time ran out
 * @param mix an order in two variants, where no build can be had for all machines and the brief
 *     allows variants
 */
public record Proposals(
        Brief brief,
        Catalogue catalogue,
        long seed,
        List<Proposal> proposals,
        List<FrontPoint> front,
        Optional<Clash> clash,
        List<Phrase> remarks,
        Optional<Mix> mix) {
    public Proposals {
        proposals = List.copyOf(proposals);
        front = List.copyOf(front);
        remarks = List.copyOf(remarks);
    }

    /** An answer without a mix. */
    public Proposals(
            Brief brief,
            Catalogue catalogue,
            long seed,
            List<Proposal> proposals,
            List<FrontPoint> front,
            Optional<Clash> clash,
            List<Phrase> remarks) {
        this(brief, catalogue, seed, proposals, front, clash, remarks, Optional.empty());
    }

    /** Whether nothing was found that meets the musts. */
    public boolean impossible() {
        return clash.isPresent() && mix.isEmpty();
    }
}
