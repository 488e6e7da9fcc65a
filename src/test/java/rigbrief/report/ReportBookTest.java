package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Walks the reports: none without a name of its own, a test, and a schema if it is JSON. */
class ReportBookTest {

    static List<Report<?>> reports() {
        return Reports.ALL;
    }

    @Test
    void ids_are_unique() {
        assertThat(Reports.ALL).extracting(report -> report.info().id()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("reports")
    void a_report_has_a_kebab_case_id_and_a_title_without_period(Report<?> report) {
        assertThat(report.info().id()).matches("[a-z]+(-[a-z]+)*");
        assertThat(report.info().title()).isNotBlank().doesNotEndWith(".");
    }

    @ParameterizedTest
    @MethodSource("reports")
    void a_report_has_a_test_of_its_name(Report<?> report) {
        String test = report.getClass().getSimpleName() + "Test.java";

        assertThat(Files.exists(Path.of("src/test/java/rigbrief/report", test))).isTrue();
    }

    @ParameterizedTest
    @MethodSource("reports")
    void a_report_in_json_names_a_schema_that_ships(Report<?> report) {
        report.info()
                .schema()
                .ifPresent(
                        schema -> {
                            String file = schema.split("[/]")[1].split("-")[0];
                            assertThat(schema).matches("rigbrief/[a-z-]+/[1-9]");
                            assertThatCode(() -> Contract.of(file)).doesNotThrowAnyException();
                        });
    }
}
