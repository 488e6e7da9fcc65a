package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rigbrief.fixture.BriefFixture.aBrief;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.brief.Brief;
import rigbrief.proposal.Tier;

class BuildFolderTest {
    private final Brief brief = aBrief().make();

    @TempDir Path folder;

    @Test
    void a_file_is_named_after_brief_and_tier() {
        assertThat(new BuildFolder(folder, false).file(brief, Tier.LEAN))
                .isEqualTo(folder.resolve("fixture-lean.build.yaml"));
    }

    @Test
    void a_folder_that_is_not_there_yet_is_no_hindrance() {
        assertThatCode(
                        () ->
                                new BuildFolder(folder.resolve("new/deep"), false)
                                        .refuseIfTaken(brief))
                .doesNotThrowAnyException();
    }

    @Test
    void a_file_of_any_tier_is_refused_before_the_search() throws IOException {
        Files.createFile(folder.resolve("fixture-full.build.yaml"));

        assertThatThrownBy(() -> new BuildFolder(folder, false).refuseIfTaken(brief))
                .isInstanceOf(NotWritten.class)
                .hasMessageContaining("fixture-full.build.yaml: found a file")
                .hasMessageContaining("--force");
    }

    @Test
    void force_takes_the_place_of_what_is_there() throws IOException {
        Files.createFile(folder.resolve("fixture-full.build.yaml"));

        assertThatCode(() -> new BuildFolder(folder, true).refuseIfTaken(brief))
                .doesNotThrowAnyException();
    }

    @Test
    void a_link_that_leads_nowhere_is_in_the_way_too() throws IOException {
        Files.createSymbolicLink(folder.resolve("fixture-lean.build.yaml"), Path.of("nowhere"));

        assertThatThrownBy(() -> new BuildFolder(folder, false).refuseIfTaken(brief))
                .isInstanceOf(NotWritten.class);
    }

    @Test
    void a_file_in_place_of_the_folder_is_refused() throws IOException {
        Path file = Files.createFile(folder.resolve("out"));

        assertThatThrownBy(() -> new BuildFolder(file, true).refuseIfTaken(brief))
                .isInstanceOf(NotWritten.class)
                .hasMessageContaining("expected a folder");
    }
}
