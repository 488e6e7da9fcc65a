package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.Clash;
import rigbrief.proposal.ClashFinder;
import rigbrief.proposal.front.Front;
import rigbrief.proposal.front.SearchedFront;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.need.Stretch;
import rigbrief.proposal.solve.Answer;
import rigbrief.proposal.solve.Least;
import rigbrief.proposal.solve.Solving;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;

/**
 * Finds what the goals of a brief cost: least totals, the front, the price of every must, and what
 * other ceilings would change.
 *
 * <p>Independent questions are answered on two threads, each with what was known before any of them
 * was asked, so that the answers do not depend on which comes first.
 */
public final class BudgetFinder {
    /** Other ceilings to look at, in whole units of the currency per machine. Common practice. */
    private static final int[] CEILING_STEPS = {-200, -100, -50, 50, 100, 200};

    /** The least total of all musts is what all else is measured against: worth more steps. */
    private static final int MUSTS_FACTOR = 8;

    private final BudgetLimits limits;
    private final BooleanSupplier stop;
    private final Progress progress;

    /**
     * A finder.
     *
     * @param stop asked now and then; true ends the work early, with what is known by then
     */
    public BudgetFinder(BudgetLimits limits, BooleanSupplier stop, Progress progress) {
        this.limits = limits;
        this.stop = stop;
        this.progress = progress;
    }

    /**
     * What the goals of a brief cost.
     *
     * @param upToMinor how far to look for the front, in minor units
     * @param wanted which needs to look at; the front is found in any case
     */
    public Budget find(Brief brief, Catalogue catalogue, long upToMinor, Predicate<Need> wanted) {
        return new Finding(brief, catalogue, upToMinor, wanted).find();
    }

    /** One of the answers that are looked for side by side. */
    private record Found(Optional<Front> front, Optional<Prices.Leasts> leasts) {}

    private final class Finding {
        private final Brief brief;
        private final Catalogue catalogue;
        private final long upToMinor;
        private final Needs needs;
        private final List<Need> goals = new ArrayList<>();
        private final List<Need> priced = new ArrayList<>();
        private final Solving solving;
        private final Questions questions = new Questions(stop, progress);

        Finding(Brief brief, Catalogue catalogue, long upToMinor, Predicate<Need> wanted) {
            this.brief = brief;
            this.catalogue = catalogue;
            this.upToMinor = upToMinor;
            this.needs = Needs.of(brief, catalogue);
            this.solving = new Solving(catalogue, limits.goalSteps(), stop);
            for (Need need : needs.musts()) {
                boolean priceable = need.kind() == Need.Kind.MUST || need.kind() == Need.Kind.OWN;
                if (priceable && wanted.test(need)) {
                    goals.add(need);
                    priced.add(need);
                }
            }
            needs.wishes().stream().filter(wanted).forEach(goals::add);
        }

        Budget find() {
            questions.expect(
                    2 + 2 * goals.size() + 2 * priced.size() + (needs.wishes().isEmpty() ? 0 : 1));
            List<Least> first = questions.all(firstQuestions());
            Least musts = first.get(0);
            if (musts.answer() == Answer.NO) {
                return impossible(musts);
            }
            IdleNeeds idle = new IdleNeeds(needs, solving, musts).among(priced);
            // The front takes one thread about as long as the least totals take the other.
            List<Supplier<Found>> both = new ArrayList<>();
            Supplier<Front> asked = frontQuestion(musts);
            both.add(() -> new Found(Optional.of(asked.get()), Optional.empty()));
            for (Supplier<Prices.Leasts> one : Prices.leasts(needs, solving, musts, idle, priced)) {
                both.add(() -> new Found(Optional.empty(), Optional.of(one.get())));
            }
            List<Found> found = questions.all(both);
            Front front = found.get(0).front().orElseThrow();
            List<Prices.Leasts> leasts =
                    found.stream().flatMap(one -> one.leasts().stream()).toList();
            List<Build> builds = front.standings().stream().map(Standing::build).toList();
            musts = better(musts, front);
            List<NeedPrice> prices =
                    questions.all(
                            new Prices(needs, solving, musts, idle, underCeiling(front))
                                    .questions(leasts));
            return answered(musts, first, prices, front, builds);
        }

        private List<Supplier<Least>> firstQuestions() {
            List<Supplier<Least>> asked = new ArrayList<>();
            asked.add(
                    () ->
                            solving.within(MUSTS_FACTOR * solving.steps())
                                    .least(needs.atAnyPrice(), List.of()));
            for (Need need : goals) {
                asked.add(() -> solving.least(needs.alone(need), List.of()));
            }
            return asked;
        }

        private Supplier<Front> frontQuestion(Least musts) {
            long most = Math.max(upToMinor, brief.ceiling().minorUnits() + farthestStepMinor());
            return () -> {
                SearchSpace space = SearchSpace.of(Stretch.to(brief, most), catalogue);
                List<Standing> known =
                        Solving.standings(
                                space.within(most),
                                musts.best().stream().map(Standing::build).toList());
                return new SearchedFront(limits.frontSteps(), stop)
                        .knowingLeast(musts.boundMinor())
                        .find(space, most, known);
            };
        }

        private Least better(Least musts, Front front) {
            boolean better =
                    !front.standings().isEmpty()
                            && (musts.best().isEmpty()
                                    || front.standings().get(0).totalMinor() < musts.totalMinor());
            return better
                    ? new Least(
                            Optional.of(front.standings().get(0)),
                            musts.boundMinor(),
                            Answer.YES,
                            musts.steps())
                    : musts;
        }

        private List<Build> underCeiling(Front front) {
            List<Build> builds = new ArrayList<>();
            for (Standing standing : front.standings()) {
                if (standing.totalMinor() <= brief.ceiling().minorUnits()) {
                    builds.add(standing.build());
                }
            }
            return builds;
        }

