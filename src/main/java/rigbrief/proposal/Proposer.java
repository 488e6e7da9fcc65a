package rigbrief.proposal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;
import rigbrief.search.Certificate;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;
import rigbrief.search.TwoStage;

/** Answers a brief: three tiers with proof and reasons, or why there is none. */
public final class Proposer {
    /**
     * Slots whose part a client notices: a set of cables or a brace does not make another build.
     */
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

    /** A proposer that searches no harder than the limits say. */
    public Proposer(SearchLimits limits) {
        this.limits = limits;
    }

    /** The answer to a brief. */
    public Proposals propose(Brief brief, Catalogue catalogue) {
        Clock clock = new Clock(limits);
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (space.candidates().impossible()) {
            return impossible(brief, catalogue, space, clock);
        }
        Problem problem = space.within(brief.ceiling().minorUnits());
        TwoStage search = new TwoStage(limits.seed(), limits.moves(), limits.steps(), clock::over);
        Certificate lean =
                search.best(problem, Objective.leastMoney(), Optional.empty(), List.of());
        if (lean.best().isEmpty()) {
            return lean.complete()
                    ? impossible(brief, catalogue, space, clock)
                    : notFound(brief, catalogue, lean);
        }
        return new Tiers(problem, search, lean).propose(brief, catalogue, space, clock);
    }

    private Proposals impossible(Brief brief, Catalogue catalogue, SearchSpace space, Clock clock) {
        Clash clash = new ClashFinder(catalogue, limits.steps(), clock::over).find(brief, space);
        return new Proposals(
                brief,
                catalogue,
                limits.seed(),
                List.of(),
                List.of(),
                Optional.of(clash),
                clock.remarks());
    }

    private Proposals notFound(Brief brief, Catalogue catalogue, Certificate lean) {
        Clash clash =
                new Clash(
                        List.of(),
                        false,
                        List.of(
                                "No build was found in %d steps, and it is not proven that there is none; allow more steps or time."
                                        .formatted(lean.steps())));
        return new Proposals(
                brief,
                catalogue,
                limits.seed(),
                List.of(),
                List.of(),
                Optional.of(clash),
                List.of());
    }

    /** Time, asked only when the limits name a ceiling on it. */
    private static final class Clock implements BooleanSupplier {
        private final SearchLimits limits;
        private final long startedNs = System.nanoTime();
        private boolean over;

        Clock(SearchLimits limits) {
            this.limits = limits;
        }

        boolean over() {
            over |=
                    limits.time().isPresent()
                            && System.nanoTime() - startedNs > limits.time().get().toNanos();
            return over;
        }

        @Override
        public boolean getAsBoolean() {
            return over();
        }

        List<String> remarks() {
            return over
                    ? List.of(
                            "The time of %d ms was used up; what is shown is the best found by then, and another run may differ."
                                    .formatted(limits.time().get().toMillis()))
                    : List.of();
        }
    }

    /** The three searches of one brief, each starting from what the one before found. */
    private final class Tiers {
        private final Problem problem;
        private final TwoStage search;
        private final Certificate lean;
        private final Map<Tier, Certificate> found = new EnumMap<>(Tier.class);
        private final Map<Tier, Objective> objectives = new EnumMap<>(Tier.class);
        private final List<String> remarks = new ArrayList<>();
        private final List<Standing> pool = new ArrayList<>();

        Tiers(Problem problem, TwoStage search, Certificate lean) {
            this.problem = problem;
            this.search = search;
            this.lean = lean;
        }

