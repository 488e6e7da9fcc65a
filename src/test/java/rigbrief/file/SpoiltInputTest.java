package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.file.FolderFixture.aFolder;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;

/** Whatever is done to a file, it is read or refused with faults; nothing else comes out. */
class SpoiltInputTest {
    private static final int TRIES = 400;
    private static final String ODD = "\"',;:{}[]&*#|>-?!%@`~\n\r\t\\\u001b\u202e\uFEFF\u0000é9";

    @TempDir Path folder;

    @Test
    void a_catalogue_with_spoilt_bytes_is_read_or_refused_with_faults() throws IOException {
        Random random = new Random(20261120);
        List<String> names = List.copyOf(aFolder().texts().keySet());
        for (int i = 0; i < TRIES; i++) {
            aFolder().write(folder);
            String name = names.get(random.nextInt(names.size()));
            Path file = folder.resolve(name);
            Files.write(file, spoilt(Files.readAllBytes(file), random));

            checked(() -> CatalogueReader.read(folder));
        }
    }

    @Test
    void briefs_and_builds_with_spoilt_bytes_are_read_or_refused_with_faults() throws BadInput {
        Random random = new Random(20261121);
        Catalogue catalogue = CatalogueReader.read(aFolder().write(folder));
        byte[] brief = BriefText.FULL.getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < TRIES; i++) {
            byte[] bytes = spoilt(brief, random);

            checked(() -> BriefReader.read(new ByteArrayInputStream(bytes), "-", catalogue));
            checked(() -> BuildReader.read(new ByteArrayInputStream(bytes), "-", catalogue));
        }
    }

    private interface Reading {
        Object read() throws BadInput;
    }

    private static void checked(Reading reading) {
        try {
            assertThat(reading.read()).isNotNull();
        } catch (BadInput bad) {
            assertThat(bad.faults()).isNotEmpty();
            for (Fault fault : bad.faults()) {
                assertThat(fault.line()).isPositive();
                assertThat(fault.column()).isPositive();
                assertThat(fault.text().chars().noneMatch(Character::isISOControl)).isTrue();
            }
        }
    }

    /** One to three times: a stretch taken out, doubled, or something odd put in. */
    private static byte[] spoilt(byte[] bytes, Random random) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        for (int i = random.nextInt(3); i >= 0; i--) {
            int from = random.nextInt(text.length());
            int to = Math.min(text.length(), from + random.nextInt(12));
            String middle =
                    switch (random.nextInt(3)) {
                        case 0 -> "";
                        case 1 -> text.substring(from, to).repeat(2);
                        default -> String.valueOf(ODD.charAt(random.nextInt(ODD.length())));
                    };
            text = text.substring(0, from) + middle + text.substring(to);
        }
        return text.getBytes(
                random.nextBoolean() ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1);
    }
}