        private Budget answered(
                Least musts,
                List<Least> first,
                List<NeedPrice> prices,
                Front front,
                List<Build> builds) {
            List<Supplier<GoalTotal>> totals = new ArrayList<>();
            for (int i = 0; i < goals.size(); i++) {
                Need need = goals.get(i);
                Least alone = first.get(i + 1);
                totals.add(() -> goal(need, alone, musts, builds, prices));
            }
            List<GoalTotal> found = questions.all(totals);
            Optional<Least> wishesToo =
                    needs.wishes().isEmpty()
                            ? Optional.empty()
                            : Optional.of(
                                    questions
                                            .all(
                                                    List.<Supplier<Least>>of(
                                                            () ->
                                                                    solving.least(
                                                                            needs.allWishesToo(),
                                                                            builds)))
                                            .get(0));
            FrontSteps steps =
                    new FrontSteps(new Assessor(Stretch.boundless(brief), catalogue), front);
            List<FrontStep> shown = steps.upTo(upToMinor);
            return new Budget(
                    brief,
                    catalogue,
                    upToMinor,
                    musts,
                    binding(musts, prices),
                    wishesToo,
                    found,
                    prices,
                    ceilingSteps(steps),
                    shown,
                    front.proven(),
                    front.leastGapMinor(),
                    Optional.empty(),
                    questions.calledOff());
        }

        private GoalTotal goal(
                Need need, Least alone, Least musts, List<Build> builds, List<NeedPrice> prices) {
            boolean wish = need.kind() == Need.Kind.WISH;
            Brief together =
                    wish ? need.asked().put().apply(needs.atAnyPrice()) : needs.atAnyPrice();
            Least all =
                    wish
                            ? solving.least(
                                    together,
                                    builds,
                                    Math.max(musts.boundMinor(), alone.boundMinor()))
                            : musts;
            Least cheapest = cheaper(alone, all, needs.alone(need));
            return new GoalTotal(
                    need,
                    cheapest,
                    all,
                    rules(cheapest, needs.alone(need)),
                    wish ? binding(need, all, prices) : binding(prices),
                    rules(all, together));
        }

        /** The musts without which the total would be less. */
        private static List<String> binding(List<NeedPrice> prices) {
            return prices.stream()
                    .filter(NeedPrice::binds)
                    .map(price -> price.need().name())
                    .toList();
        }

        /**
         * The musts without which a wish would come cheaper: where the build that was found without
         * a must grants the wish for less, or where a cheaper part fits in at once.
         */
        private List<String> binding(Need wish, Least all, List<NeedPrice> prices) {
            List<String> binding = new ArrayList<>();
            for (NeedPrice price : prices) {
                if (all.best().isPresent()
                        && !questions.calledOff()
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
            SearchSpace space = SearchSpace.of(under, catalogue);
            if (space.candidates().impossible()) {
                return false;
            }
            Problem problem = space.within(CeilingRule.limitMinor(under));
            return Solving.standings(problem, List.of(granted.build())).stream()
                    .anyMatch(standing -> new BindingRules(problem, standing).cheaperFits());
        }

        /** What meets every must meets one of them, so it can't be cheaper. */
        private Least cheaper(Least alone, Least all, Brief brief) {
            boolean better =
                    all.best().isPresent()
                            && (alone.best().isEmpty() || all.totalMinor() < alone.totalMinor())
                            && solving.fits(all.best().get().build(), brief);
            return better
                    ? new Least(all.best(), alone.boundMinor(), Answer.YES, alone.steps())
                    : alone;
        }

        /** The musts without which the total would be less, then the rules. */
        private List<String> binding(Least musts, List<NeedPrice> prices) {
            List<String> binding = new ArrayList<>(binding(prices));
            rules(musts, needs.atAnyPrice()).forEach(rule -> binding.add(rule.words()));
            return binding;
        }

        private List<Turned> rules(Least least, Brief under) {
            if (least.best().isEmpty() || questions.calledOff()) {
                return List.of();
            }
            Problem problem =
                    SearchSpace.of(under, catalogue).within(CeilingRule.limitMinor(under));
            List<Turned> turned = new ArrayList<>();
            for (Standing standing :
                    Solving.standings(problem, List.of(least.best().get().build()))) {
                turned.addAll(new BindingRules(problem, standing).most());
            }
            return turned;
        }

        private long farthestStepMinor() {
            return stepMinor(CEILING_STEPS[CEILING_STEPS.length - 1]);
        }

        private long stepMinor(int units) {
            int scale = brief.ceiling().amount().scale();
            return Math.multiplyExact(
                    (long) units * brief.quantity(), (long) Math.pow(10, Math.max(0, scale)));
        }

        private List<CeilingStep> ceilingSteps(FrontSteps steps) {
            long ceiling = brief.ceiling().minorUnits();
            List<CeilingStep> all = new ArrayList<>();
            Optional<FrontStep> now = steps.bestAt(ceiling);
            for (int units : CEILING_STEPS) {
                long more = stepMinor(units);
                Optional<FrontStep> then = steps.bestAt(ceiling + more);
                if (now.isPresent() && then.isPresent()) {
                    all.add(new CeilingStep(more, now.get(), then.get()));
                }
            }
            return all;
        }

        private Budget impossible(Least musts) {
            Clash clash = new ClashFinder(catalogue, 3 * limits.goalSteps(), stop).find(brief);
            return new Budget(
                    brief,
                    catalogue,
                    upToMinor,
                    musts,
                    List.of(),
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    true,
                    0,
                    Optional.of(clash),
                    questions.calledOff());
        }
    }
}
