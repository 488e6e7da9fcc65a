package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Climate;
import rigbrief.assess.Cost;
import rigbrief.assess.Power;
import rigbrief.audit.Audit;
import rigbrief.audit.Audit.Figures;
import rigbrief.audit.AuditFinding;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Slot;
import rigbrief.proposal.PartReason;
import rigbrief.quantity.Money;
import rigbrief.quantity.Unit;
import rigbrief.wording.Counted;

/** What proposals and audits have in common, in text: the assessment of a build. */
final class AssessmentText {
    private static final int SLOT_COLUMNS = 12;
    private static final int PART_COLUMNS = 30;
    private static final int SUPPLIER_COLUMNS = 22;
    private static final int NEED_COLUMNS = 30;
    private static final int BECAUSE_COLUMNS = 32;

    private final TextPage page;
    private final Brief brief;
    private final Catalogue catalogue;

    AssessmentText(TextPage page, Brief brief, Catalogue catalogue) {
        this.page = page;
        this.brief = brief;
        this.catalogue = catalogue;
    }

    /** The parts, with the reason under each, and what they cost together. */
    void parts(Audit audit, List<PartReason> reasons) {
        page.section(brief.quantity() > 1 ? "Parts of one machine" : "Parts");
        TextTable table =
                new TextTable()
                        .left("slot", SLOT_COLUMNS)
                        .left("part", PART_COLUMNS)
                        .left("supplier", SUPPLIER_COLUMNS)
                        .right("price");
        for (PartRow row : PartRow.of(audit, reasons)) {
            table.remarked(row.reason(), row.slot().word(), row.name(), supplier(row), price(row));
        }
        page.table(table);
        cost(audit.cost());
    }

    private String supplier(PartRow row) {
        if (row.bought().isEmpty()) {
            return row.kept() ? "kept" : "no offer";
        }
        String id = row.bought().get().supplier();
        return catalogue.suppliers().stream()
                .filter(supplier -> supplier.id().equals(id))
                .map(Supplier::name)
                .findFirst()
                .orElse(id);
    }

    private String price(PartRow row) {
        Optional<Cost.Line> line = row.bought();
        return line.map(bought -> money(bought.unitMinor() * bought.pieces())).orElse("-");
    }

    private void cost(Cost cost) {
        List<String> terms = new ArrayList<>();
        terms.add("parts " + money(cost.partsMinor()));
        terms.add("delivery " + money(cost.deliveryMinor()));
        addTerm(terms, "fees ", cost.feesMinor());
        addTerm(terms, "tax ", cost.taxMinor());
        String machines = brief.quantity() > 1 ? " for " + brief.quantity() + " machines" : "";
        page.blank()
                .hanging(
                        "  Cost: ",
                        "%s = %s%s, from %s, all here within %s."
                                .formatted(
                                        String.join(" + ", terms),
                                        Money.ofMinor(cost.totalMinor(), brief.currency()),
                                        machines,
                                        Counted.of(cost.suppliers(), "supplier"),
                                        Counted.of(cost.longestLeadDays(), "day")));
        if (!cost.unavailable().isEmpty()) {
            page.hanging("        ", "Not counted, as nobody offers them: " + slots(cost) + ".");
        }
    }

    private void addTerm(List<String> terms, String name, long minor) {
        if (minor != 0) {
            terms.add(name + money(minor));
        }
    }

    private static String slots(Cost cost) {
        return String.join(", ", cost.unavailable().stream().map(Slot::word).toList());
    }

    /** The measured needs with what is promised; nothing when the brief measures none. */
    void needs(Audit audit) {
        TextTable table =
                new TextTable()
                        .left("need", NEED_COLUMNS)
                        .right("asked")
                        .right("promised")
                        .right("range")
                        .right("chance");
        for (NeedLine need : NeedLine.of(brief, audit)) {
            table.row(need.title(), asked(need), promised(need), range(need), chance(need));
        }
        if (!table.isEmpty()) {
            page.section("Needs");
            page.table(table);
            page.paragraph(
                    2,
                    "Range: where a measurement falls in "
                            + brief.confidencePercent()
                            + " of 100 machines. Chance: that it meets what was asked."
                            + " A star: not met with that confidence.");
        }
    }

