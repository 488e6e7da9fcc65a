package rigbrief.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.build.HistoryEntry;
import rigbrief.build.OrderMoney;
import rigbrief.build.OrderStatus;
import rigbrief.build.OrderStatus.Action;
import rigbrief.build.OrderStatus.Step;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.quantity.Money;
import rigbrief.wording.Counted;

/** How an order stands, as text. */
public final class OrderText implements Report<OrderAnswer> {
    private static final ReportInfo INFO = ReportInfo.text("order-text", "how an order stands");
    private static final int PART_COLUMNS = 30;
    private static final int WORD_COLUMNS = 12;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(OrderAnswer answer, Style style) {
        TextPage page = new TextPage(style);
        answer.moved().ifPresent(move -> page.paragraph(0, done(move, answer)).blank());
        page.paragraph(0, head(answer));
        page.section("Parts").table(parts(answer));
        steps(page, answer);
        money(page, answer.status().money());
        page.section("Machines").paragraph(2, machines(answer)).paragraph(2, stock(answer));
        return page.toString();
    }

    private static String done(HistoryEntry.Move move, OrderAnswer answer) {
        String what = "%s of %s".formatted(Counted.of(move.count(), "unit"), move.part());
        if (move.from() == move.to()) {
            return "Noted on %s for %s, %s.".formatted(move.date(), what, move.to().word());
        }
        return "%s on %s: %s, until then %s."
                .formatted(capital(move.to().word()), move.date(), what, move.from().word());
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private static String head(OrderAnswer answer) {
        var record = answer.status().record();
        return "Order of \"%s\"%s: %s%s."
                .formatted(
                        answer.name(),
                        record.brief().map(brief -> " for " + brief.client()).orElse(""),
                        Counted.of(record.machines(), "machine"),
                        record.tier().map(tier -> ", tier " + tier).orElse(""));
    }

    private static TextTable parts(OrderAnswer answer) {
        TextTable table =
                new TextTable()
                        .left("slot", WORD_COLUMNS)
                        .left("part", PART_COLUMNS)
                        .right("units")
                        .left("state", WORD_COLUMNS)
                        .left("since", WORD_COLUMNS)
                        .right("each");
        for (OrderStatus.Line line : answer.status().lines()) {
            String slot = line.slot().word();
            String name = line.aside() ? line.name() + " (set aside)" : line.name();
            for (Units units : line.units()) {
                table.row(
                        slot,
                        name,
                        Integer.toString(units.count()),
                        units.state().word(),
                        units.since().map(LocalDate::toString).orElse("-"),
                        each(line, units));
                slot = "";
                name = "";
            }
        }
        return table;
    }

    /** What was paid; else the planned price, marked as such. */
    private static String each(OrderStatus.Line line, Units units) {
        if (line.kept()) {
            return "own";
        }
        return units.paid().map(Money::grouped).orElse("(" + line.unitPrice().grouped() + ")");
    }

    private static void steps(TextPage page, OrderAnswer answer) {
        page.paragraph(2, "In brackets: planned, not paid.");
        Map<Action, Map<String, List<String>>> steps = new EnumMap<>(Action.class);
        for (Step step : answer.status().steps()) {
            steps.computeIfAbsent(step.action(), any -> new LinkedHashMap<>())
                    .computeIfAbsent(lead(step, answer), any -> new ArrayList<>())
                    .add(what(step));
        }
        page.section("To do");
        if (steps.isEmpty()) {
            page.paragraph(2, "Nothing: every part is fitted.");
        }
        steps.values()
                .forEach(
                        byLead ->
                                byLead.forEach(
                                        (lead, parts) -> {
                                            page.line("  " + lead + ":");
                                            parts.forEach(part -> page.hanging("    ", part));
                                        }));
    }

    private static String lead(Step step, OrderAnswer answer) {
        Optional<String> supplier = step.units().supplier().or(() -> step.line().supplier());
        String from = supplier.map(id -> " from " + answer.supplier(id)).orElse("");
        String to = supplier.map(id -> " to " + answer.supplier(id)).orElse("");
        return switch (step.action()) {
            case SEND_BACK -> "Send back" + (step.line().kept() ? " to the client" : to);
            case CANCEL -> "Cancel, ordered" + from;
            case ORDER -> "Order" + from;
            case FETCH -> "Fetch from the client";
            case AWAIT -> "Wait for delivery" + from;
            case CLAIM -> "Claim money" + from;
            case FIT -> "Fit";
        };
    }

    private static String what(Step step) {
        String counted =
                (step.units().count() > 1 ? step.units().count() + " x " : "") + step.line().name();
        return switch (step.action()) {
            case SEND_BACK ->
                    counted
                            + (step.units().state() == PartState.FAULTY
                                    ? " (faulty)"
                                    : " (set aside)");
            case ORDER -> counted + " at " + step.line().unitPrice().grouped();
            case AWAIT -> counted + step.due().map(day -> ", due " + day).orElse("");
            case CLAIM -> counted + ", " + step.units().paid().orElseThrow().grouped() + " each";
            case CANCEL, FETCH, FIT -> counted;
        };
    }

    private static void money(TextPage page, OrderMoney money) {
        String currency = money.planned().currency().getCurrencyCode();
        TextTable table = new TextTable().left("parts alone", PART_COLUMNS).right(currency);
        table.row("planned", money.planned().grouped())
                .row("to spend: wanted still", money.toSpend().grouped())
                .row("owed: ordered, not paid", money.owed().grouped())
                .row("paid", money.paid().grouped())
                .row("refunded", money.refunded().grouped())
                .row("to come back", money.toComeBack().grouped());
        page.section("Money").table(table);
    }

    private static String machines(OrderAnswer answer) {
        OrderStatus status = answer.status();
        int all = status.record().machines();
        if (all == 1) {
            return status.fitted() == 1
                    ? "Every part is fitted."
                    : status.here() == 1 ? "Every part is here." : "Not every part is here yet.";
        }
        return "Of %d machines, %d %s every part fitted and %d every part here."
                .formatted(
                        all, status.fitted(), status.fitted() == 1 ? "has" : "have", status.here());
    }

    private static String stock(OrderAnswer answer) {
        return BuildableWords.of(answer.buildable());
    }
}
