package rigbrief.proposal.account;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import rigbrief.audit.Audit;
import rigbrief.audit.GoalScore;
import rigbrief.build.Build;
import rigbrief.explain.Derivation;
import rigbrief.explain.Explanation;
import rigbrief.explain.Topic;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.Proof;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Tier;
import rigbrief.quantity.Money;

/**
 * Explains the proof of a tier. What was reached and the gap can be redone by hand; the bound and
 * the steps are what a search of the whole catalogue counted, so it is said what they are and how
 * they are checked.
 */
final class ProofAccount {
    static final String SOURCE =
            "branch and bound (Land and Doig, 1960, from memory): a branch is given up when not"
                    + " even its bound is better than the best build found";

    /** How somebody who doubts it can check. */
    static final String CHECKED =
            "a bound over so many builds can't be redone by hand: the tests compare it with trying"
                    + " every build of small catalogues, and the search with two solvers that share"
                    + " none of its code; the audit, which has no solver in it, judges the build";

    private static final String UNITS = "smallest coins";

    private final Supplier<Proposals> answer;
    private final Tier tier;
    private final Build build;

    ProofAccount(Supplier<Proposals> answer, Tier tier, Build build) {
        this.answer = answer;
        this.tier = tier;
        this.build = build;
    }

    List<Topic> topics() {
        return List.of(
                new Topic("proof.reached", "What the tier made best", this::reached),
                new Topic(
                        "proof.best-possible", "Bound that no build can pass", this::bestPossible),
                new Topic("proof.gap-percent", "Gap to the best possible", this::gap),
                new Topic("proof.steps", "Steps of the search", this::steps));
    }

    /** The proposal of a tier; empty where today's search has none in it. */
    static Optional<Proposal> of(Proposals answer, Tier tier) {
        return answer.proposals().stream().filter(one -> one.tier() == tier).findFirst();
    }

    private static Explanation none(Derivation how, Tier tier) {
        how.remark(
                "today's search has no build of its own in the tier "
                        + tier.word()
                        + "; rigbrief propose says why");
        return how.givesNothing("");
    }

    private Derivation derivation(String number, String title, String formula, Proposal found) {
        Derivation how = new Derivation(number, title, formula, SOURCE);
        if (found != null && !found.audit().build().filled().equals(build.filled())) {
            how.remark(
                    "the build named is not the one that today's search finds in its tier; the"
                            + " figures are those of the one found: "
                            + String.join(", ", ids(found.audit().build())));
        }
        return how;
    }

    private static List<String> ids(Build build) {
        return new FrontPoint(0, 0, build).parts();
    }

    private Explanation reached() {
        Proposal found = of(answer.get(), tier).orElse(null);
        String formula =
                switch (tier) {
                    case LEAN -> "the total of the build";
                    case FULL -> "points / most points, points the sum of weight x utility";
                    case BALANCED ->
                            "points x (total of the fullest - total of the leanest) - total x"
                                    + " (points of the fullest - points of the leanest): how far"
                                    + " the build lies above the line between both";
                };
        Derivation how = derivation("proof.reached", "What the tier made best", formula, found);
        if (found == null) {
            return none(how, tier);
        }
        Money total = Money.ofMinor(found.audit().cost().totalMinor(), currency());
        if (tier == Tier.LEAN) {
            how.fact("total", total.plain(), code(), "number cost.total");
            return how.gives(total.amount(), code(), "{}", total.amount());
        }
        long points = points(how, found.audit());
        if (tier == Tier.FULL) {
            return how.gives(
                    (double) points / Math.max(1, found.audit().mostPoints()),
                    4,
                    "",
                    "{} / {}",
                    points,
                    found.audit().mostPoints());
        }
        return balance(how, found, points);
    }

    /** Points of a build, with the steps. */
    private static long points(Derivation how, Audit audit) {
        List<Object> values = new ArrayList<>();
        for (GoalScore goal : audit.goals()) {
            how.fact("weight of " + goal.goal(), goal.weight(), "", "brief, wishes");
            how.fact(
                    "utility of " + goal.goal(),
                    goal.tenThousandths(),
                    "ten-thousandths",
                    "number goal." + goal.goal());
            values.add(goal.weight());
            values.add(goal.tenThousandths());
        }
        how.exact(
                "points",
                BigDecimal.valueOf(audit.points()),
                "",
                values.isEmpty()
                        ? "0"
                        : String.join(" + ", Collections.nCopies(audit.goals().size(), "{} x {}")),
                values.toArray());
        return audit.points();
    }