        Proposals propose(Brief brief, Catalogue catalogue, SearchSpace space, Clock clock) {
            Standing least = lean.best().orElseThrow();
            put(Tier.LEAN, Objective.leastMoney(), lean);
            Certificate full =
                    search.best(
                            problem, Objective.mostUtility(), Optional.of(least), worths());
            put(Tier.FULL, Objective.mostUtility(), full);
            Standing most = full.best().orElseThrow();
            balance(least, most);
            share();
            Overrun overrun = Overrun.find(space, brief, search, most, worths());
            overrun.certificate()
                    .ifPresent(certificate -> put(Tier.FULL, Objective.mostUtility(), certificate));
            List<Proposal> proposals = proposals(brief, catalogue, overrun);
            remarks.addAll(clock.remarks());
            return new Proposals(
                    brief, catalogue, limits.seed(), proposals, front(), Optional.empty(), remarks);
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
                        Standing best = certificate.best().orElseThrow();
                        for (Standing other : pool) {
                            boolean allowed = other.totalMinor() <= problem.limitMinor();
                            if (allowed && other.betterThan(best, objectives.get(tier))) {
                                best = other;
                            }
                        }
                        return certificate.with(best);
                    });
        }

        /** Rates of exchange around the one at which the whole ceiling would buy full utility. */
        private List<Double> worths() {
            double average = (double) problem.mostPoints() / problem.limitMinor();
            return List.of(average / 4, average, 4 * average);
        }

        /**
         * The knee: the build farthest from the chord between lean and full in money and utility
         * both scaled to 0..1. That distance is a weighted difference of utility and money, so the
         * knee is the best build under it, and no front is needed to find it.
         */
        private void balance(Standing least, Standing most) {
            long money = most.totalMinor() - least.totalMinor();
            long points = most.points() - least.points();
            if (money > 0 && points > 0) {
                Objective objective = Objective.weighted(money, points);
                Standing from = least.betterThan(most, objective) ? least : most;
                put(
                        Tier.BALANCED,
                        objective,
                        search.best(problem, objective, Optional.of(from), worths()));
            }
        }

        private List<Proposal> proposals(Brief brief, Catalogue catalogue, Overrun overrun) {
            Auditor auditor = new Auditor(brief, catalogue);
            Filing filing = new Filing(brief, catalogue, problem.assessor());
            List<Proposal> proposals = new ArrayList<>();
            List<Standing> shown = new ArrayList<>();
            for (Tier tier : List.of(Tier.LEAN, Tier.FULL, Tier.BALANCED)) {
                Certificate certificate = found.get(tier);
                if (certificate == null) {
                    remarks.add(
                            "No balanced build: the lean one already has all the utility that money under the ceiling can buy.");
                    continue;
                }
                Standing standing = certificate.best().orElseThrow();
                Optional<Standing> like =
                        shown.stream().filter(other -> !differs(standing, other)).findFirst();
                if (like.isPresent()) {
                    remarks.add(
                            "No %s build of its own: it would differ from another tier in nothing that the client notices."
                                    .formatted(tier.word()));
                    continue;
                }
                shown.add(standing);
                Audit audit = auditor.audit(standing.build());
                agree(standing, audit);
                proposals.add(
                        new Proposal(
                                tier,
                                filing.record(standing.build(), tier),
                                audit,
                                new Reasons(problem, standing, objectives.get(tier)).all(),
                                proof(tier, certificate),
                                tier == Tier.FULL ? overrun.remarks() : List.of()));
            }
            proposals.sort(java.util.Comparator.comparing(Proposal::tier));
            return proposals;
        }

        /**
         * The judge, who knows no solver, must see what the search saw: anything else is a fault of
         * the program.
         */
        private void agree(Standing standing, Audit audit) {
            boolean same =
                    audit.fits()
                            && audit.points() == standing.points()
                            && audit.cost().totalMinor() == standing.totalMinor();
            if (!same) {
                throw new IllegalStateException(
                        "audit found fits=%s points=%d total=%d, search claimed points=%d total=%d for %s; please report it"
                                .formatted(
                                        audit.fits(),
                                        audit.points(),
                                        audit.cost().totalMinor(),
                                        standing.points(),
                                        standing.totalMinor(),
                                        standing.build()));
            }
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
            double scale = Math.max(1, Math.max(Math.abs(reached), Math.abs(bound)));
            double gap =
                    certificate.complete() ? 0 : Math.max(1e-4, 100 * (bound - reached) / scale);
            double sign = tier == Tier.LEAN ? -1 : 1;
            return new Proof(figure, sign * reached, sign * bound, gap, certificate.steps());
        }

        private List<FrontPoint> front() {
            List<FrontPoint> points = new ArrayList<>();
            for (Certificate certificate : found.values()) {
                Standing standing = certificate.best().orElseThrow();
                List<String> parts = new ArrayList<>();
                standing.build().filled().forEach((slot, part) -> parts.add(part.id()));
                points.add(
                        new FrontPoint(
                                standing.totalMinor(),
                                (double) standing.points() / Math.max(1, problem.mostPoints()),
                                parts));
            }
            points.sort(
                    java.util.Comparator.comparingLong(FrontPoint::totalMinor)
                            .thenComparing(FrontPoint::utility));
            return points.stream().distinct().toList();
        }
    }
}
