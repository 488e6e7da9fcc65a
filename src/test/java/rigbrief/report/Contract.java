package rigbrief.report;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.InputStream;
import java.util.List;

/** A JSON Schema that ships with the program, judged by a library that is not ours. */
final class Contract {
    private final Schema schema;

    private Contract(Schema schema) {
        this.schema = schema;
    }

    /** The schema of a name, such as {@code proposals}. */
    static Contract of(String name) {
        String resource = "/rigbrief/schema/" + name + ".schema.json";
        InputStream stream = ReportInfo.class.getResourceAsStream(resource);
        if (stream == null) {
            throw new IllegalStateException(
                    "found nothing at %s, expected a schema; add the file".formatted(resource));
        }
        return new Contract(
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(stream));
    }

    /** What a document breaks; nothing when it keeps the contract. */
    List<String> broken(String json) {
        return schema.validate(json, InputFormat.JSON).stream().map(Error::toString).toList();
    }
}