    private Explanation balance(Derivation how, Proposal found, long points) {
        List<FrontPoint> front = answer.get().front();
        FrontPoint lean = front.get(0);
        FrontPoint full = front.get(front.size() - 1);
        long most = found.audit().mostPoints();
        long leanPoints = Math.round(lean.utility() * most);
        long fullPoints = Math.round(full.utility() * most);
        long total = found.audit().cost().totalMinor();
        how.fact("total", total, UNITS, "number cost.total");
        how.fact("total of the leanest", lean.totalMinor(), UNITS, "the tier lean");
        how.fact("total of the fullest", full.totalMinor(), UNITS, "the tier full");
        how.fact("points of the leanest", leanPoints, "", "number proof.reached of the tier lean");
        how.fact("points of the fullest", fullPoints, "", "number proof.reached of the tier full");
        BigDecimal reached =
                BigDecimal.valueOf(points)
                        .multiply(BigDecimal.valueOf(full.totalMinor() - lean.totalMinor()))
                        .subtract(
                                BigDecimal.valueOf(total)
                                        .multiply(BigDecimal.valueOf(fullPoints - leanPoints)));
        if (reached.doubleValue() != found.proof().reached()) {
            how.remark(
                    "the fullest build stands over the ceiling; the balance was struck below it");
            return how.gives(found.proof().reached(), 0, "", "{}", exact(found.proof().reached()));
        }
        return how.gives(
                reached,
                "",
                "{} x ({} - {}) - {} x ({} - {})",
                points,
                full.totalMinor(),
                lean.totalMinor(),
                total,
                fullPoints,
                leanPoints);
    }

    private Explanation bestPossible() {
        Proposal found = of(answer.get(), tier).orElse(null);
        Derivation how =
                derivation(
                        "proof.best-possible",
                        "Bound that no build can pass",
                        "what was reached, when every branch was gone through or given up; else"
                                + " the best bound of the branches left open. The bound of a branch"
                                + " is the figure of the parts it has decided with, in every open"
                                + " place, the best that any part there could add",
                        found);
        if (found == null) {
            return none(how, tier);
        }
        Proof proof = found.proof();
        how.remark(CHECKED);
        String from = proof.proven() ? "number proof.reached" : "the search";
        double bound = proof.bestPossible();
        return switch (tier) {
            case LEAN -> {
                BigDecimal money = Money.ofMinor(Math.round(bound), currency()).amount();
                how.fact("bound", money, code(), from);
                yield how.gives(money, code(), "{}", money);
            }
            case FULL -> {
                how.fact("bound in points", exact(bound), "", from);
                how.fact("most points", found.audit().mostPoints(), "", "brief, wishes");
                yield how.gives(
                        bound / Math.max(1, found.audit().mostPoints()),
                        4,
                        "",
                        "{} / {}",
                        exact(bound),
                        found.audit().mostPoints());
            }
            case BALANCED -> {
                how.fact("bound", exact(bound), "", from);
                yield how.gives(bound, 0, "", "{}", exact(bound));
            }
        };
    }

    private Explanation gap() {
        Proposal found = of(answer.get(), tier).orElse(null);
        boolean balance = tier == Tier.BALANCED;
        Derivation how =
                derivation(
                        "proof.gap-percent",
                        "Gap to the best possible",
                        balance
                                ? "100 x (bound - reached) / (span of money x span of points"
                                        + " between the leanest and the fullest)"
                                : "100 x distance of reached and bound / the larger of both",
                        found);
        if (found == null) {
            return none(how, tier);
        }
        Proof proof = found.proof();
        how.remark(CHECKED);
        double reached = proof.reached();
        double bound = proof.bestPossible();
        String unit = tier == Tier.LEAN ? UNITS : "";
        how.fact("reached", exact(reached), unit, "number proof.reached, in points or coins");
        how.fact("bound", exact(bound), unit, "number proof.best-possible, in points or coins");
        if (proof.proven()) {
            how.remark("proven: every branch was gone through or given up");
            return how.gives(0, 2, "%", "100 x ({} - {})", exact(reached), exact(bound));
        }
        how.remark("a gap is printed rounded up, so that none that exists is told as nought");
        if (balance) {
            FrontPoint lean = answer.get().front().get(0);
            FrontPoint full = answer.get().front().get(answer.get().front().size() - 1);
            double span =
                    (full.totalMinor() - lean.totalMinor())
                            * (full.utility() - lean.utility())
                            * found.audit().mostPoints();
            how.given("square of money and points", span, "", "the tiers lean and full");
            return how.gives(
                    Math.ceil(proof.gapPercent() * 100) / 100,
                    2,
                    "%",
                    "ceil(100 x 100 x ({} - {}) / {}) / 100",
                    exact(bound),
                    exact(reached),
                    span);
        }
        return how.gives(
                Math.ceil(proof.gapPercent() * 100) / 100,
                2,
                "%",
                "ceil(100 x 100 x max({} - {}, {} - {}) / max(1, {}, {})) / 100",
                exact(bound),
                exact(reached),
                exact(reached),
                exact(bound),
                exact(reached),
                exact(bound));
    }

    private Explanation steps() {
        Proposal found = of(answer.get(), tier).orElse(null);
        Derivation how =
                derivation(
                        "proof.steps",
                        "Steps of the search",
                        "branches looked into, counted; the same on every machine, since the search"
                                + " stops by counts and not by time",
                        found);
        if (found == null) {
            return none(how, tier);
        }
        how.fact("branches looked into", found.proof().steps(), "", "the search");
        return how.gives(
                BigDecimal.valueOf(found.proof().steps()), "", "{}", found.proof().steps());
    }

    private static BigDecimal exact(double figure) {
        return new BigDecimal(figure).setScale(0, RoundingMode.HALF_UP);
    }

    private Currency currency() {
        return answer.get().brief().currency();
    }

    private String code() {
        return currency().getCurrencyCode();
    }
}
