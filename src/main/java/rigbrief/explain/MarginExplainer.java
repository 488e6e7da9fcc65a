package rigbrief.explain;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.quantity.Money;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Margin;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/** Explains what each rule leaves over: what there is, what is needed, and how both came about. */
final class MarginExplainer implements Explainer {
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
        BigDecimal have = amount(margin.have(), unit, currency);
        BigDecimal need = amount(margin.need(), unit, currency);
        if (!new MarginSides(how, it, have, need, symbol).of(rule.info().id())) {
            throw new IllegalStateException(
                    "found a margin of %s, expected one of the rules in MarginSides; add it there"
                            .formatted(rule.info().id()));
        }
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
}
