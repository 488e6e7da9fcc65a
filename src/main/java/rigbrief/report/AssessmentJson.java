package rigbrief.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Climate;
import rigbrief.assess.Cost;
import rigbrief.assess.Power;
import rigbrief.audit.Audit;
import rigbrief.audit.Audit.Figures;
import rigbrief.audit.AuditFinding;
import rigbrief.audit.MarginLine;
import rigbrief.brief.Brief;
import rigbrief.part.Slot;
import rigbrief.proposal.PartReason;
import rigbrief.quantity.Money;
import rigbrief.quantity.Unit;
import rigbrief.rule.Margin;

/** What proposals and audits have in common, in JSON: the assessment of a build. */
final class AssessmentJson {
    private final JsonPage json;
    private final Brief brief;

    AssessmentJson(JsonPage json, Brief brief) {
        this.json = json;
        this.brief = brief;
    }

    /** Parts, cost, utility, goals, needs, power, heat, noise and findings of one build. */
    void fields(Audit audit, List<PartReason> reasons) {
        json.list("parts", PartRow.of(audit, reasons), this::part);
        json.object("cost", to -> cost(audit.cost()));
        if (audit.figures().isPresent()) {
            json.field("utility", GoalShare.utility(audit));
            json.list("goals", GoalShare.of(audit), this::goal);
        } else {
            json.nothing("utility").texts("goals", List.of());
        }
        json.list("needs", needs(audit), this::need);
        figures(audit);
        json.list("findings", audit.findings(), this::finding);
        json.list("margins", audit.margins(), this::margin);
    }

    private List<NeedLine> needs(Audit audit) {
        return audit.figures().isPresent() ? NeedLine.of(brief, audit) : List.of();
    }

    private void part(PartRow row) {
        json.field("slot", row.slot().word())
                .field("part", row.part().id())
                .field("name", row.part().name())
                .field("quantity", row.pieces())
                .field("kept", row.kept());
        if (row.bought().isPresent()) {
            Cost.Line line = row.bought().get();
            json.field("supplier", line.supplier())
                    .field("unit-price", money(line.unitMinor()))
                    .field("lead-days", line.leadDays());
        } else {
            json.nothing("supplier");
            if (row.kept()) {
                json.field("unit-price", money(0));
            } else {
                json.nothing("unit-price");
            }
            json.nothing("lead-days");
        }
        json.field("reason", row.reason());
    }

    private void cost(Cost cost) {
        json.field("parts", money(cost.partsMinor()))
                .field("delivery", money(cost.deliveryMinor()))
                .field("fees", money(cost.feesMinor()))
                .field("tax", money(cost.taxMinor()))
                .field("total", money(cost.totalMinor()))
                .texts("unavailable", cost.unavailable().stream().map(Slot::word).toList());
    }

    private void goal(GoalShare share) {
        json.field("goal", share.score().goal())
                .field("weight", share.score().weight())
                .field("utility", share.utility())
                .field("contribution", share.contribution())
                .field("because", share.score().because());
    }

    private void need(NeedLine need) {
        json.field("need", need.need())
                .field("kind", need.kind())
                .field("promised", need.promised())
                .field("low", need.low())
                .field("high", need.high())
                .field("required", need.required())
                .field("unit", need.unit())
                .field("chance", chance(need))
                .field("met", need.met());
    }

    private static Optional<BigDecimal> chance(NeedLine need) {
        return need.chance().isPresent()
                ? Rounded.to(4, need.chance().getAsDouble())
                : Optional.empty();
    }

    private void figures(Audit audit) {
        if (audit.figures().isEmpty()) {
            json.nothing("power").nothing("heat").nothing("noise");
            return;
        }
        Figures figures = audit.figures().get();
        json.object("power", of -> power(figures.power()));
        json.object("heat", of -> heat(figures, audit.build().has(Slot.GRAPHICS)));
        json.object("noise", of -> noise(figures));
    }

    private void power(Power power) {
        json.field("sustained-w", Rounded.to(1, power.sustainedW()))
                .field("peak-w", Rounded.to(1, power.peakW()))
                .field("load-w", Rounded.to(1, power.loadW()))
                .field("idle-w", Rounded.to(1, power.idleW()))
                .field("wall-w", Rounded.to(1, power.wallW()))
                .field("wall-idle-w", Rounded.to(1, power.wallIdleW()))
                .field("supply-share", Rounded.to(4, power.supplyShare()))
                .field("kwh-per-year", Rounded.to(1, power.kwhPerYear()));
    }

    private void heat(Figures figures, boolean card) {
        heat("", figures.load(), card);
        heat("full-", figures.full(), card);
    }

    private void heat(String state, Climate climate, boolean card) {
        json.field(state + "processor-c", Rounded.to(1, climate.processorC()))
                .field(
                        state + "graphics-c",
                        card ? Rounded.to(1, climate.graphicsC()) : Optional.empty())
                .field(state + "case-rise-k", Rounded.to(1, climate.caseRiseK()));
    }

    private void noise(Figures figures) {
        json.field("idle-dba", Rounded.to(1, figures.idle().levelDba()))
                .field("load-dba", Rounded.to(1, figures.load().levelDba()))
                .field("full-dba", Rounded.to(1, figures.full().levelDba()));
    }

    private void finding(AuditFinding finding) {
        json.field("rule", finding.rule())
                .field("level", Printed.level(finding))
                .field("text", finding.text())
                .texts("parts", finding.parts())
                .field("title", finding.title())
                .field("source", finding.source());
        if (finding.level() == AuditFinding.Level.BREACH) {
            amount("excess", finding.excess(), finding.unit());
            json.field("unit", Printed.unit(finding.unit(), brief.currency()));
        }
    }

    private void margin(MarginLine line) {
        Margin margin = line.margin();
        json.field("rule", line.rule());
        amount("have", margin.have(), margin.unit());
        amount("need", margin.need(), margin.unit());
        amount("spare", margin.spare(), margin.unit());
        json.field("unit", Printed.unit(margin.unit(), brief.currency()))
                .field("tight", Printed.tight(margin));
    }

    /** A number; money is a text, as everywhere. */
    private void amount(String name, long amount, Unit unit) {
        BigDecimal number = Printed.number(amount, unit, brief.currency());
        if (unit == Unit.MINOR_MONEY) {
            json.field(name, number.toPlainString());
        } else {
            json.field(name, number);
        }
    }

    private String money(long minor) {
        return Money.ofMinor(minor, brief.currency()).plain();
    }
}
