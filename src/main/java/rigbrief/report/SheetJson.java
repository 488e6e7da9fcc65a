package rigbrief.report;

import java.util.List;
import rigbrief.measurement.accept.Sheet.Run;
import rigbrief.measurement.accept.SheetLine;

/** An acceptance sheet in JSON, after the contract {@code rigbrief/sheet/1}. */
public final class SheetJson implements Report<SheetAnswer> {
    private static final String SCHEMA = "rigbrief/sheet/1";
    private static final ReportInfo INFO =
            ReportInfo.json("sheet-json", "an acceptance sheet for other programs", SCHEMA);

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(SheetAnswer answer, Style style) {
        return JsonPage.object(json -> document(json, answer));
    }

    private static void document(JsonPage json, SheetAnswer answer) {
        json.field("schema", SCHEMA)
                .field("build", answer.name())
                .field("brief", answer.brief().name())
                .field("client", answer.brief().client());
        CatalogueJson.write(json, answer.catalogue());
        json.field("confidence-percent", answer.brief().confidencePercent())
                .texts("cautions", SheetWords.CAUTIONS)
                .list("runs", answer.sheet().runs(), run -> run(json, run))
                .list("lines", answer.sheet().lines(), line -> fields(json, line));
    }

    private static void run(JsonPage json, Run run) {
        json.field("title", run.title()).field("settings", run.settings()).field("job", run.job());
        json.list(
                "walk",
                run.walk().map(walk -> walk.legs()).orElse(List.of()),
                leg -> json.field("scene", leg.scene()).field("seconds", leg.seconds()));
    }

    /** The fields of a line. */
    static void fields(JsonPage json, SheetLine line) {
        int decimals = Math.max(1, line.unit().decimals());
        json.field("line", line.id())
                .field("part", SheetWords.station(line.part()))
                .field("what", line.what())
                .field("how", line.how())
                .field("unit", line.unit().symbol())
                .field("expected", line.range().flatMap(it -> Rounded.to(decimals, it.middle())))
                .field("low", line.range().flatMap(it -> Rounded.to(decimals, it.low())))
                .field("high", line.range().flatMap(it -> Rounded.to(decimals, it.high())));
        if (line.promise().isPresent()) {
            json.object(
                    "promise",
                    of ->
                            json.field("figure", Rounded.asAsked(line.promise().get().figure()))
                                    .field("at-most", line.promise().get().atMost())
                                    .field("must", line.promise().get().must()));
        } else {
            json.nothing("promise");
        }
    }
}
