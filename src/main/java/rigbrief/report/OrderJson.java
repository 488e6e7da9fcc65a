package rigbrief.report;

import java.time.LocalDate;
import java.util.Optional;
import rigbrief.build.HistoryEntry;
import rigbrief.build.OrderMoney;
import rigbrief.build.OrderStatus;
import rigbrief.build.Units;
import rigbrief.quantity.Money;

/** How an order stands, in JSON, after the contract {@code rigbrief/order/1}. */
public final class OrderJson implements Report<OrderAnswer> {
    private static final String SCHEMA = "rigbrief/order/1";
    private static final ReportInfo INFO =
            ReportInfo.json("order-json", "how an order stands for other programs", SCHEMA);

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(OrderAnswer answer, Style style) {
        return JsonPage.object(json -> document(json, answer));
    }

    private static void document(JsonPage json, OrderAnswer answer) {
        OrderStatus status = answer.status();
        json.field("schema", SCHEMA)
                .field("build", answer.name())
                .field("currency", answer.catalogue().currency().getCurrencyCode());
        CatalogueJson.write(json, answer.catalogue());
        text(json, "client", status.record().brief().map(brief -> brief.client()));
        text(json, "tier", status.record().tier());
        answer.moved()
                .ifPresentOrElse(
                        move -> json.object("moved", of -> entry(of, move)),
                        () -> json.nothing("moved"));
        json.list("parts", status.lines(), line -> line(json, line))
                .list("to-do", status.steps(), step -> step(json, step))
                .object("money", of -> money(of, status.money()))
                .object(
                        "machines",
                        of ->
                                of.field("wanted", status.record().machines())
                                        .field("fitted", status.fitted())
                                        .field("every-part-here", status.here()));
        BuildableJson.write(json, answer.buildable());
        json.list("history", status.record().history(), entry -> entry(json, entry));
    }

    private static void line(JsonPage json, OrderStatus.Line line) {
        json.field("slot", line.slot().word())
                .field("part", line.part())
                .field("name", line.name())
                .field("kept", line.kept())
                .field("set-aside", line.aside())
                .field("unit-price", line.unitPrice().plain());
        text(json, "supplier", line.supplier());
        json.list("units", line.units(), units -> units(json, units));
    }

    private static void units(JsonPage json, Units units) {
        json.field("count", units.count()).field("state", units.state().word());
        text(json, "since", units.since().map(LocalDate::toString));
        text(json, "supplier", units.supplier());
        text(json, "paid", units.paid().map(Money::plain));
        text(json, "refunded", units.refunded().map(Money::plain));
    }

    private static void step(JsonPage json, OrderStatus.Step step) {
        json.field("do", ActionWord.of(step.action()))
                .field("slot", step.line().slot().word())
                .field("part", step.line().part())
                .field("set-aside", step.line().aside())
                .field("units", step.units().count());
        text(json, "supplier", step.units().supplier().or(() -> step.line().supplier()));
        text(json, "due", step.due().map(LocalDate::toString));
    }

    private static void money(JsonPage json, OrderMoney money) {
        json.field("planned", money.planned().plain())
                .field("to-spend", money.toSpend().plain())
                .field("owed", money.owed().plain())
                .field("paid", money.paid().plain())
                .field("refunded", money.refunded().plain())
                .field("to-come-back", money.toComeBack().plain());
    }

    private static void entry(JsonPage json, HistoryEntry entry) {
        json.field("date", entry.date().toString());
        text(json, "by", entry.by());
        json.field("slot", entry.slot().word());
        if (entry instanceof HistoryEntry.Move move) {
            json.field("part", move.part())
                    .field("units", move.count())
                    .field("from", move.from().word())
                    .field("to", move.to().word());
            text(json, "supplier", move.supplier());
            text(json, "paid", move.paid().map(Money::plain));
            text(json, "refunded", move.refunded().map(Money::plain));
        } else if (entry instanceof HistoryEntry.Swap swap) {
            text(json, "from-part", swap.fromPart());
            text(json, "to-part", swap.toPart());
        }
        text(json, "note", entry.note());
    }

    private static void text(JsonPage json, String name, Optional<String> value) {
        value.ifPresentOrElse(text -> json.field(name, text), () -> json.nothing(name));
    }
}
