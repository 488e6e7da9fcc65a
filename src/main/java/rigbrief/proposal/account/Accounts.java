package rigbrief.proposal.account;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.explain.Topic;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;
import rigbrief.proposal.Tier;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.BudgetFinder;
import rigbrief.proposal.budget.BudgetLimits;
import rigbrief.proposal.budget.Progress;

/**
 * The numbers around a filed build that only a search can tell. Names cost nothing; a search runs,
 * once, when the first of its numbers is asked for.
 */
public final class Accounts {
    private Accounts() {}

    /** The numbers that can be explained of a build that answers a brief, in order of printing. */
    public static List<Topic> topics(Brief brief, Catalogue catalogue, BuildRecord filed) {
        return topics(
                brief,
                catalogue,
                filed,
                () -> new Proposer(SearchLimits.usual()).propose(brief, catalogue),
                () -> budget(brief, catalogue));
    }

    private static Budget budget(Brief brief, Catalogue catalogue) {
        return new BudgetFinder(BudgetLimits.usual(), () -> false, Progress.NONE)
                .find(brief, catalogue, brief.ceiling().minorUnits(), need -> true);
    }

    /**
     * The same, where the answers can be had otherwise.
     *
     * @param answer gives the proposals for the brief; asked once at most
     * @param budget gives its budget; asked once at most
     */
    public static List<Topic> topics(
            Brief brief,
            Catalogue catalogue,
            BuildRecord filed,
            Supplier<Proposals> answer,
            Supplier<Budget> budget) {
        if (!filed.build().missing().isEmpty()) {
            return List.of();
        }
        List<Topic> topics = new ArrayList<>(BuildableAccount.topics(brief, catalogue, filed));
        Optional<Tier> tier = tier(filed);
        if (tier.isPresent()) {
            Supplier<Proposals> once = once(answer);
            topics.addAll(new ProofAccount(once, tier.get(), filed.build()).topics());
            topics.addAll(new ChoiceAccount(once, tier.get(), filed.build()).topics());
        }
        if (tier.isPresent() || filed.brief().isPresent()) {
            Supplier<Budget> once = once(budget);
            topics.addAll(new BudgetAccount(brief, catalogue, once).topics());
            topics.addAll(new FrontAccount(brief, once).topics());
        }
        return topics;
    }

    private static Optional<Tier> tier(BuildRecord filed) {
        for (Tier tier : Tier.values()) {
            if (filed.tier().equals(Optional.of(tier.word()))) {
                return Optional.of(tier);
            }
        }
        return Optional.empty();
    }

    static <T> Supplier<T> once(Supplier<T> search) {
        List<T> found = new ArrayList<>();
        return () -> {
            if (found.isEmpty()) {
                found.add(search.get());
            }
            return found.get(0);
        };
    }
}
