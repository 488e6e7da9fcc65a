package rigbrief.report;

import java.util.regex.Pattern;
import rigbrief.explain.Explanation;

/** An explanation in JSON, after the contract {@code rigbrief/explanation/1}. */
public final class ExplanationJson implements Report<ExplanationAnswer> {
    private static final String SCHEMA = "rigbrief/explanation/1";
    private static final ReportInfo INFO =
            ReportInfo.json(
                    "explanation-json", "how a number came about, for other programs", SCHEMA);

    /** Currencies have three capitals; no other unit has. */
    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(ExplanationAnswer answer, Style style) {
        return JsonPage.object(json -> document(json, answer));
    }

    private static void document(JsonPage json, ExplanationAnswer answer) {
        json.field("schema", SCHEMA)
                .field("build", answer.name())
                .field("brief", answer.brief())
                .list(
                        "numbers",
                        answer.topics(),
                        topic -> json.field("number", topic.name()).field("title", topic.title()));
        if (answer.explanation().isPresent()) {
            json.object("explanation", of -> explanation(json, answer.explanation().get()));
        } else {
            json.nothing("explanation");
        }
    }

    private static void explanation(JsonPage json, Explanation it) {
        json.field("number", it.number()).field("title", it.title());
        // Money is a text, as everywhere.
        if (CURRENCY.matcher(it.unit()).matches() && it.value().isPresent()) {
            json.field("value", it.value().get().toPlainString());
        } else {
            json.field("value", it.value());
        }
        json.field("unit", it.unit())
                .field("formula", it.formula())
                .list(
                        "inputs",
                        it.inputs(),
                        input ->
                                json.field("name", input.name())
                                        .field("value", input.value())
                                        .field("from", input.from()))
                .texts("steps", it.steps())
                .field("source", it.source())
                .texts("remarks", it.remarks());
    }
}
