package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.proposal.front.Neighbourhood;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.need.Stretch;
import rigbrief.proposal.solve.Least;
import rigbrief.proposal.solve.Most;
import rigbrief.proposal.solve.Solving;
import rigbrief.rule.Rules;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;

/** Sets what was found with musts changed against what was found with all as asked. */
final class NeedPrices {
    /** Where more than this part of full utility is open, it is looked around the front: 0.002. */
    private static final long NEXT_TO_NOTHING = 500;

    /** Builds judged there. */
    private static final long TRIES = 8_000;

    /** So many builds of the front are looked around, the best and others as far apart. */
    private static final int STARTS = 8;

    private final Needs needs;
    private final Solving solving;
    private final Least musts;
    private final List<Standing> front;
    private final long mostPoints;

    /**
     * Prices against a known answer.
     *
     * @param musts the least total with every must
     * @param front the front under the ceiling, cheapest first
     * @param mostPoints points of full utility
     */
    NeedPrices(Needs needs, Solving solving, Least musts, List<Standing> front, long mostPoints) {
        this.needs = needs;
        this.solving = solving;
        this.musts = musts;
        this.front = List.copyOf(front);
        this.mostPoints = mostPoints;
    }

    /**
     * The price of one must.
     *
     * @param eased most utility without it and with it softer; empty where there is none to compare
     *     with
     * @param least least total with it harder; empty where there is no harder step
     * @param most most utility with it harder
     */
    NeedPrice price(
            Prices.Leasts leasts,
            Optional<Utilities.Eased> eased,
            Optional<Least> least,
            Optional<Most> most) {
        Need need = leasts.need();
        String words = need.kind() == Need.Kind.OWN ? "bought anew" : "not asked for";
        return new NeedPrice(
                need,
                variant(
                        words,
                        needs.without(need),
                        leasts.free(),
                        eased.map(Utilities.Eased::without)),
                need.softer()
                        .map(
                                level ->
                                        variant(
                                                level.words(),
                                                needs.at(level),
                                                leasts.softer().get(),
                                                eased.flatMap(Utilities.Eased::softer))),
                need.harder()
                        .map(level -> variant(level.words(), needs.at(level), least.get(), most)));
    }

    private Variant variant(String words, Brief brief, Least least, Optional<Most> most) {
        long saved =
                least.best().isPresent() && musts.best().isPresent()
                        ? musts.totalMinor() - least.totalMinor()
                        : 0;
        return new Variant(words, least, saved, most.flatMap(it -> gain(brief, it)));
    }

    /** The best build found may also lie near the front. */
    private Optional<Gain> gain(Brief brief, Most most) {
        if (front.isEmpty() || most.none()) {
            return Optional.empty();
        }
        long found = most.best().map(Standing::points).orElse(-1L);
        if (most.boundPoints() - found > mostPoints / NEXT_TO_NOTHING) {
            found = Math.max(found, near(brief, most));
        }
        long before = front.get(front.size() - 1).points();
        return found < 0
                ? Optional.empty()
                : Optional.of(
                        new Gain(
                                found - before,
                                Math.max(0, Math.min(most.boundPoints(), mostPoints) - found)));
    }

    private long near(Brief brief, Most most) {
        SearchSpace space =
                SearchSpace.of(brief, Stretch.none(needs.brief()), solving.catalogue(), Rules.ALL);
        if (space.candidates().impossible() || solving.stop().getAsBoolean()) {
            return -1;
        }
        List<Build> starts = spread();
        most.best().map(Standing::build).ifPresent(starts::add);
        Problem problem = space.within(brief.ceiling().minorUnits());
        return Neighbourhood.front(problem, Solving.placed(problem, starts), TRIES, solving.stop())
                .stream()
                .mapToLong(Standing::points)
                .max()
                .orElse(-1);
    }

    /** Some of the front's builds, the best last. */
    private List<Build> spread() {
        List<Build> spread = new ArrayList<>();
        int step = Math.max(1, front.size() / STARTS);
        for (int i = front.size() - 1; i >= 0; i -= step) {
            spread.add(0, front.get(i).build());
        }
        return spread;
    }
}
