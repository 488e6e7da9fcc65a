package rigbrief.report;

import java.util.Locale;
import java.util.Optional;
import rigbrief.catalogue.Offer;
import rigbrief.pricelist.ImportPlan;
import rigbrief.pricelist.Match;
import rigbrief.pricelist.OfferChange;
import rigbrief.pricelist.PriceRow;
import rigbrief.pricelist.Suspicion;
import rigbrief.pricelist.Unmatched;

/** What a price list changes, in JSON, after the contract {@code rigbrief/import/1}. */
public final class ImportJson implements Report<ImportAnswer> {
    private static final String SCHEMA = "rigbrief/import/1";
    private static final ReportInfo INFO =
            ReportInfo.json("import-json", "what a price list changes for other programs", SCHEMA);

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(ImportAnswer answer, Style style) {
        return JsonPage.object(json -> document(json, answer));
    }

    private static void document(JsonPage json, ImportAnswer answer) {
        ImportPlan plan = answer.plan();
        json.field("schema", SCHEMA)
                .field("price-list", answer.name())
                .field("supplier", plan.list().supplier())
                .field("currency", answer.catalogue().currency().getCurrencyCode());
        CatalogueJson.write(json, answer.catalogue());
        json.field("outcome", answer.outcome().word())
                .field("rows", plan.list().rows().size())
                .field("rows-without-price", plan.list().withoutPrice())
                .field("recorded", answer.recorded())
                .list("matched", plan.matches(), match -> match(json, match))
                .list("changes", plan.changes(), change -> change(json, change))
                .list("unmatched", plan.unmatched(), row -> unmatched(json, row))
                .list("suspicious", plan.suspicions(), it -> suspicion(json, it))
                .texts("unlisted", plan.unlisted().stream().map(Offer::part).toList());
    }

    private static void match(JsonPage json, Match match) {
        json.field("line", match.row().line())
                .field("part", match.part().id())
                .field("by", word(match.by()));
    }

    private static void change(JsonPage json, OfferChange change) {
        json.field("part", change.part().id());
        text(json, "price-before", change.before().map(offer -> offer.price().plain()));
        json.field("price", change.after().price().plain())
                .field("change-percent", change.percent())
                .field("stock", change.after().stock())
                .field("lead-days", change.after().leadDays())
                .field("as-of", change.after().asOf().toString());
    }

    private static void unmatched(JsonPage json, Unmatched it) {
        row(json, it.row());
        json.list(
                "suggestions",
                it.suggestions(),
                suggestion ->
                        json.field("part", suggestion.part().id())
                                .field("percent", suggestion.percent()));
    }

    private static void suspicion(JsonPage json, Suspicion it) {
        row(json, it.row());
        text(json, "part", it.part().map(part -> part.id()));
        json.field("kind", word(it.kind())).field("text", it.text());
    }

    private static void row(JsonPage json, PriceRow row) {
        json.field("line", row.line())
                .field("name", row.name())
                .field("price", row.price().plain());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void text(JsonPage json, String name, Optional<String> value) {
        value.ifPresentOrElse(text -> json.field(name, text), () -> json.nothing(name));
    }
}
