package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.report.page.DocumentSubject;

class OrderListCsvTest {
    static List<DocumentSubject> subjects() {
        return Subjects.all();
    }

    /** Read back by a CSV library that knows nothing of this writer. */
    private static List<Map<String, String>> rows(String csv) throws IOException {
        CsvMapper mapper = CsvMapper.builder().build();
        try (MappingIterator<Map<String, String>> rows =
                mapper.readerForMapOf(String.class)
                        .with(CsvSchema.emptySchema().withHeader())
                        .readValues(csv)) {
            return rows.readAll();
        }
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void the_rows_add_up_to_parts_and_delivery_to_the_cent(DocumentSubject subject)
            throws IOException {
        List<Map<String, String>> rows = rows(new OrderListCsv().write(subject, Style.PLAIN));

        BigDecimal sum = BigDecimal.ZERO;
        for (Map<String, String> row : rows) {
            if (!row.get("price").isEmpty()) {
                BigDecimal each = new BigDecimal(row.get("unit-price"));
                BigDecimal price = new BigDecimal(row.get("price"));
                assertThat(price)
                        .isEqualByComparingTo(each.multiply(new BigDecimal(row.get("quantity"))));
                sum = sum.add(price);
            }
        }
        long expected =
                subject.audit().cost().partsMinor() + subject.audit().cost().deliveryMinor();
        assertThat(sum).isEqualByComparingTo(BigDecimal.valueOf(expected, 2));
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void every_part_is_on_one_row(DocumentSubject subject) throws IOException {
        List<Map<String, String>> rows = rows(new OrderListCsv().write(subject, Style.PLAIN));

        List<String> slots =
                rows.stream().map(row -> row.get("slot")).filter(slot -> !slot.isEmpty()).toList();
        assertThat(slots)
                .containsExactlyInAnyOrderElementsOf(
                        subject.filed().build().filled().keySet().stream()
                                .map(slot -> slot.word())
                                .toList());
    }

    static Stream<Arguments> risky() {
        return Stream.of(
                arguments("=1+1", "'=1+1"),
                arguments("+49", "'+49"),
                arguments("-2", "'-2"),
                arguments("@here", "'@here"),
                arguments("\tx", "\"'\tx\""),
                arguments("\rx", "\"'\rx\""),
                arguments("=\"a\",b", "\"'=\"\"a\"\",b\""),
                arguments("plain", "plain"),
                arguments("a,b", "\"a,b\""),
                arguments("", ""));
    }

    @ParameterizedTest
    @MethodSource("risky")
    void a_cell_that_a_spreadsheet_would_run_is_led_by_an_apostrophe(String text, String cell) {
        assertThat(CsvCell.of(text)).isEqualTo(cell);
    }

    @Property
    boolean no_cell_begins_a_formula_and_all_else_is_read_back(
            @ForAll
                    @StringLength(max = 12)
                    @Chars({'=', '+', '-', '@', '\t', '\r', '\n', '"', ',', ';', '\'', 'a', ' '})
                    String text)
            throws IOException {
        try (MappingIterator<String[]> cells =
                CsvMapper.builder()
                        .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                        .build()
                        .readerFor(String[].class)
                        .readValues("x," + CsvCell.of(text) + ",y\n")) {
            String read = cells.next()[1];
            boolean safe = read.isEmpty() || "=+-@\t\r\n".indexOf(read.charAt(0)) < 0;
            return safe && (read.equals(text) || read.equals("'" + text));
        }
    }
}
