package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import rigbrief.proposal.solve.Most;
import rigbrief.proposal.solve.Solving;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;

/**
 * The questions about one brief, in an order in which none leans on a later one. The front takes
 * one thread as long as most of the others take the other one, so it comes early.
 */
final class Inquiry {
    /** The least total of all musts is what all else is measured against: worth more steps. */
    private static final int MUSTS_FACTOR = 8;

    /** The most utility with all musts likewise. */
    private static final int MOST_FACTOR = 2;

    /** One need alone leaves much to choose from, in steps that take little. */
    private static final int ALONE_FACTOR = 2;

    private final Brief brief;
    private final Catalogue catalogue;
    private final BudgetLimits limits;
    private final long upToMinor;
    private final Ceilings ceilings;
    private final Needs needs;
    private final Solving solving;
    private final List<Need> goals = new ArrayList<>();
    private final List<Need> priced = new ArrayList<>();

    private final List<Supplier<?>> asked = new ArrayList<>();
    private final Once<Least> musts;
    private final Once<Most> most;
    private final Once<Front> front;
    private final Map<Need, Once<Least>> alone = new LinkedHashMap<>();
    private final Map<Need, Once<Least>> granted = new LinkedHashMap<>();
    private final Map<Need, Once<Prices.Leasts>> leasts = new LinkedHashMap<>();
    private final Map<Need, Once<Optional<Utilities.Eased>>> eased = new LinkedHashMap<>();
    private final Map<Need, Once<Least>> harder = new LinkedHashMap<>();
    private final Map<Need, Once<Optional<Most>>> mostHarder = new LinkedHashMap<>();
    private Optional<Once<Least>> wishesToo = Optional.empty();

    Inquiry(
            Brief brief,
            Solving solving,
            BudgetLimits limits,
            long upToMinor,
            Predicate<Need> wanted) {
        this.brief = brief;
        this.solving = solving;
        this.catalogue = solving.catalogue();
        this.limits = limits;
        this.upToMinor = upToMinor;
        this.ceilings = new Ceilings(brief);
        this.needs = Needs.of(brief, catalogue);
        for (Need need : needs.musts()) {
            boolean priceable = need.kind() == Need.Kind.MUST || need.kind() == Need.Kind.OWN;
            if (priceable && wanted.test(need)) {
                goals.add(need);
                priced.add(need);
            }
        }
        needs.wishes().stream().filter(wanted).forEach(goals::add);

        musts = first(this::leastOfMusts);
        Once<Most> above = first(this::mostUtility);
        front = ask(() -> frontFrom(musts.get(), above.get()));
        most = ask(() -> underCeiling(above.get()));
        goals.forEach(need -> alone.put(need, ask(() -> leastAlone(need))));
        askForTotals();
        askForUtilities();
        askForMore();
    }

    private void askForTotals() {
        Once<IdleNeeds> idle = ask(() -> new IdleNeeds(needs, solving, musts.get()).among(priced));
        for (Need need : priced) {
            leasts.put(
                    need,
                    ask(() -> new Prices(needs, solving, musts.get(), idle.get()).leasts(need)));
        }
        if (!needs.wishes().isEmpty()) {
            wishesToo = Optional.of(ask(() -> solving.least(needs.allWishesToo(), builds(musts))));
        }
    }

    private void askForUtilities() {
        Once<Optional<Utilities>> utilities =
                ask(
                        () ->
                                most.get()
                                        .best()
                                        .map(
                                                any ->
                                                        new Utilities(needs, solving, most.get())
                                                                .among(priced)));
        for (Need need : priced) {
            eased.put(need, ask(() -> utilities.get().map(it -> it.eased(need))));
            need.harder()
                    .ifPresent(
                            level ->
                                    mostHarder.put(
                                            need,
                                            ask(
                                                    () ->
                                                            utilities
                                                                    .get()
                                                                    .map(
                                                                            it ->
                                                                                    it.harder(
                                                                                            need,
                                                                                            level)))));
        }
    }

