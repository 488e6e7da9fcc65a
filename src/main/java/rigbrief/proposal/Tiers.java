package rigbrief.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;
import rigbrief.proposal.solve.Agreement;
import rigbrief.search.Certificate;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;
import rigbrief.search.TwoStage;
import rigbrief.wording.Phrase;

/** The tiers of one brief, each starting from what the searches before it found. */
final class Tiers {
    /** Slots whose part a client notices: cables or a brace do not make another build. */
    private static final List<Slot> NOTICED =
            List.of(
                    Slot.PROCESSOR,
                    Slot.BOARD,
                    Slot.MEMORY,
                    Slot.GRAPHICS,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.SUPPLY,
                    Slot.COOLER,
                    Slot.CASE,
                    Slot.FANS,
                    Slot.DISPLAY);

    private final SearchLimits limits;
    private final Brief brief;
    private final Catalogue catalogue;
    private final SearchSpace space;
    private final SearchSpace aside;
    private final Problem problem;
    private final TwoStage search;
    private final Map<Tier, Certificate> found = new EnumMap<>(Tier.class);
    private final Map<Tier, Objective> objectives = new EnumMap<>(Tier.class);
    private final List<Phrase> remarks = new ArrayList<>();
    private final List<Standing> pool = new ArrayList<>();

    Tiers(
            SearchLimits limits,
            Brief brief,
            Catalogue catalogue,
            SearchSpace space,
            TwoStage search,
            FirstSearches first) {
        this.limits = limits;
        this.brief = brief;
        this.catalogue = catalogue;
        this.space = space;
        this.aside = first.aside();
        this.problem = space.within(brief.ceiling().minorUnits());
        this.search = search;
        put(Tier.LEAN, Objective.leastMoney(), first.leastMoney());
        put(Tier.FULL, Objective.mostUtility(), first.mostUtility());
    }

    Proposals propose(SearchClock clock) {
        share();
        Standing least = best(Tier.LEAN);
        Standing most = best(Tier.FULL);
        if (most.totalMinor() > least.totalMinor() && most.points() > least.points()) {
            Objective balance = balance(least, most);
            List<Standing> starts = List.of(least, most);
            Problem other = aside.within(problem.limitMinor());
            put(Tier.BALANCED, balance, search.bestFrom(problem, other, balance, starts));
        }
        share();
        Overrun overrun = Overrun.find(space, aside, brief, search, best(Tier.FULL));
        overrun.certificate()
                .ifPresent(certificate -> put(Tier.FULL, Objective.mostUtility(), certificate));
        List<Proposal> proposals = proposals(overrun);
        remarks.addAll(clock.remarks());
        return new Proposals(
                brief, catalogue, limits.seed(), proposals, front(), Optional.empty(), remarks);
    }

    private Standing best(Tier tier) {
        return found.get(tier).best().orElseThrow();
    }

    private void put(Tier tier, Objective objective, Certificate certificate) {
        found.put(tier, certificate);
        objectives.put(tier, objective);
        certificate.best().ifPresent(pool::add);
    }

    /** An unproven tier may be beaten by what the search for another one came across. */
    private void share() {
        found.replaceAll(
                (tier, certificate) -> {
                    Standing best = certificate.best().orElse(null);
                    for (Standing other : pool) {
                        boolean allowed = other.totalMinor() <= problem.limitMinor();
                        if (allowed && other.betterThan(best, objectives.get(tier))) {
                            best = other;
                        }
                    }
                    return certificate.with(best);
                });
    }

    /**
     * The knee: the build farthest from the chord between lean and full in money and utility both
     * scaled to 0..1. That distance is a weighted difference of utility and money, so the knee is
     * the best build under it, and no front is needed to find it.
     */
    private static Objective balance(Standing least, Standing most) {
        return Objective.weighted(
                most.totalMinor() - least.totalMinor(), most.points() - least.points());
    }

    private List<Proposal> proposals(Overrun overrun) {
        Auditor auditor = new Auditor(brief, catalogue);
        Filing filing = new Filing(brief, catalogue, problem.assessor());
        List<Proposal> proposals = new ArrayList<>();
        List<Standing> shown = new ArrayList<>();
        for (Tier tier : List.of(Tier.LEAN, Tier.FULL, Tier.BALANCED)) {
            Certificate certificate = found.get(tier);
            if (certificate == null) {
                remarks.add(Phrase.of("remark.no-balanced"));
                continue;
            }
            Standing standing = certificate.best().orElseThrow();
            Optional<Standing> like =
                    shown.stream().filter(other -> !differs(standing, other)).findFirst();
            if (like.isPresent()) {
                remarks.add(Phrase.of("remark.like", Phrase.of("tier.word." + tier.word())));
                continue;
            }
            shown.add(standing);
            Audit audit = auditor.audit(standing.build());
            Agreement.between(standing, audit);
            proposals.add(
                    new Proposal(
                            tier,
                            filing.record(standing.build(), tier),
                            audit,
                            new Reasons(problem, standing, objectives.get(tier)).all(),
                            proof(tier, certificate),
                            tier == Tier.FULL ? overrun.remarks() : List.of()));
        }
        proposals.sort(Comparator.comparing(Proposal::tier));
        return proposals;
    }

    private boolean differs(Standing a, Standing b) {
        for (Slot slot : NOTICED) {
            if (a.choices().get(slot.ordinal()) != b.choices().get(slot.ordinal())) {
                return true;
            }
        }
        return false;
    }

    private Proof proof(Tier tier, Certificate certificate) {
        Standing standing = certificate.best().orElseThrow();
        Objective objective = objectives.get(tier);
        double reached = objective.first(standing.points(), standing.totalMinor());
        double bound = certificate.complete() ? reached : certificate.bound();
        String figure =
                switch (tier) {
                    case LEAN -> "total";
                    case BALANCED -> "balance";
                    case FULL -> "score";
                };
        // A balance is a difference that may be near nothing, so its gap is told in parts of the
        // square
        // that lean and full span in money and utility.
        double scale =
                tier == Tier.BALANCED
                        ? (double) objective.perPoint() * objective.perMinor()
                        : Math.max(1, Math.max(Math.abs(reached), Math.abs(bound)));
        double gap = certificate.complete() ? 0 : Math.max(1e-4, 100 * (bound - reached) / scale);
        double sign = tier == Tier.LEAN ? -1 : 1;
        return new Proof(figure, sign * reached, sign * bound, gap, certificate.steps());
    }

    private List<FrontPoint> front() {
        List<FrontPoint> points = new ArrayList<>();
        for (Certificate certificate : found.values()) {
            Standing standing = certificate.best().orElseThrow();
            points.add(
                    new FrontPoint(
                            standing.totalMinor(),
                            (double) standing.points() / Math.max(1, problem.mostPoints()),
                            standing.build()));
        }
        points.sort(
                Comparator.comparingLong(FrontPoint::totalMinor)
                        .thenComparing(FrontPoint::utility));
        return points.stream().distinct().toList();
    }
}
