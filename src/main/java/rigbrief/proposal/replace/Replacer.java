package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import rigbrief.assess.Assessor;
import rigbrief.audit.Audit;
import rigbrief.audit.AuditFinding;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.build.Build;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;
import rigbrief.presolve.CandidateFinder;
import rigbrief.presolve.Candidates;
import rigbrief.presolve.ReplacementCandidates;
import rigbrief.proposal.solve.Agreement;
import rigbrief.quantity.Money;
import rigbrief.rule.Rules;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.Objective;
import rigbrief.search.Standing;

/** Answers trouble with a filed build: the least change that keeps every promise, with proof. */
public final class Replacer {
    /** Stands in for "no ceiling", in minor units. */
    private static final long UNLIMITED_MINOR = 100_000_000_000L;

    private final Limits limits;
    private final Disturbance disturbance;

    /**
     * A replacer.
     *
     * @param limits how hard to search
     * @param disturbance what giving up a part that is here costs
     */
    public Replacer(Limits limits, Disturbance disturbance) {
        this.limits = limits;
        this.disturbance = disturbance;
    }

    /**
     * Up to three ways out.
     *
     * @param build the build as it was filed
     * @param trouble what happened since
     * @param catalogue today's parts and offers
     */
    public Replacement replace(BuildRecord build, Trouble trouble, Catalogue catalogue) {
        return new Search(Situation.of(build, trouble, catalogue, disturbance), build, trouble)
                .answer(true);
    }

    /** The least change alone, for a fallback that is worked out beforehand. */
    public Replacement leastChange(BuildRecord build, Trouble trouble, Catalogue catalogue) {
        return new Search(Situation.of(build, trouble, catalogue, disturbance), build, trouble)
                .answer(false);
    }

    /** The best build for an aim, and whether every search for it went to its end. */
    private record Improved(Standing standing, boolean complete) {}

    private final class Search {
        private final Situation situation;
        private final BuildRecord filed;
        private final Trouble trouble;
        private final Assessor assessor;
        private final Candidates usual;
        private final ReplacementCandidates candidates;
        private final Set<Slot> lost;
        private final SlotSearch search;
        private final long limitMinor;
        private final LeastDisturbance least;
        private final ChangeReasons reasons;
        private final List<String> remarks;
        private int sets;
        private long steps;

        Search(Situation situation, BuildRecord filed, Trouble trouble) {
            this.situation = situation;
            this.filed = filed;
            this.trouble = trouble;
            this.assessor = situation.assessor();
            this.usual = new CandidateFinder(assessor, Rules.ALL).find();
            this.candidates = new ReplacementCandidates(assessor, usual, situation.build());
            this.lost = LeastDisturbance.lost(candidates);
            Clauses clauses = new Clauses(assessor, candidates, situation.build(), lost);
            this.search = new SlotSearch(assessor, candidates, clauses, limits);
            this.limitMinor = CeilingRule.limitMinor(situation.brief());
            this.least = new LeastDisturbance(situation, candidates, clauses, search, limitMinor);
            this.reasons = new ChangeReasons(situation, trouble, assessor, lost);
            this.remarks = new ArrayList<>(situation.remarks());
        }

        Replacement answer(boolean all) {
            LeastDisturbance.Found found = least.find();
            sets = search.searches();
            steps = search.steps();
            if (found.best().isEmpty()) {
                return replacement(List.of(), found.proven(), why(found.proven(), all));
            }
            Standing best = found.best().get();
            List<Way> ways = new ArrayList<>();
            ways.add(way(Way.Aim.LEAST, best, found.proven()));
            if (all && !quiet(ways.get(0))) {
                further(found, best, ways);
            }
            return replacement(ways, found.proven(), List.of());
        }

        /** Nothing has happened to this build. */
        private boolean quiet(Way way) {
            return way.changes().isEmpty() && trouble.prices().isEmpty();
        }

        /** The two other aims need nothing of each other, so they are searched side by side. */
        private void further(LeastDisturbance.Found found, Standing best, List<Way> ways) {
            long ceiling = Math.max(situation.brief().ceiling().minorUnits(), best.totalMinor());
            CompletableFuture<Improved> finest =
                    CompletableFuture.supplyAsync(
                            () ->
                                    new Search(situation, filed, trouble)
                                            .improved(
                                                    found, Objective.mostUtility(), ceiling, best),
                            runnable -> {
                                Thread thread = new Thread(runnable, "most-utility");
                                thread.setDaemon(true);
                                thread.start();
                            });
            Improved cheapest = improved(found, Objective.leastMoney(), limitMinor, best);
            add(Way.Aim.CHEAPEST, cheapest, ways);
            add(Way.Aim.BEST, joined(finest), ways);
        }

        private static Improved joined(CompletableFuture<Improved> future) {
            try {
                return future.join();
            } catch (CompletionException failed) {
                if (failed.getCause() instanceof RuntimeException cause) {
                    throw cause;
                }
                throw failed;
            }
        }

        private Improved improved(
                LeastDisturbance.Found found, Objective objective, long limit, Standing best) {
            Standing rival = best;
            for (Set<Slot> changing : oneMore(found)) {
                rival = search.best(changing, objective, limit, Optional.of(rival)).orElse(rival);
            }
            return new Improved(rival, search.complete());
        }

