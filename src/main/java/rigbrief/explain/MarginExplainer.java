package rigbrief.explain;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Margin;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/**
 * Explains what each rule leaves over: what there is, what is needed, and whose figures they are.
 */
final class MarginExplainer implements Explainer {
    /** By rule: which numbers what there is and what is needed are worked out from. */
    static final Map<String, String> WORKED_OUT =
            Map.of(
                    "supply-load",
                    "needed: number power.sustained-w over the planned share, and as many sizes up"
                            + " as the brief's headroom says",
                    "supply-peak",
                    "needed: number power.peak-w in whole watts; there is: the rating times what"
                            + " its design guide allows for 1 ms",
                    "noise",
                    "needed: number noise.load-dba, before rounding; there is: the brief's limit",
                    "ceiling",
                    "needed: number cost.total; there is: the brief's ceiling with its overrun",
                    "display-link",
                    "needed: number link.needed-mbit; there is: number link.available-mbit; both"
                            + " of the last screen",
                    "promise",
                    "a rate holds at predicted x e^(-spread x z), a time at predicted x e^(spread"
                            + " x z), z the normal distribution's quantile for the brief's"
                            + " confidence; the tightest must counts",
                    "memory-enough",
                    "needed: what the brief asks or its workloads hold at once, the more, in whole"
                            + " GB",
                    "storage-enough",
                    "needed: what workloads and files of the brief take over its years, in whole"
                            + " GB",
                    "graphics-memory",
                    "needed: the most that any workload wants at its settings, in whole GB, as in"
                            + " the number of its average");

    @Override
    public List<Topic> topics(Assessment it) {
        List<Topic> topics = new ArrayList<>();
        for (Rule rule : Rules.ALL) {
            Finding finding = rule.check(it);
            Optional<Margin> margin = finding.margin();
            if (margin.isPresent()) {
                String name = "margin." + rule.info().id();
                String title = rule.info().title() + ", left over";
                topics.add(
                        new Topic(
                                name,
                                title,
                                () -> explained(it, rule, finding, margin.get(), name, title)));
            }
        }
        return topics;
    }

    private static Explanation explained(
            Assessment it, Rule rule, Finding finding, Margin margin, String name, String title) {
        Derivation how =
                new Derivation(
                        name, title, "what there is - what is needed", rule.info().source().text());
        Currency currency = it.brief().currency();
        Unit unit = margin.unit();
        String symbol = unit == Unit.MINOR_MONEY ? currency.getCurrencyCode() : unit.symbol();
        String from = parts(rule.reads(), it);
        BigDecimal have = amount(margin.have(), unit, currency);
        BigDecimal need = amount(margin.need(), unit, currency);
        how.fact("there is", have, symbol, from);
        how.fact("needed", need, symbol, from);
        Optional.ofNullable(WORKED_OUT.get(rule.info().id())).ifPresent(how::remark);
        if (!finding.text().isEmpty()) {
            how.remark(finding.text());
        }
        return how.gives(amount(margin.spare(), unit, currency), symbol, "{} - {}", have, need);
    }

    private static BigDecimal amount(long amount, Unit unit, Currency currency) {
        return unit == Unit.MINOR_MONEY
                ? Money.ofMinor(amount, currency).amount()
                : BigDecimal.valueOf(amount, unit.decimals());
    }

    private static String parts(Set<Slot> reads, Assessment it) {
        List<String> ids = new ArrayList<>();
        it.build()
                .filled()
                .forEach(
                        (slot, part) -> {
                            if (reads.contains(slot)) {
                                ids.add(part.id());
                            }
                        });
        boolean all = reads.size() == Slot.values().length;
        return "brief, and " + (all || ids.isEmpty() ? "all parts" : String.join(", ", ids));
    }
}
