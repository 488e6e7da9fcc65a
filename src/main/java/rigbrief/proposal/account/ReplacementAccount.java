package rigbrief.proposal.account;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import rigbrief.brief.Brief;
import rigbrief.build.SetAside;
import rigbrief.build.Units;
import rigbrief.explain.Derivation;
import rigbrief.explain.Explanation;
import rigbrief.explain.Topic;
import rigbrief.proposal.replace.Change;
import rigbrief.proposal.replace.Disturbance;
import rigbrief.proposal.replace.Replacement;
import rigbrief.proposal.replace.Way;
import rigbrief.quantity.Money;

/** Explains the figures of a replacement, way by way. */
public final class ReplacementAccount {
    private static final String SOURCE =
            "exact decimal arithmetic on what was filed and on today's offers; what suppliers keep"
                    + " and how long a refit takes are common practice";

    private final Brief brief;
    private final Supplier<Replacement> answer;

    /**
     * An account of a replacement.
     *
     * @param answer gives the replacement; asked when a number is wanted, not before
     */
    public ReplacementAccount(Brief brief, Supplier<Replacement> answer) {
        this.brief = brief;
        this.answer = Accounts.once(answer);
    }

    /** The numbers of each way, least change first. */
    public List<Topic> topics() {
        List<Topic> topics = new ArrayList<>();
        for (Way.Aim aim : Way.Aim.values()) {
            add(topics, aim, "extra", "what it costs more than as filed", SUM, this::extra);
            add(topics, aim, "total", "what everything costs", TOTAL, this::total);
            add(topics, aim, "to-come-back", "what comes back from suppliers", BACK, this::refund);
            add(topics, aim, "lost", "lost to restocking and postage", LOST, this::lost);
            add(topics, aim, "minutes", "work at the bench", MINUTES, this::minutes);
            add(topics, aim, "utility", "utility", "points / most points", this::utility);
            add(topics, aim, "days", "days until all is here", DAYS, this::days);
        }
        return topics;
    }

    private static final String SUM =
            "changed parts + today's prices of what stays + delivery + tax, each less as filed";
    private static final String TOTAL =
            "parts + delivery + fees + tax, what is paid as it was paid";
    private static final String BACK = "what was paid for all that is not used any more - lost";
    private static final String LOST =
            "of sound goods that are here: the restocking share of their price and the postage, at"
                    + " most the price; faulty goods and orders not yet filled come back in full";
    private static final String MINUTES =
            "packing and refitting of each sound part that is given up, as common practice has it";
    private static final String DAYS = "the longest lead time of what is still to be bought";

    private void add(
            List<Topic> topics,
            Way.Aim aim,
            String number,
            String words,
            String formula,
            BiFunction<Derivation, Way, Explanation> explained) {
        String name = name(aim) + "." + number;
        String title = capital(aim.word()) + ", " + words;
        topics.add(
                new Topic(
                        name,
                        title,
                        () -> {
                            Derivation how = new Derivation(name, title, formula, SOURCE);
                            return answer.get().ways().stream()
                                    .filter(way -> way.aim() == aim)
                                    .findFirst()
                                    .map(way -> explained.apply(how, way))
                                    .orElseGet(() -> none(how));
                        }));
    }

    /** The numbers of a way begin with this. */
    static String name(Way.Aim aim) {
        return "change." + aim.word().replace(' ', '-');
    }

    private static Explanation none(Derivation how) {
        how.remark("rigbrief replace finds no such way here");
        return how.givesNothing("");
    }

    private Explanation extra(Derivation how, Way way) {
        List<Object> values = new ArrayList<>();
        StringBuilder sum = new StringBuilder();
        long parts = 0;
        for (Change change : way.changes()) {
            parts += change.extraMinor();
            BigDecimal extra = money(change.extraMinor());
            how.fact(
                    change.slot().word() + ", today's price - as filed",
                    extra,
                    code(),
                    change.to().map(part -> "offer of " + part.id()).orElse("nothing")
                            + "; build file");
            sum.append(sum.isEmpty() ? "{}" : " + {}");
            values.add(extra);
        }
        how.exact(
                "changed parts",
                money(parts),
                code(),
                sum.isEmpty() ? "0" : sum.toString(),
                values.toArray());
        BigDecimal staying = money(way.stayingMinor());
        BigDecimal delivery = money(way.deliveryMinor());
        BigDecimal tax = money(way.extraMinor() - parts - way.stayingMinor() - way.deliveryMinor());
        how.fact("today's prices of what stays - as filed", staying, code(), "offers; build file");
        how.fact("delivery - as filed", delivery, code(), "catalogue, suppliers used");
        how.fact("tax on it", tax, code(), "brief, fees, tax");
        return how.gives(
                money(way.extraMinor()),
                code(),
                "{} + {} + {} + {}",
                money(parts),
                staying,
                delivery,
                tax);
    }

