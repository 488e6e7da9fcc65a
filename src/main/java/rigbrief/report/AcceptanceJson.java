package rigbrief.report;

import java.util.Locale;
import rigbrief.measurement.accept.Acceptance;
import rigbrief.measurement.accept.JudgedLine;
import rigbrief.measurement.accept.RankedCause;
import rigbrief.measurement.accept.RankedCause.Effect;

/** A judged acceptance test in JSON, after the contract {@code rigbrief/acceptance/1}. */
public final class AcceptanceJson implements Report<AcceptanceAnswer> {
    private static final String SCHEMA = "rigbrief/acceptance/1";
    private static final ReportInfo INFO =
            ReportInfo.json(
                    "acceptance-json", "a judged acceptance test for other programs", SCHEMA);
    private static final int FIGURE_DECIMALS = 2;
    private static final int SHARE_DECIMALS = 4;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(AcceptanceAnswer answer, Style style) {
        return JsonPage.object(json -> document(json, answer));
    }

    private static void document(JsonPage json, AcceptanceAnswer answer) {
        Acceptance test = answer.acceptance();
        json.field("schema", SCHEMA)
                .field("build", answer.name())
                .field("brief", test.brief().name());
        CatalogueJson.write(json, answer.catalogue());
        json.field("verdict", test.kept() ? "kept" : "broken")
                .list("lines", test.lines(), judged -> judged(json, judged))
                .list("causes", test.causes(), ranked -> cause(json, ranked));
    }

    private static void judged(JsonPage json, JudgedLine judged) {
        SheetJson.fields(json, judged.line());
        if (judged.measured().isPresent()) {
            json.field("measured", Rounded.to(FIGURE_DECIMALS, judged.measured().getAsDouble()));
        } else {
            json.nothing("measured");
        }
        json.field("verdict", judged.verdict().name().toLowerCase(Locale.ROOT));
    }

    private static void cause(JsonPage json, RankedCause ranked) {
        json.field("cause", ranked.cause().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .field("title", ranked.cause().title())
                .field("strength", ranked.strength())
                .field("share", Rounded.to(SHARE_DECIMALS, ranked.share()))
                .field("advice", ranked.cause().advice())
                .list("effects", ranked.effects(), effect -> effect(json, effect));
    }

    private static void effect(JsonPage json, Effect effect) {
        json.field("what", effect.what())
                .field("unit", effect.unit().symbol())
                .field("planned", Rounded.to(FIGURE_DECIMALS, effect.planned()))
                .field("then", Rounded.to(FIGURE_DECIMALS, effect.then()))
                .field("measured", Rounded.to(FIGURE_DECIMALS, effect.measured()));
    }
}