    private static String asked(NeedLine need) {
        String asked = need.required().toPlainString() + " " + need.unit();
        return (need.must() ? "must " : "wish ") + (need.atMost() ? "<= " : ">= ") + asked;
    }

    private static String promised(NeedLine need) {
        return need.promised().map(number -> number.toPlainString()).orElse("not at all")
                + (need.met() ? "" : " *");
    }

    private static String range(NeedLine need) {
        if (need.low().isEmpty() || need.high().isEmpty() || need.low().equals(need.high())) {
            return "-";
        }
        return need.low().get().toPlainString() + ".." + need.high().get().toPlainString();
    }

    private static String chance(NeedLine need) {
        return need.chance().isPresent() && !range(need).equals("-")
                ? Rounded.chance(need.chance().getAsDouble())
                : "-";
    }

    /** The goals and the utility they add up to. */
    void score(Audit audit) {
        page.section("Score");
        TextTable table =
                new TextTable()
                        .left("goal", SLOT_COLUMNS)
                        .right("weight")
                        .right("utility")
                        .right("share")
                        .left("because", BECAUSE_COLUMNS);
        for (GoalShare share : GoalShare.of(audit)) {
            table.row(
                    share.score().goal(),
                    Integer.toString(share.score().weight()),
                    share.utility().toPlainString(),
                    share.contribution().toPlainString(),
                    share.score().because());
        }
        table.row("all", "", "", GoalShare.utility(audit).toPlainString(), "");
        page.table(table);
    }

    /** Power, heat and noise. */
    void figures(Audit audit) {
        Figures figures = audit.figures().orElseThrow();
        page.section("Power, heat, noise");
        Power power = figures.power();
        page.hanging(
                "  ",
                "%s sustained, %s peak; at the wall %s under load, %s idle; supply %s loaded; %s a year."
                        .formatted(
                                watts(power.sustainedW()),
                                watts(power.peakW()),
                                watts(power.wallW()),
                                watts(power.wallIdleW()),
                                Rounded.print(0, power.supplyShare() * 100, " %"),
                                Rounded.print(0, power.kwhPerYear(), " kWh")));
        boolean card = audit.build().has(Slot.GRAPHICS);
        page.hanging("  ", "Under load: " + heat(figures.load(), card) + ".");
        page.hanging("  ", "Flat out: " + heat(figures.full(), card) + ".");
        page.hanging(
                "  ",
                "At the seat: %s idle, %s under load, %s flat out."
                        .formatted(
                                level(figures.idle()),
                                level(figures.load()),
                                level(figures.full())));
    }

    private static String heat(Climate climate, boolean card) {
        return "processor %s, %scase air %s over the room"
                .formatted(
                        Rounded.print(0, climate.processorC(), " °C"),
                        card ? "card " + Rounded.print(0, climate.graphicsC(), " °C, ") : "",
                        Rounded.print(1, climate.caseRiseK(), " K"));
    }

    private static String watts(double powerW) {
        return Rounded.print(0, powerW, " W");
    }

    private static String level(Climate climate) {
        return Rounded.print(1, climate.levelDba(), " dB(A)");
    }

    /** Remarks of one level; nothing when there are none. */
    void findings(String title, List<AuditFinding> findings, AuditFinding.Level level) {
        List<AuditFinding> chosen =
                findings.stream().filter(finding -> finding.level() == level).toList();
        if (!chosen.isEmpty()) {
            page.section(title);
        }
        for (AuditFinding finding : chosen) {
            page.hanging("  " + finding.rule() + ": ", words(finding));
        }
    }

    /** A breach comes with its size and its source, so that it can be looked up. */
    private String words(AuditFinding finding) {
        String text = finding.text().isEmpty() ? "not so: " + finding.title() : finding.text();
        if (finding.level() != AuditFinding.Level.BREACH) {
            return text;
        }
        String size =
                finding.unit() == Unit.CONDITION
                        ? ""
                        : "by %s: "
                                .formatted(
                                        Printed.amount(
                                                finding.excess(),
                                                finding.unit(),
                                                brief.currency()));
        return size + text + " (" + finding.source() + ")";
    }

    private String money(long minor) {
        return Money.ofMinor(minor, brief.currency()).grouped();
    }
}