    private Explanation total(Derivation how, Way way) {
        var cost = way.audit().cost();
        how.fact("parts", money(cost.partsMinor()), code(), "what was paid, and today's offers");
        how.fact("delivery", money(cost.deliveryMinor()), code(), "paid ones, and new ones");
        how.fact("fees", money(cost.feesMinor()), code(), "brief, fees");
        how.fact("tax", money(cost.taxMinor()), code(), "brief, fees, tax");
        how.remark(
                "rigbrief replace --out FILE files this build; rigbrief explain FILE shows every"
                        + " other number of it");
        long sum = cost.partsMinor() + cost.deliveryMinor() + cost.feesMinor() + cost.taxMinor();
        BigDecimal lost = money(cost.totalMinor() - sum);
        how.fact(
                "lost with what was replaced", lost, code(), "number " + name(way.aim()) + ".lost");
        return how.gives(
                money(cost.totalMinor()),
                code(),
                "{} + {} + {} + {} + {}",
                money(cost.partsMinor()),
                money(cost.deliveryMinor()),
                money(cost.feesMinor()),
                money(cost.taxMinor()),
                lost);
    }

    /** What was set aside for this way and not before. */
    private List<SetAside> aside(Way way) {
        List<SetAside> aside = new ArrayList<>(way.record().aside());
        aside.removeAll(answer.get().filed().aside());
        return aside;
    }

    private Explanation refund(Derivation how, Way way) {
        List<Object> values = new ArrayList<>();
        StringBuilder sum = new StringBuilder();
        long paidMinor = 0;
        for (SetAside one : aside(way)) {
            for (Units units : one.units()) {
                Money each = units.paid().orElse(one.unitPrice());
                how.fact(one.part() + ", each", each.plain(), code(), "build file, paid");
                sum.append(sum.isEmpty() ? "" : " + ").append("{} x {}");
                values.add(each.amount());
                values.add(units.count());
                paidMinor += each.minorUnits() * units.count();
            }
        }
        BigDecimal lost = money(way.lostMinor());
        how.fact("lost", lost, code(), "number " + name(way.aim()) + ".lost");
        if (paidMinor - way.lostMinor() != way.refundMinor()) {
            return given(how, money(way.refundMinor()));
        }
        values.add(lost);
        return how.gives(
                money(way.refundMinor()),
                code(),
                (sum.isEmpty() ? "0" : sum.toString()) + " - {}",
                values.toArray());
    }

    private Explanation lost(Derivation how, Way way) {
        how.fact(
                "restocking share",
                answer.get().disturbance().restockingPercent(),
                "%",
                "--restocking; common practice");
        for (SetAside one : aside(way)) {
            for (Units units : one.units()) {
                Money each = units.paid().orElse(one.unitPrice());
                String what = one.part() + ", " + units.count() + " " + units.state().word();
                how.fact(what + ", each", each.plain(), code(), "build file, paid");
                one.supplier()
                        .flatMap(
                                id ->
                                        answer.get().catalogue().suppliers().stream()
                                                .filter(supplier -> supplier.id().equals(id))
                                                .findFirst())
                        .ifPresent(
                                supplier ->
                                        how.fact(
                                                "postage to " + supplier.id(),
                                                supplier.delivery().plain(),
                                                code(),
                                                "catalogue, its delivery"));
            }
        }
        return given(how, money(way.lostMinor()));
    }

    private Explanation given(Derivation how, BigDecimal amount) {
        how.fact("sum", amount, code(), "the formula over the inputs above");
        return how.gives(amount, code(), "{}", amount);
    }

    private Explanation minutes(Derivation how, Way way) {
        for (SetAside one : aside(way)) {
            how.fact(
                    one.part() + ", fitting another",
                    Disturbance.refitMinutes(one.slot()),
                    "min",
                    "common practice, where it is fitted");
        }
        how.fact("packing a part", 10, "min", "common practice");
        how.fact("in all", way.workMinutes(), "min", "the formula over the inputs above");
        return how.gives(way.workMinutes(), 0, "min", "{}", way.workMinutes());
    }

    private Explanation utility(Derivation how, Way way) {
        how.fact("points", way.audit().points(), "", "sum of weight x utility over the goals");
        how.fact("most points", way.audit().mostPoints(), "", "brief, wishes");
        return how.gives(
                BigDecimal.valueOf(way.audit().points())
                        .divide(
                                BigDecimal.valueOf(Math.max(1, way.audit().mostPoints())),
                                4,
                                RoundingMode.HALF_UP),
                "",
                "{} / max(1, {})",
                way.audit().points(),
                way.audit().mostPoints());
    }

    private Explanation days(Derivation how, Way way) {
        how.fact("longest lead time", way.longestLeadDays(), "days", "catalogue, offers");
        how.fact("so here by", way.here(), "", "catalogue's date + that");
        return how.gives(way.longestLeadDays(), 0, "days", "{}", way.longestLeadDays());
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private BigDecimal money(long minor) {
        return Money.ofMinor(minor, brief.currency()).amount();
    }

    private String code() {
        return brief.currency().getCurrencyCode();
    }
}