        private void add(Way.Aim aim, Improved improved, List<Way> ways) {
            Standing standing = improved.standing();
            for (Way way : ways) {
                if (way.audit().build().equals(standing.build())) {
                    remarks.add(
                            "The %s is the %s way too."
                                    .formatted(
                                            way.aim() == Way.Aim.LEAST
                                                    ? way.aim().word()
                                                    : way.aim().word() + " way",
                                            aim.word()));
                    return;
                }
            }
            ways.add(way(aim, standing, improved.complete()));
        }

        /** The slots of the least change, with one more that nothing here is given up for. */
        private List<Set<Slot>> oneMore(LeastDisturbance.Found found) {
            List<Set<Slot>> sets = new ArrayList<>();
            Set<Slot> base = EnumSet.noneOf(Slot.class);
            base.addAll(found.changing());
            sets.add(base);
            for (Slot slot : least.flexible()) {
                if (!base.contains(slot) && !situation.losses().containsKey(slot)) {
                    Set<Slot> wider = EnumSet.copyOf(base.isEmpty() ? Set.of(slot) : base);
                    wider.add(slot);
                    sets.add(wider);
                }
            }
            return sets;
        }

        private Way way(Way.Aim aim, Standing standing, boolean proven) {
            Build after = standing.build();
            Auditor auditor =
                    new Auditor(situation.brief(), situation.catalogue(), situation.settled());
            Audit audit = auditor.audit(after);
            Agreement.between(standing, audit);
            List<Change> changes = reasons.of(after);
            Refiling refiling = new Refiling(situation, assessor, after);
            return new Way(
                    aim,
                    refiling.record(changes),
                    audit,
                    newCautions(auditor.audit(situation.build()), audit),
                    changes,
                    audit.cost().totalMinor() - situation.plannedMinor(),
                    audit.cost().deliveryMinor() - situation.plannedDeliveryMinor(),
                    refiling.stayingMinor(changes),
                    refiling.refundMinor(),
                    refiling.lostMinor(),
                    BenchWork.minutes(situation.filed(), changes),
                    audit.cost().longestLeadDays(),
                    situation.catalogue().asOf().plusDays(audit.cost().longestLeadDays()),
                    BenchWork.of(situation.filed(), after, changes),
                    proof(aim, proven),
                    proven);
        }

        private static List<AuditFinding> newCautions(Audit before, Audit after) {
            List<String> known = before.findings().stream().map(it -> it.text()).toList();
            return after.findings().stream()
                    .filter(it -> it.level() == AuditFinding.Level.CAUTION)
                    .filter(it -> !known.contains(it.text()))
                    .toList();
        }

        private String proof(Way.Aim aim, boolean proven) {
            if (!proven) {
                return "Not proven: the step limit ended the search before every other way was"
                        + " ruled out.";
            }
            return switch (aim) {
                case LEAST ->
                        "Proven: no build that keeps every must gives up less of what is here;"
                                + " of those, none changes fewer slots; of those, none costs less.";
                case CHEAPEST ->
                        "Proven: no build costs less that changes the slots of the least change and"
                                + " at most one more, for which nothing here is given up.";
                case BEST ->
                        "Proven: no build under the ceiling has more utility that changes the slots"
                                + " of the least change and at most one more, for which nothing here"
                                + " is given up.";
            };
        }

        private Replacement replacement(List<Way> ways, boolean proven, List<String> why) {
            return new Replacement(
                    situation.filed(),
                    trouble,
                    situation.brief(),
                    situation.catalogue(),
                    disturbance,
                    ways,
                    proven,
                    why,
                    remarks,
                    sets,
                    steps);
        }

        private List<String> why(boolean proven, boolean deeper) {
            List<String> why =
                    new ArrayList<>(
                            new NoWayOut(situation, assessor, usual, candidates, lost)
                                    .reasons(proven));
            if (deeper) {
                dearer().ifPresent(why::add);
            }
            return why;
        }

        /** What the least change would cost if the ceiling were no must. */
        private Optional<String> dearer() {
            if (filed.brief().isEmpty()) {
                return Optional.empty();
            }
            Brief brief = filed.brief().get();
            Brief lifted =
                    new BriefDraft(brief)
                            .ceiling(Money.ofMinor(UNLIMITED_MINOR, brief.currency()))
                            .toBrief();
            BuildRecord other =
                    new BuildRecord(
                            Optional.of(lifted),
                            filed.tier(),
                            filed.catalogueName(),
                            filed.catalogueDigest(),
                            filed.lines(),
                            filed.aside(),
                            filed.history());
            Replacement answer = leastChange(other, trouble, situation.catalogue());
            if (answer.impossible()) {
                return Optional.empty();
            }
            Way way = answer.ways().get(0);
            long total = way.audit().cost().totalMinor();
            return Optional.of(
                    "It is the ceiling that stands in the way: %s would do, with %d slot%s changed, %s over it."
                            .formatted(
                                    Money.ofMinor(total, brief.currency()),
                                    way.changedSlots(),
                                    way.changedSlots() == 1 ? "" : "s",
                                    Money.ofMinor(
                                            total - brief.ceiling().minorUnits(),
                                            brief.currency())));
        }
    }
}
