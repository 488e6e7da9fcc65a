package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rigbrief.diagnostic.Quotation;

class JsonPageTest {

    @Test
    void a_document_is_indented_by_two_and_ends_with_a_line_feed() {
        String json =
                JsonPage.object(
                        page ->
                                page.field("a", 1)
                                        .field("b", new BigDecimal("0.0000001"))
                                        .nothing("c")
                                        .texts("d", List.of("x")));

        assertThat(json)
                .isEqualTo(
                        "{\n  \"a\" : 1,\n  \"b\" : 0.0000001,\n  \"c\" : null,\n"
                                + "  \"d\" : [\n    \"x\"\n  ]\n}\n");
    }

    @Test
    void what_could_move_a_cursor_is_escaped() {
        String json =
                JsonPage.object(page -> page.field("a", "\u001b[2J\u202e\u007f\u0085 \u00fc"));

        assertThat(json).contains("\"\\u001B[2J\\u202E\\u007F\\u0085 \u00fc\"");
    }

    @Property
    void any_text_reads_back_as_it_was_and_prints_nothing_that_acts(@ForAll String text)
            throws IOException {
        String json = JsonPage.object(page -> page.field("a", text));

        assertThat(new ObjectMapper().readTree(json).get("a").asText()).isEqualTo(text);
        assertThat(json.codePoints().filter(it -> it != '\n')).allMatch(Quotation::prints);
    }
}
