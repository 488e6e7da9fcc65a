package rigbrief.report;

import java.util.List;
import rigbrief.build.BuildLine;
import rigbrief.proposal.replace.Change;
import rigbrief.proposal.replace.Replacement;
import rigbrief.proposal.replace.Way;
import rigbrief.quantity.Money;

/** A replacement in JSON, after the contract {@code rigbrief/replacement/1}. */
public final class ReplacementJson implements Report<ReplacementAnswer> {
    private static final String SCHEMA = "rigbrief/replacement/1";
    private static final ReportInfo INFO =
            ReportInfo.json("replacement-json", "a replacement for other programs", SCHEMA);

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(ReplacementAnswer answer, Style style) {
        return JsonPage.object(json -> new Writing(json, answer).document());
    }

    private static final class Writing {
        private final JsonPage json;
        private final ReplacementAnswer answer;
        private final Replacement it;
        private final AssessmentJson assessment;

        Writing(JsonPage json, ReplacementAnswer answer) {
            this.json = json;
            this.answer = answer;
            this.it = answer.replacement();
            this.assessment = new AssessmentJson(json, it.brief());
        }

        void document() {
            json.field("schema", SCHEMA)
                    .field("build", answer.name())
                    .field("brief", it.brief().name())
                    .field("currency", it.brief().currency().getCurrencyCode())
                    .field("machines", it.brief().quantity());
            CatalogueJson.write(json, it.catalogue());
            json.object("trouble", of -> trouble()).field("result", result());
            if (it.impossible()) {
                json.nothing("way")
                        .texts("kept", List.of())
                        .texts("changed", List.of())
                        .nothing("extra")
                        .nothing("refund")
                        .nothing("proposal");
            } else {
                way(it.ways().get(0));
            }
            json.list("others", others(), this::way)
                    .field("proven", it.proven())
                    .texts("why", it.why())
                    .texts("remarks", it.remarks())
                    .field("sets", it.sets())
                    .field("steps", it.steps());
        }

        private List<Way> others() {
            return it.impossible() ? List.of() : it.ways().subList(1, it.ways().size());
        }

        private String result() {
            if (it.impossible()) {
                return "impossible";
            }
            return it.nothingToDo() ? "unchanged" : "replaced";
        }

        private void trouble() {
            json.texts("unavailable", it.trouble().unavailable())
                    .texts("faulty", it.trouble().faulty())
                    .list(
                            "prices",
                            List.copyOf(it.trouble().prices().keySet()),
                            part ->
                                    json.field("part", part)
                                            .field(
                                                    "price",
                                                    it.trouble().prices().get(part).plain()));
        }

        private void way(Way way) {
            json.field("way", way.aim().word())
                    .list("kept", kept(way), this::kept)
                    .list("changed", way.changes(), this::change)
                    .field("extra", money(way.extraMinor()))
                    .object("extra-of", of -> extra(way))
                    .field("refund", money(way.refundMinor()))
                    .field("lost", money(way.lostMinor()))
                    .field("lead-days", way.longestLeadDays())
                    .field("here-by", way.here().toString())
                    .field("work-minutes", way.workMinutes())
                    .texts("work", way.work())
                    .object(
                            "proof",
                            of -> json.field("proven", way.proven()).field("text", way.proof()))
                    .object("proposal", of -> assessment.fields(way.audit(), List.of()));
        }

        private void extra(Way way) {
            long parts = 0;
            for (Change change : way.changes()) {
                parts += change.extraMinor();
            }
            json.field("changed", money(parts))
                    .field("staying", money(way.stayingMinor()))
                    .field("delivery", money(way.deliveryMinor()))
                    .field(
                            "tax",
                            money(
                                    way.extraMinor()
                                            - parts
                                            - way.stayingMinor()
                                            - way.deliveryMinor()));
        }

        private List<BuildLine> kept(Way way) {
            return way.record().lines().stream()
                    .filter(
                            line ->
                                    way.changes().stream()
                                            .noneMatch(change -> change.slot() == line.slot()))
                    .toList();
        }

        private void kept(BuildLine line) {
            json.field("slot", line.slot().word())
                    .field("part", line.part().id())
                    .field("quantity", line.pieces())
                    .field("state", line.state().word());
            text("supplier", line.supplier().orElse(null));
            json.field("unit-price", line.unitPrice().plain());
        }

        private void change(Change change) {
            json.field("slot", change.slot().word());
            text("from", change.from().map(part -> part.id()).orElse(null));
            json.field("from-quantity", change.fromPieces());
            text("to", change.to().map(part -> part.id()).orElse(null));
            json.field("to-quantity", change.toPieces())
                    .field("to-order", change.units())
                    .field("extra", money(change.extraMinor()))
                    .field("needed", change.needed())
                    .field("because", change.because());
        }

        private void text(String name, String value) {
            if (value == null) {
                json.nothing(name);
            } else {
                json.field(name, value);
            }
        }

        private String money(long minor) {
            return Money.ofMinor(minor, it.brief().currency()).plain();
        }
    }
}
