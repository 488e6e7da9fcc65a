package rigbrief.proposal.need;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;

/**
 * The needs of a brief, and the briefs that keep some of them.
 *
 * @param brief the brief as it stands
 * @param musts everything that can make a build impossible, the ceiling first
 * @param wishes what would be nice
 */
public record Needs(Brief brief, List<Need> musts, List<Need> wishes) {
    public Needs {
        musts = List.copyOf(musts);
        wishes = List.copyOf(wishes);
    }

    /** The needs of a brief. */
    public static Needs of(Brief brief, Catalogue catalogue) {
        List<Need> musts = new ArrayList<>();
        TermNeeds.addCeiling(brief, musts);
        WorkloadTargets.addMusts(brief, catalogue, musts);
        LooksNeeds.addMusts(brief, musts);
        BodyNeeds.addMusts(brief, catalogue, musts);
        StoreNeeds.addMusts(brief, catalogue, musts);
        OrderNeeds.addMusts(brief, catalogue, musts);
        WorkloadTargets.addPresences(brief, catalogue, musts);
        TermNeeds.addTerms(brief, musts);
        List<Need> wishes = new ArrayList<>();
        WorkloadTargets.addWishes(brief, catalogue, wishes);
        LooksNeeds.addWishes(brief, wishes);
        BodyNeeds.addWishes(brief, wishes);
        OrderNeeds.addWishes(brief, catalogue, wishes);
        return new Needs(brief, musts, wishes);
    }

    /** All musts, as a set of indices. */
    public BitSet all() {
        BitSet all = new BitSet();
        all.set(0, musts.size());
        return all;
    }

    /** The brief with those musts alone; wishes stay wishes. */
    public Brief keeping(BitSet kept) {
        // A hard ceiling: the overrun is for wishes, and never makes a build possible.
        Brief left = Stretch.none(brief);
        for (int i = 0; i < musts.size(); i++) {
            if (!kept.get(i)) {
                left = musts.get(i).dropped().apply(left);
            }
        }
        return left;
    }

    /** The brief in which nobody insists on one of the musts. */
    public Brief without(Need need) {
        return need.freed().apply(Stretch.none(brief));
    }

    /** The brief in which nobody insists on any of some musts. */
    public Brief without(List<Need> some) {
        Brief left = Stretch.none(brief);
        for (Need need : some) {
            left = need.freed().apply(left);
        }
        return left;
    }

    /** The brief with a must, or a wish as a must, at another value. */
    public Brief at(Level level) {
        return level.put().apply(Stretch.none(brief));
    }

    /**
     * The brief with one need alone, as a must, at whatever it costs; the client's own parts stay.
     */
    public Brief alone(Need need) {
        BitSet kept = new BitSet();
        for (int i = 0; i < musts.size(); i++) {
            Need.Kind kind = musts.get(i).kind();
            kept.set(i, kind == Need.Kind.TERM || kind == Need.Kind.OWN);
        }
        return need.asked().put().apply(keeping(kept));
    }

    /** The brief with every must, and no ceiling. */
    public Brief atAnyPrice() {
        BitSet kept = all();
        for (int i = 0; i < musts.size(); i++) {
            kept.set(i, musts.get(i).kind() != Need.Kind.CEILING);
        }
        return keeping(kept);
    }

    /** The brief with every must and every wish as a must, and no ceiling. */
    public Brief allWishesToo() {
        Brief all = atAnyPrice();
        for (Need wish : wishes) {
            all = wish.asked().put().apply(all);
        }
        return all;
    }
}
