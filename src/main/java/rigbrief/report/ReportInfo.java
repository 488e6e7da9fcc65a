package rigbrief.report;

import java.util.Optional;

/**
 * What a report says about itself.
 *
 * @param id stable kebab-case id
 * @param title what it shows, in a few words
 * @param schema name and version of its JSON contract; empty for a text
 */
public record ReportInfo(String id, String title, Optional<String> schema) {
    /** A report in plain text. */
    static ReportInfo text(String id, String title) {
        return new ReportInfo(id, title, Optional.empty());
    }

    /**
     * A report in JSON; the schema's file is {@code schema/NAME.schema.json} beside the program.
     */
    static ReportInfo json(String id, String title, String schema) {
        return new ReportInfo(id, title, Optional.of(schema));
    }
}
