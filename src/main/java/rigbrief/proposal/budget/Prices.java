package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.proposal.front.Neighbourhood;
import rigbrief.proposal.need.Level;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.need.Stretch;
import rigbrief.proposal.solve.Least;
import rigbrief.proposal.solve.Solving;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;

/**
 * Prices musts by solving again without each, and with each a step softer and harder.
 *
 * <p>Money is the least total at any price. Utility is that of the best build found under the
 * ceiling near the builds of the front, by the goals of the brief as it stands: only so do two
 * briefs compare.
 */
final class Prices {
    /** Builds judged for the utility of each variant. */
    private static final long TRIES = 8_000;

    /** So many builds of the front are looked around, the best and others as far apart. */
    private static final int STARTS = 8;

    private final Needs needs;
    private final Solving solving;
    private final Least musts;
    private final IdleNeeds idle;
    private final List<Build> front;

    /**
     * Prices against a known answer.
     *
     * @param musts the least total with every must
     * @param idle musts that are proven to cost nothing
     * @param front builds of the front, cheapest first
     */
    Prices(Needs needs, Solving solving, Least musts, IdleNeeds idle, List<Build> front) {
        this.needs = needs;
        this.solving = solving;
        this.musts = musts;
        this.idle = idle;
        this.front = List.copyOf(front);
    }

    /** The least totals that go into one must's price. */
    record Leasts(Need need, Least free, Optional<Least> softer, Optional<Least> harder) {}

    /** One question per must, which needs no front: its least totals. */
    static List<Supplier<Leasts>> leasts(
            Needs needs, Solving solving, Least musts, IdleNeeds idle, List<Need> priced) {
        Prices prices = new Prices(needs, solving, musts, idle, List.of());
        List<Supplier<Leasts>> questions = new ArrayList<>();
        for (Need need : priced) {
            questions.add(() -> prices.leasts(need));
        }
        return questions;
    }

    /** One question per must: its price. */
    List<Supplier<NeedPrice>> questions(List<Leasts> all) {
        List<Supplier<NeedPrice>> questions = new ArrayList<>();
        for (Leasts leasts : all) {
            questions.add(() -> price(leasts));
        }
        return questions;
    }

    private Leasts leasts(Need need) {
        Optional<Least> harder = need.harder().map(this::harder);
        if (idle.idle(need)) {
            return new Leasts(need, musts, need.softer().map(level -> musts), harder);
        }
        Least free =
                idle.without(need)
                        .orElseGet(
                                () ->
                                        solving.least(
                                                Stretch.boundless(needs.without(need)), known()));
        return new Leasts(
                need, free, need.softer().map(level -> softer(need, level, free)), harder);
    }

    /** One step softer lies between the must as asked and none. */
    private Least softer(Need need, Level level, Least free) {
        boolean between = need.kind() == Need.Kind.MUST;
        if (between && unchanged(free)) {
            return musts;
        }
        List<Build> known = new ArrayList<>(known());
        free.best().map(Standing::build).ifPresent(known::add);
        return solving.least(
                Stretch.boundless(needs.at(level)), known, between ? free.boundMinor() : 0);
    }

    /** What is harder never costs less. */
    private Least harder(Level level) {
        return solving.least(Stretch.boundless(needs.at(level)), known(), musts.boundMinor());
    }

    private NeedPrice price(Leasts leasts) {
        Need need = leasts.need();
        String words = need.kind() == Need.Kind.OWN ? "bought anew" : "not asked for";
        Variant without = variant(words, needs.without(need), leasts.free());
        return new NeedPrice(
                need,
                without,
                need.softer().map(level -> softer(need, level, leasts, without)),
                need.harder()
                        .map(
                                level ->
                                        variant(
                                                level.words(),
                                                needs.at(level),
                                                onFront(leasts.harder().get(), level))));
    }

    private Variant softer(Need need, Level level, Leasts leasts, Variant without) {
        Least least = leasts.softer().get();
        // What more freedom gained nothing for, less freedom need not be looked at for.
        boolean same =
                (idle.idle(need) || need.kind() == Need.Kind.MUST && unchanged(leasts.free()))
                        && without.pointsGained() == 0;
        return same
                ? new Variant(level.words(), musts, 0, 0)
                : variant(level.words(), needs.at(level), least);
    }

    /** Whether letting go of a must is proven to change nothing. */
    private boolean unchanged(Least free) {
        return musts.best().isPresent()
                && musts.proven()
                && free.best().isPresent()
                && free.proven()
                && free.totalMinor() == musts.totalMinor();
    }

    /** What steps did not reach may lie on the front. */
    private Least onFront(Least least, Level level) {
        return least.proven() && least.best().isPresent()
                ? least
                : solving.orKnown(least, Stretch.boundless(needs.at(level)), front);
    }

    private List<Build> known() {
        return musts.best().stream().map(Standing::build).toList();
    }

    private Variant variant(String words, Brief brief, Least least) {
        long saved =
                least.best().isPresent() && musts.best().isPresent()
                        ? musts.totalMinor() - least.totalMinor()
                        : 0;
        return new Variant(words, least, saved, gained(brief, least));
    }

    private long gained(Brief brief, Least least) {
        SearchSpace space = SearchSpace.of(brief, solving.catalogue());
        if (space.candidates().impossible() || front.isEmpty() || solving.stop().getAsBoolean()) {
            return 0;
        }
        Problem problem = space.within(brief.ceiling().minorUnits());
        List<Build> starts = spread();
        least.best().map(Standing::build).ifPresent(starts::add);
        List<Standing> placed = Solving.placed(problem, starts);
        List<Standing> near =
                new ArrayList<>(Neighbourhood.front(problem, placed, TRIES, solving.stop()));
        near.addAll(placed.stream().filter(Standing::sound).toList());
        Problem asked = SearchSpace.of(needs.brief(), solving.catalogue()).within(0);
        long before = points(asked, front.get(front.size() - 1));
        return near.stream()
                .mapToLong(standing -> points(asked, standing.build()) - before)
                .max()
                .orElse(0);
    }

    /** Some of the front's builds, the best last. */
    private List<Build> spread() {
        List<Build> spread = new ArrayList<>();
        int step = Math.max(1, front.size() / STARTS);
        for (int i = front.size() - 1; i >= 0; i -= step) {
            spread.add(0, front.get(i));
        }
        return spread;
    }

    /** Points by the goals of the brief as it stands. */
    private static long points(Problem asked, Build build) {
        return asked.points(asked.assessor().assess(build));
    }
}