    /** What is harder or wished takes long: it comes last, but does not wait for the front. */
    private void askForMore() {
        for (Need need : priced) {
            need.harder()
                    .ifPresent(level -> harder.put(need, ask(() -> leastHarder(needs.at(level)))));
        }
        for (Need need : goals) {
            if (need.kind() == Need.Kind.WISH) {
                granted.put(need, ask(() -> leastGranted(need)));
            }
        }
    }

    private <T> Once<T> first(Supplier<T> question) {
        Once<T> once = new Once<>(question);
        asked.add(once);
        return once;
    }

    /** A question that is not worth asking where nothing meets the musts. */
    private <T> Once<T> ask(Supplier<T> question) {
        return first(() -> impossible() ? null : question.get());
    }

    private boolean impossible() {
        return musts.get().answer() == Answer.NO;
    }

    /** All answers. */
    Budget answer(Questions questions) {
        questions.expect(asked.size() + priced.size() + goals.size());
        questions.all(asked.stream().<Supplier<Object>>map(one -> one::get).toList());
        if (impossible()) {
            Clash clash =
                    new ClashFinder(catalogue, 3 * limits.goalSteps(), solving.stop()).find(brief);
            return impossible(clash, questions.calledOff());
        }
        Least least = better(musts.get(), front());
        List<NeedPrice> prices = questions.all(prices(least));
        Binding binding = new Binding(needs, solving, prices);
        List<Supplier<GoalTotal>> totals = new ArrayList<>();
        for (Need need : goals) {
            totals.add(() -> goal(need, least, binding));
        }
        List<GoalTotal> found = questions.all(totals);
        FrontSteps steps =
                new FrontSteps(new Assessor(Stretch.boundless(brief), catalogue), front());
        return new Budget(
                brief,
                catalogue,
                upToMinor,
                least,
                binding.all(least),
                wishesToo.map(it -> orOnFront(it.get(), needs.allWishesToo())),
                found,
                prices,
                ceilings.steps(steps),
                steps.upTo(upToMinor),
                front().proven(),
                front().leastGapMinor(),
                front().mostPoints(),
                Optional.empty(),
                questions.calledOff());
    }

    private Least leastOfMusts() {
        return solving.within(MUSTS_FACTOR * solving.steps()).least(needs.atAnyPrice(), List.of());
    }

    private Least leastAlone(Need need) {
        return solving.within(ALONE_FACTOR * solving.steps()).least(needs.alone(need), List.of());
    }

    /** What is harder never costs less. */
    private Least leastHarder(Brief asked) {
        return leastFromStarts(Stretch.boundless(asked), List.of(), musts.get().boundMinor());
    }

    /** A wish with every must costs no less than either. */
    private Least leastGranted(Need wish) {
        return leastFromStarts(
                wish.asked().put().apply(needs.atAnyPrice()),
                List.of(),
                Math.max(musts.get().boundMinor(), alone.get(wish).get().boundMinor()));
    }

    private Least leastFromStarts(Brief under, List<Build> known, long atLeastMinor) {
        return solving.least(
                under, Starts.cheap(solving, under, builds(musts), known), atLeastMinor);
    }

    private Front front() {
        return front.get();
    }

    private static List<Build> builds(List<Standing> standings) {
        return standings.stream().map(Standing::build).toList();
    }

    private static List<Build> builds(Once<Least> least) {
        return least.get().best().map(Standing::build).stream().toList();
    }

    /** The most utility as far as the front is looked for. */
    private Most mostUtility() {
        return solving.within(MOST_FACTOR * solving.steps())
                .most(space(Stretch.to(brief, farthest())), List.of(), Long.MAX_VALUE);
    }

