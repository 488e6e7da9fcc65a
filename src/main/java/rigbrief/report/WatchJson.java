package rigbrief.report;

import java.util.List;
import rigbrief.proposal.replace.Change;
import rigbrief.proposal.replace.Watch;
import rigbrief.proposal.replace.Way;
import rigbrief.quantity.Money;

/** A build set against a newer catalogue in JSON, after the contract {@code rigbrief/watch/1}. */
public final class WatchJson implements Report<WatchAnswer> {
    private static final String SCHEMA = "rigbrief/watch/1";
    private static final ReportInfo INFO =
            ReportInfo.json(
                    "watch-json", "a build against a newer catalogue, for other programs", SCHEMA);

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(WatchAnswer answer, Style style) {
        return JsonPage.object(json -> new Writing(json, answer).document());
    }

    private static final class Writing {
        private final JsonPage json;
        private final WatchAnswer answer;
        private final Watch it;

        Writing(JsonPage json, WatchAnswer answer) {
            this.json = json;
            this.answer = answer;
            this.it = answer.watch();
        }

        void document() {
            json.field("schema", SCHEMA)
                    .field("build", answer.name())
                    .field("brief", it.brief().name())
                    .field("currency", it.brief().currency().getCurrencyCode())
                    .field("machines", it.brief().quantity());
            CatalogueJson.write(json, it.today());
            json.field("result", result()).field("planned", money(it.plannedMinor()));
            if (it.todayMinor().isPresent()) {
                json.field("today", money(it.todayMinor().get()));
            } else {
                json.nothing("today");
            }
            json.list("parts", it.lines(), this::line)
                    .texts(
                            "order-first",
                            it.orderFirst().stream().map(line -> line.part().id()).toList())
                    .list("has-to-change", hasToChange(), this::change)
                    .texts("why", it.repair().map(repair -> repair.why()).orElse(List.of()))
                    .texts("remarks", it.remarks());
        }

        private String result() {
            if (it.fails()) {
                return "impossible";
            }
            return it.repair().isPresent() ? "has-to-change" : "stands";
        }

        private List<Change> hasToChange() {
            return it.repair()
                    .flatMap(repair -> repair.ways().stream().findFirst())
                    .map(Way::changes)
                    .orElse(List.of());
        }

        private void line(Watch.Line line) {
            json.field("slot", line.slot().word())
                    .field("part", line.part().id())
                    .field("quantity", line.pieces())
                    .field("to-buy", line.toBuy())
                    .field("planned", money(line.plannedMinor()));
            if (line.nowMinor().isPresent()) {
                json.field("today", money(line.nowMinor().get()));
            } else {
                json.nothing("today");
            }
            json.field("suppliers", line.suppliers())
                    .field("stock", line.stock())
                    .field("lead-days", line.leadDays())
                    .texts("risks", line.risks().stream().map(Watch.Risk::word).toList());
            if (line.fallback().isPresent()) {
                json.object("fallback", of -> fallback(line.fallback().get()));
            } else {
                json.nothing("fallback");
            }
        }

        private void fallback(Way way) {
            json.list("changed", way.changes(), this::change)
                    .field("extra", money(way.extraMinor()))
                    .field("total", money(way.audit().cost().totalMinor()))
                    .field("nothing-else-changes", way.changes().size() == 1)
                    .field("proven", way.proven());
        }

        private void change(Change change) {
            json.field("slot", change.slot().word());
            if (change.to().isPresent()) {
                json.field("to", change.to().get().id());
            } else {
                json.nothing("to");
            }
            json.field("to-quantity", change.toPieces())
                    .field("extra", money(change.extraMinor()))
                    .field("because", change.because());
        }

        private String money(long minor) {
            return Money.ofMinor(minor, it.brief().currency()).plain();
        }
    }
}
