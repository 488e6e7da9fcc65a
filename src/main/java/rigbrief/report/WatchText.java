package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import rigbrief.proposal.replace.Change;
import rigbrief.proposal.replace.Replacement;
import rigbrief.proposal.replace.Watch;
import rigbrief.proposal.replace.Way;
import rigbrief.quantity.Money;
import rigbrief.wording.Counted;

/** A build set against a newer catalogue, in plain text, 80 columns wide. */
public final class WatchText implements Report<WatchAnswer> {
    private static final ReportInfo INFO =
            ReportInfo.text("watch-text", "a build against a newer catalogue, for people");
    private static final int SLOT_COLUMNS = 12;
    private static final int PART_COLUMNS = 26;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(WatchAnswer answer, Style style) {
        TextPage page = new TextPage(style);
        new Writing(page, answer).document();
        return page.toString();
    }

    private static final class Writing {
        private final TextPage page;
        private final WatchAnswer answer;
        private final Watch it;

        Writing(TextPage page, WatchAnswer answer) {
            this.page = page;
            this.answer = answer;
            this.it = answer.watch();
        }

        void document() {
            page.paragraph(
                    0,
                    "Build \"%s\" for %s, set against catalogue \"%s\" of %s."
                            .formatted(
                                    answer.name(),
                                    it.brief().client(),
                                    it.today().name(),
                                    it.today().asOf()));
            page.paragraph(0, total());
            it.repair().ifPresent(this::repair);
            orderFirst();
            lines();
            fallbacks();
            if (!it.remarks().isEmpty()) {
                page.section("Remarks");
            }
            it.remarks().forEach(remark -> page.hanging("  - ", remark));
            page.blank();
        }

        private String total() {
            return "Planned %s all in; today %s."
                    .formatted(
                            money(it.plannedMinor()),
                            it.todayMinor()
                                    .map(
                                            minor ->
                                                    money(minor)
                                                            + " ("
                                                            + signed(minor - it.plannedMinor())
                                                            + ")")
                                    .orElse("it can't be had"));
        }

        private void repair(Replacement repair) {
            page.section("Has to change already");
            if (repair.impossible()) {
                repair.why().forEach(words -> page.paragraph(2, words));
                return;
            }
            changes(repair.ways().get(0)).forEach(words -> page.hanging("  - ", words));
        }

        private List<String> changes(Way way) {
            List<String> words = new ArrayList<>();
            for (Change change : way.changes()) {
                words.add(
                        "%s: %s, %s. %s."
                                .formatted(
                                        change.slot().word(),
                                        to(change),
                                        signed(change.extraMinor()),
                                        change.because()));
            }
            return words;
        }

        private static String to(Change change) {
            return change.to()
                    .map(
                            part ->
                                    (change.toPieces() > 1 ? change.toPieces() + " x " : "")
                                            + part.name())
                    .orElse("left empty");
        }

        private void orderFirst() {
            page.section("Order first");
            List<Watch.Line> first = it.orderFirst();
            if (first.isEmpty()) {
                page.paragraph(2, "Nothing is in a hurry.");
            }
            int number = 1;
            for (Watch.Line line : first) {
                page.hanging(
                        "  %2d. ".formatted(number++),
                        "%s: %s.".formatted(line.part().name(), reasons(line)));
            }
        }

        private static String reasons(Watch.Line line) {
            StringJoiner reasons = new StringJoiner(", ");
            for (Watch.Risk risk : line.risks()) {
                switch (risk) {
                    case LOW_STOCK ->
                            reasons.add(
                                    "no supplier has more than %d, %d wanted"
                                            .formatted(line.stock(), line.toBuy()));
                    case SINGLE_OFFER -> reasons.add("only one supplier has it");
                    case LONG_LEAD -> reasons.add("it takes " + Counted.of(line.leadDays(), "day"));
                    default -> reasons.add(risk.word());
                }
            }
            return reasons.toString();
        }

        private void lines() {
            page.section("Parts");
            TextTable table =
                    new TextTable()
                            .left("slot", SLOT_COLUMNS)
                            .left("part", PART_COLUMNS)
                            .right("planned")
                            .right("today")
                            .right("stock")
                            .right("days")
                            .left("at risk", SLOT_COLUMNS);
            for (Watch.Line line : it.lines()) {
                boolean buys = line.toBuy() > 0;
                table.row(
                        line.slot().word(),
                        (line.pieces() > 1 ? line.pieces() + " x " : "") + line.part().name(),
                        amount(line.plannedMinor()),
                        line.nowMinor().map(this::amount).orElse("-"),
                        buys ? Integer.toString(line.stock()) : "-",
                        buys && line.suppliers() > 0 ? Integer.toString(line.leadDays()) : "-",
                        buys ? risks(line) : "ordered or here");
            }
            page.table(table);
        }

        private static String risks(Watch.Line line) {
            StringJoiner words = new StringJoiner(", ");
            line.risks().forEach(risk -> words.add(risk.word()));
            return words.toString();
        }

        private void fallbacks() {
            List<Watch.Line> asked =
                    it.lines().stream()
                            .filter(line -> line.toBuy() > 0 && line.suppliers() > 0)
                            .toList();
            if (!asked.isEmpty()) {
                page.section("If one of them sells out");
            }
            for (Watch.Line line : asked) {
                page.hanging("  " + line.slot().word() + ": ", fallback(line.fallback()));
            }
        }

        private String fallback(Optional<Way> fallback) {
            if (fallback.isEmpty()) {
                return "nothing keeps every must without it.";
            }
            Way way = fallback.get();
            StringJoiner words = new StringJoiner(", and ");
            way.changes()
                    .forEach(
                            change ->
                                    words.add(
                                            words.length() == 0
                                                    ? to(change)
                                                    : change.slot().word() + " " + to(change)));
            return "%s, %s%s."
                    .formatted(
                            words,
                            signed(way.extraMinor()),
                            way.changes().size() == 1 ? ", nothing else changes" : "");
        }

        private String money(long minor) {
            return Money.ofMinor(minor, it.brief().currency()).toString();
        }

        private String amount(long minor) {
            return Money.ofMinor(minor, it.brief().currency()).grouped();
        }

        private String signed(long minor) {
            return (minor >= 0 ? "+" : "") + amount(minor);
        }
    }
}
