package rigbrief.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Faults;

class BatchBriefsTest {
    @TempDir Path folder;

    private Path file(String name) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, "");
    }

    private static List<String> results(Path... named) throws BadInput {
        Faults faults = new Faults();
        List<BatchBrief> briefs = BatchBriefs.of(List.of(named), faults);
        faults.throwIfAny();
        return briefs.stream().map(BatchBrief::result).toList();
    }

    @Test
    void a_folder_gives_its_briefs_in_the_order_of_their_names() throws Exception {
        file("b.yml");
        file("c.JSON");
        file("a.yaml");
        file("a.yaml.bak");
        file(".hidden.yaml");
        file("inner.yaml/deeper.yaml");

        assertThat(results(folder)).containsExactly("a", "b", "c");
    }

    @Test
    void files_keep_the_order_in_which_they_are_named_and_count_once() throws Exception {
        Path b = file("b.yaml");
        Path a = file("a.yaml");

        assertThat(results(b, a, folder, folder.resolve("x/../b.yaml"))).containsExactly("b", "a");
    }

    @Test
    void like_named_briefs_get_results_of_their_own() throws Exception {
        Path[] like = {
            file("one/desk.yaml"),
            file("one/desk.json"),
            file("two/desk.yaml"),
            file("two/Desk.yaml"),
            file("desk-yaml.yaml"),
            file("other.yaml")
        };

        List<String> results = results(like);

        assertThat(results)
                .containsExactly(
                        "desk-yaml-2",
                        "desk-json",
                        "desk-yaml-3",
                        "Desk-yaml-4",
                        "desk-yaml",
                        "other");
    }

    @Test
    void no_name_leaves_the_folder_of_the_results_or_meets_the_summary() throws Exception {
        assertThat(results(file("...yaml"), file("summary.csv.yaml"), file(".x")))
                .containsExactly("brief---", "brief-summary-csv", "brief--x");
    }

    @Test
    void a_folder_without_briefs_is_refused() {
        BadInput bad = catchThrowableOfType(BadInput.class, () -> results(folder));

        assertThat(bad.faults()).singleElement().asString().contains("a folder without any");
    }

    @Test
    void shares_are_disjoint_and_together_the_whole() {
        List<Integer> all = List.of(1, 2, 3, 4, 5, 6, 7);

        assertThat(new Shard(1, 3).of(all)).containsExactly(1, 4, 7);
        assertThat(new Shard(2, 3).of(all)).containsExactly(2, 5);
        assertThat(new Shard(3, 3).of(all)).containsExactly(3, 6);
        assertThat(Shard.WHOLE.of(all)).isEqualTo(all);
        assertThat(new Shard(9, 9).of(all)).isEmpty();
    }
}
