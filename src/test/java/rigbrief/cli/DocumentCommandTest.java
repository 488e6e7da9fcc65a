package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Documents of a build, and pages of proposals, as the command line makes them. */
class DocumentCommandTest {
    private static final String WRITER = "scenarios/writer.yaml";

    @TempDir static Path folder;

    private static Path build;

    @BeforeAll
    static void propose() {
        new Captured().run("propose", WRITER, "--out", folder.toString());
        build = folder.resolve("writer-lean.build.yaml");
    }

    @Test
    void text_is_the_usual_format_and_names_the_next_command() {
        Captured console = new Captured();

        ExitStatus status = console.run("document", build.toString());

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out())
                .startsWith("Proposal for a computer: ")
                .contains("\nNext: rigbrief document " + build + " --what proposal --format pdf")
                .doesNotContain("\u00a0", "\r");
        assertThat(console.out().lines())
                .filteredOn(line -> !line.startsWith("Next: "))
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    }

    @Test
    void html_goes_to_standard_output_and_nothing_else_does() {
        Captured console = new Captured();

        ExitStatus status = console.run("document", build.toString(), "--format", "html");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out().strip()).startsWith("<!DOCTYPE html>").endsWith("</html>");
        assertThat(console.err()).contains("Next: rigbrief audit " + build);
    }

    @Test
    void a_pdf_is_written_whole_into_a_file() throws Exception {
        Path pdf = folder.resolve("offer.pdf");
        Captured console = new Captured();

        ExitStatus status =
                console.run(
                        "document", build.toString(), "--format", "pdf", "--out", pdf.toString());

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out()).isEmpty();
        assertThat(console.err()).contains("written: " + pdf);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(new PDFTextStripper().getText(document)).contains("parts and prices");
        }
    }

    @Test
    void a_file_that_is_there_is_not_touched_without_force() throws Exception {
        Path there = Files.writeString(folder.resolve("there.html"), "mine");
        String[] line = {
            "document", build.toString(), "--format", "html", "--out", there.toString()
        };
        Captured refused = new Captured();

        ExitStatus status = refused.run(line);

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(refused.err()).contains("there.html: found a file", "--force");
        assertThat(there).hasContent("mine");
    }

    @ParameterizedTest
    @CsvSource({
        "--what, prposal, 'expected one of proposal'",
        "--language, fr, 'expected one of en, de'",
        "--format, xml, 'xml'"
    })
    void a_word_that_nobody_knows_is_wrong_use(String option, String word, String told) {
        Captured console = new Captured();

        ExitStatus status = console.run("document", build.toString(), option, word);

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(console.err()).contains(told, "Next: rigbrief document --help");
    }

    @Test
    void german_is_spoken_with_the_numbers_of_the_briefs_country() {
        Captured console = new Captured();

        console.run("document", build.toString(), "--language", "de");

        assertThat(console.out()).startsWith("Angebot für ").contains("\n  Prozessor ");
    }

    @Test
    void a_plain_list_of_parts_can_be_made_a_document_too() {
        Captured console = new Captured().input("no-such-part\n");

        ExitStatus status = console.run("document", "-");

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(console.err()).contains("no-such-part");
    }

    @Test
    void an_unfinished_build_gets_a_document_that_says_what_is_broken() throws Exception {
        String processor = firstProcessor();
        Captured console = new Captured().input(processor + "\n");

        ExitStatus status = console.run("document", "-", "--format", "html");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out()).contains("Broken rule", "before anything is bought");
    }

    private static String firstProcessor() throws Exception {
        String line = Files.readAllLines(Path.of("catalog-sample", "processor.csv")).get(1);
        String head = Files.readAllLines(Path.of("catalog-sample", "processor.csv")).get(0);
        int column = List.of(head.split(",")).indexOf("id");
        return line.split(",")[column];
    }

    @Test
    void propose_files_the_builds_and_the_page_in_one_folder() {
        Path out = folder.resolve("all");
        Captured console = new Captured();

        ExitStatus status =
                console.run("propose", WRITER, "--format", "html", "--out", out.toString());

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out()).isEmpty();
        assertThat(out.resolve("writer.html")).isRegularFile();
        assertThat(out.resolve("writer-lean.build.yaml")).isRegularFile();
        assertThat(console.err()).contains("Next: rigbrief audit " + out);
    }

    @Test
    void propose_writes_the_page_alone_where_out_names_one() throws Exception {
        Path page = folder.resolve("alone").resolve("offer.html");
        Captured console = new Captured();

        ExitStatus status =
                console.run("propose", WRITER, "--format", "html", "--out", page.toString());

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(page.getParent().toFile().list()).containsExactly("offer.html");
        assertThat(Files.readString(page, StandardCharsets.UTF_8)).contains("id=\"money\"");
    }

    @Test
    void a_brief_that_nothing_meets_gets_a_page_and_status_4() {
        Captured console = new Captured();

        ExitStatus status = console.run("propose", "scenarios/impossible.yaml", "--format", "html");

        assertThat(status).isEqualTo(ExitStatus.IMPOSSIBLE);
        assertThat(console.out()).contains("No build meets every must");
    }
}
