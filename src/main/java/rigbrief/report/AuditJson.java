package rigbrief.report;

import java.util.List;
import rigbrief.part.Slot;

/** An audit in JSON, after the contract {@code rigbrief/audit/1}. */
public final class AuditJson implements Report<AuditAnswer> {
    private static final String SCHEMA = "rigbrief/audit/1";
    private static final ReportInfo INFO =
            ReportInfo.json("audit-json", "an audit for other programs", SCHEMA);

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(AuditAnswer answer, Style style) {
        return JsonPage.object(json -> document(json, answer));
    }

    private static void document(JsonPage json, AuditAnswer answer) {
        AssessmentJson assessment = new AssessmentJson(json, answer.brief());
        json.field("schema", SCHEMA)
                .field("build", answer.name())
                .field("brief", answer.brief().name())
                .field("currency", answer.brief().currency().getCurrencyCode())
                .field("machines", answer.brief().quantity());
        CatalogueJson.write(json, answer.catalogue());
        json.field("verdict", answer.audit().fits() ? "fits" : "breaks")
                .texts(
                        "missing",
                        answer.audit().build().missing().stream().map(Slot::word).toList());
        assessment.fields(answer.audit(), List.of());
    }
}
