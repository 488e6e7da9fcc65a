package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;

/** Bytes that are no text, or a text in other bytes. */
class HostileEncodingsTest extends HostileInput {
    @Test
    void a_mark_of_utf_8_is_passed_over_and_other_encodings_are_named_as_foreign()
            throws IOException {
        put("brief.yaml", "\uFEFF" + shop.text("brief.yaml"));
        assertThat(
                        captured.run(
                                "audit",
                                shop.file("build.yaml"),
                                "--brief",
                                shop.file("brief.yaml"),
                                "--catalog",
                                shop.file("catalog")))
                .isEqualTo(ExitStatus.DONE);

        for (Charset charset : List.of(StandardCharsets.UTF_16, StandardCharsets.ISO_8859_1)) {
            put(
                    "brief.yaml",
                    shop.text("brief.yaml").replace("Wren", "Wr\u00E9n").getBytes(charset));
            assertThat(
                            refused(
                                    "propose",
                                    shop.file("brief.yaml"),
                                    "--catalog",
                                    shop.file("catalog")))
                    .contains("expected UTF-8");
        }
    }

    @Test
    void nul_bytes_are_faults_with_a_place() throws IOException {
        assertThat(refusedBrief(shop.text("brief.yaml").replace("Wren", "Wr\u0000n")))
                .contains("brief.yaml:1:")
                .doesNotContain("\u0000");
        put(
                "catalog/offers.csv",
                shop.text("catalog/offers.csv").replace("quaymark,58.50", "quay\u0000mark,58.50"));
        assertThat(refused("catalog", "stats", "--catalog", shop.file("catalog")))
                .contains("supplier: found \"quay\\u0000mark\"");
    }

    @Test
    void carriage_returns_alone_end_lines() throws IOException {
        put("brief.yaml", shop.text("brief.yaml").replace('\n', '\r'));
        put("catalog/offers.csv", shop.text("catalog/offers.csv").replace('\n', '\r'));
        put("list.txt", shop.text("list.txt").replace('\n', '\r'));

        assertThat(
                        captured.run(
                                "audit",
                                shop.file("list.txt"),
                                "--brief",
                                shop.file("brief.yaml"),
                                "--catalog",
                                shop.file("catalog")))
                .as(captured.err())
                .isEqualTo(ExitStatus.BREAKS);
    }

    @Test
    void compressed_files_are_not_opened() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(new byte[10_000_000]);
        }
        put("brief.yaml", packed.toByteArray());

        assertThat(refused("propose", shop.file("brief.yaml"), "--catalog", shop.file("catalog")))
                .contains("brief.yaml:1:2: file: found \"byte 0x8B\", expected UTF-8");
    }
}
