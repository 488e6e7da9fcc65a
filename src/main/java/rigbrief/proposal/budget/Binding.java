package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.need.Stretch;
import rigbrief.proposal.solve.Least;
import rigbrief.proposal.solve.Solving;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;

/** What would have to give way for a total to be less. */
final class Binding {
    private final Needs needs;
    private final Solving solving;
    private final List<NeedPrice> prices;

    Binding(Needs needs, Solving solving, List<NeedPrice> prices) {
        this.needs = needs;
        this.solving = solving;
        this.prices = List.copyOf(prices);
    }

    /** The musts without which the total of all musts would be less. */
    List<String> needs() {
        return prices.stream().filter(NeedPrice::binds).map(price -> price.need().name()).toList();
    }

    /** The same, then the rules. */
    List<String> all(Least musts) {
        List<String> binding = new ArrayList<>(needs());
        rules(musts, needs.atAnyPrice()).forEach(rule -> binding.add(rule.words()));
        return binding;
    }

    /**
     * The musts without which a wish would come cheaper: where the build that was found without a
     * must grants the wish for less, or where a cheaper part fits in at once.
     */
    List<String> needs(Need wish, Least all) {
        List<String> binding = new ArrayList<>();
        for (NeedPrice price : prices) {
            if (all.best().isPresent()
                    && !solving.stop().getAsBoolean()
                    && cheaperWithout(price, wish, all.best().get())) {
                binding.add(price.need().name());
            }
        }
        return binding;
    }

    private boolean cheaperWithout(NeedPrice price, Need wish, Standing granted) {
        Brief under = wish.asked().put().apply(Stretch.boundless(needs.without(price.need())));
        Optional<Standing> known = price.without().least().best();
        if (known.filter(it -> it.totalMinor() < granted.totalMinor()).isPresent()
                && solving.fits(known.get().build(), under)) {
            return true;
        }
        SearchSpace space = SearchSpace.of(under, solving.catalogue());
        if (space.candidates().impossible()) {
            return false;
        }
        Problem problem = space.within(CeilingRule.limitMinor(under));
        return Solving.standings(problem, List.of(granted.build())).stream()
                .anyMatch(standing -> new BindingRules(problem, standing).cheaperFits());
    }

    /** The rules that turn cheaper parts away from the build of a total. */
    List<Turned> rules(Least least, Brief under) {
        if (least.best().isEmpty() || solving.stop().getAsBoolean()) {
            return List.of();
        }
        Problem problem =
                SearchSpace.of(under, solving.catalogue()).within(CeilingRule.limitMinor(under));
        List<Turned> turned = new ArrayList<>();
        for (Standing standing : Solving.standings(problem, List.of(least.best().get().build()))) {
            turned.addAll(new BindingRules(problem, standing).most());
        }
        return turned;
    }
}