    private Most underCeiling(Most above) {
        boolean within =
                above.best().isEmpty()
                        || above.best().get().totalMinor() <= brief.ceiling().minorUnits();
        return within
                ? above
                : solving.within(MOST_FACTOR * solving.steps())
                        .most(space(Stretch.none(brief)), builds(musts), above.boundPoints());
    }

    private SearchSpace space(Brief under) {
        return SearchSpace.of(under, catalogue);
    }

    private Front frontFrom(Least least, Most above) {
        long limit = farthest();
        SearchSpace space = space(Stretch.to(brief, limit));
        List<Build> known = new ArrayList<>();
        least.best().map(Standing::build).ifPresent(known::add);
        above.best().map(Standing::build).ifPresent(known::add);
        return new SearchedFront(limits.frontSteps(), solving.stop())
                .knowingLeast(least.boundMinor())
                .knowingMost(above.boundPoints())
                .find(space, limit, Solving.standings(space.within(limit), known));
    }

    private List<Supplier<NeedPrice>> prices(Least least) {
        List<Standing> under = new ArrayList<>();
        for (Standing standing : front().standings()) {
            if (standing.totalMinor() <= brief.ceiling().minorUnits()) {
                under.add(standing);
            }
        }
        NeedPrices prices = new NeedPrices(needs, solving, least, under, front().mostPoints());
        List<Supplier<NeedPrice>> all = new ArrayList<>();
        for (Need need : priced) {
            all.add(
                    () ->
                            prices.price(
                                    leasts.get(need).get(),
                                    eased.get(need).get(),
                                    Optional.ofNullable(harder.get(need))
                                            .map(it -> orFromFront(need, it.get())),
                                    Optional.ofNullable(mostHarder.get(need)).flatMap(Once::get)));
        }
        return all;
    }

    private GoalTotal goal(Need need, Least musts, Binding binding) {
        boolean wish = need.kind() == Need.Kind.WISH;
        Brief together = wish ? need.asked().put().apply(needs.atAnyPrice()) : needs.atAnyPrice();
        Least all = wish ? orOnFront(granted.get(need).get(), together) : musts;
        Least cheapest = cheaper(alone.get(need).get(), all, needs.alone(need));
        return new GoalTotal(
                need,
                cheapest,
                all,
                binding.rules(cheapest, needs.alone(need)),
                wish ? binding.needs(need, all) : binding.needs(),
                binding.rules(all, together));
    }

    /** What steps did not reach may lie on the front. */
    private Least orOnFront(Least least, Brief under) {
        return least.proven() ? least : solving.orKnown(least, under, builds(front().standings()));
    }

    /**
     * What was not proven is sought again from the front, which has builds that meet much of it.
     */
    private Least orFromFront(Need need, Least hardened) {
        if (hardened.proven() || hardened.answer() == Answer.NO) {
            return hardened;
        }
        List<Build> known = new ArrayList<>(builds(front().standings()));
        hardened.best().map(Standing::build).ifPresent(known::add);
        return leastFromStarts(
                Stretch.boundless(needs.at(need.harder().orElseThrow())),
                known,
                hardened.boundMinor());
    }

    private static Least better(Least musts, Front front) {
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

    /** What meets every must meets one of them, so it can't be cheaper. */
    private Least cheaper(Least alone, Least all, Brief under) {
        boolean better =
                all.best().isPresent()
                        && (alone.best().isEmpty() || all.totalMinor() < alone.totalMinor())
                        && solving.fits(all.best().get().build(), under);
        return better
                ? new Least(all.best(), alone.boundMinor(), Answer.YES, alone.steps())
                : alone;
    }

    private long farthest() {
        return Math.max(upToMinor, ceilings.farthestMinor());
    }

    private Budget impossible(Clash clash, boolean calledOff) {
        return new Budget(
                brief,
                catalogue,
                upToMinor,
                musts.get(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                true,
                0,
                0,
                Optional.of(clash),
                calledOff);
    }
}
