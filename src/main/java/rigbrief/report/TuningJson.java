package rigbrief.report;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.measurement.tune.FrameCap;
import rigbrief.measurement.tune.MenuLine;
import rigbrief.measurement.tune.SceneLine;
import rigbrief.measurement.tune.TunedTitle;
import rigbrief.measurement.tune.TunedTitle.Rates;
import rigbrief.measurement.tune.Tuning;

/** Settings and frame caps in JSON, after the contract {@code rigbrief/tuning/1}. */
public final class TuningJson implements Report<TuningAnswer> {
    private static final String SCHEMA = "rigbrief/tuning/1";
    private static final ReportInfo INFO =
            ReportInfo.json("tuning-json", "settings and frame caps for other programs", SCHEMA);
    private static final int RATE_DECIMALS = 2;
    private static final int SHARE_DECIMALS = 4;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(TuningAnswer answer, Style style) {
        return JsonPage.object(json -> document(json, answer));
    }

    private static void document(JsonPage json, TuningAnswer answer) {
        Tuning tuning = answer.tuning();
        json.field("schema", SCHEMA)
                .field("build", answer.name())
                .field("brief", tuning.brief().name());
        CatalogueJson.write(json, answer.catalogue());
        json.field("confidence-percent", tuning.brief().confidencePercent());
        json.object(
                "held-in",
                held -> {
                    OptionalInt share = tuning.terms().heldIn().sharePercent();
                    json.field("rule", share.isPresent() ? "share-of-play" : "all-but-worst");
                    whole(json, "share-percent", share);
                });
        json.object(
                "screen",
                screen -> {
                    whole(json, "refresh-hz", tuning.screen().refreshHz());
                    whole(json, "variable-from-hz", tuning.screen().variableFromHz());
                });
        json.list("titles", tuning.titles(), title -> title(json, title));
    }

    private static void whole(JsonPage json, String name, OptionalInt value) {
        if (value.isPresent()) {
            json.field(name, value.getAsInt());
        } else {
            json.nothing(name);
        }
    }

    private static void title(JsonPage json, TunedTitle title) {
        json.field("use", title.title().id())
                .field("title", title.title().title())
                .field("outcome", word(title.outcome()))
                .field("asked-fps", Rounded.to(RATE_DECIMALS, title.askedFps()))
                .field("tuned-for-fps", Rounded.to(RATE_DECIMALS, title.tunedForFps()))
                .field("held-fps", Rounded.to(RATE_DECIMALS, title.heldFps()))
                .field("musts-hold", title.mustsHold())
                .list("menu", title.menu(), line -> menu(json, line))
                .list("scenes", title.scenes(), line -> scene(json, line));
        cap(json, "cap", title.cap());
        cap(json, "cap-without-variable-refresh", title.fixedCap());
        json.field("vram-gb", Rounded.to(RATE_DECIMALS, title.vramGb()))
                .field("vram-there-gb", Rounded.to(RATE_DECIMALS, title.vramThereGb()));
        rates(json, "uncapped", title.uncapped());
        rates(json, "capped", title.capped());
    }

    private static void menu(JsonPage json, MenuLine line) {
        json.field("setting", line.name())
                .field("set-to", line.setTo())
                .field("highest", line.highest())
                .field("reason", word(line.reason()))
                .field("visible", line.visible())
                .field("saves-graphics-percent", Rounded.to(RATE_DECIMALS, line.cardPercent()))
                .field(
                        "saves-processor-percent",
                        Rounded.to(RATE_DECIMALS, line.processorPercent()));
    }

    private static void scene(JsonPage json, SceneLine line) {
        json.field("scene", line.name())
                .field("share", Rounded.to(SHARE_DECIMALS, line.share()))
                .field("fps", Rounded.to(RATE_DECIMALS, line.fps()))
                .field("low-fps", Rounded.to(RATE_DECIMALS, line.lowFps()))
                .field("high-fps", Rounded.to(RATE_DECIMALS, line.highFps()))
                .field("sure-fps", Rounded.to(RATE_DECIMALS, line.sureFps()))
                .field("limited-by", line.processorBound() ? "processor" : "graphics")
                .field("pace", word(line.pace()));
    }

    private static void cap(JsonPage json, String name, Optional<FrameCap> cap) {
        if (cap.isEmpty()) {
            json.nothing(name);
            return;
        }
        json.object(
                name,
                of ->
                        json.field("fps", Rounded.to(RATE_DECIMALS, cap.get().fps()))
                                .field("steady-by", word(cap.get().steadyBy()))
                                .field("refreshes", cap.get().refreshes()));
    }

    private static void rates(JsonPage json, String name, Rates rates) {
        json.object(
                name,
                of ->
                        json.field("average-fps", Rounded.to(RATE_DECIMALS, rates.averageFps()))
                                .field("low-fps", Rounded.to(RATE_DECIMALS, rates.lowFps())));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
