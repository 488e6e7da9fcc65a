package rigbrief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What comes along with the program, as its lists tell it. */
class SupplyIT {
    private static final Pattern LISTED =
            Pattern.compile("^ +((?:[(][^()]+[)] )+).*[(]([^ :]+):([^ :]+):([^ :]+) - .*[)]$");

    private static Path home;

    @BeforeAll
    static void where() {
        home =
                Path.of(System.getProperty("rigbrief.launcher", "target/rigbrief"))
                        .toAbsolutePath()
                        .getParent();
    }

    /** SHA-256 of every library, by the name of its file. */
    private static Map<String, String> libraries() throws Exception {
        Map<String, String> digestByName = new TreeMap<>();
        try (Stream<Path> files = Files.list(home.resolve("lib"))) {
            for (Path file : files.toList()) {
                digestByName.put(file.getFileName().toString(), sha256(file));
            }
        }
        return digestByName;
    }

    private static String sha256(Path file) throws Exception {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
        return HexFormat.of().formatHex(digest);
    }

    @Test
    void every_library_is_listed_with_a_licence() throws Exception {
        Map<String, String> licencesByName = new TreeMap<>();
        for (String line : Files.readAllLines(home.resolve("LIBRARIES.txt"))) {
            Matcher row = LISTED.matcher(line);
            if (row.matches()) {
                licencesByName.put(
                        "%s-%s.jar".formatted(row.group(3), row.group(4)), row.group(1).strip());
            }
        }

        assertThat(licencesByName.keySet()).isEqualTo(libraries().keySet());
        assertThat(licencesByName.values())
                .allMatch(it -> it.matches("([(][A-Z0-9][A-Za-z0-9.-]+[)] ?)+"));
    }

    @Test
    void the_bill_of_materials_names_these_very_files() throws Exception {
        JsonNode bill = bill();
        Map<String, String> digestByName = new TreeMap<>();
        for (JsonNode part : bill.get("components")) {
            String file =
                    "%s-%s.jar".formatted(part.get("name").asText(), part.get("version").asText());
            for (JsonNode hash : part.get("hashes")) {
                if (hash.get("alg").asText().equals("SHA-256")) {
                    digestByName.put(file, hash.get("content").asText());
                }
            }
            assertThat(part.get("licenses")).as(file).isNotEmpty();
        }

        assertThat(digestByName).isEqualTo(libraries());
    }

    @Test
    void the_bill_of_materials_holds_nothing_that_differs_from_build_to_build() throws Exception {
        JsonNode bill = bill();

        assertThat(bill.get("bomFormat").asText()).isEqualTo("CycloneDX");
        assertThat(bill.has("serialNumber")).isFalse();
        assertThat(bill.get("metadata").has("timestamp")).isFalse();
        assertThat(bill.toString())
                .doesNotContain(home.toString())
                .doesNotContain(System.getProperty("user.home") + "/");
    }

    private static JsonNode bill() throws IOException {
        Path file = home.resolve("rigbrief-bom.json");
        // The build says whether it had a network; without a word it is taken to have had one.
        assumeFalse(
                "offline true".equals(System.getProperty("rigbrief.network")),
                "built with -o: no bill of materials");
        return new ObjectMapper().readTree(file.toFile());
    }

    /** The date that the build gives everything, and rights that no umask changes. */
    @Test
    void the_jar_has_no_trace_of_when_and_where_it_was_built() throws IOException {
        try (JarFile jar = new JarFile(home.resolve("rigbrief.jar").toFile())) {
            assertThat(jar.stream().map(JarEntry::getTimeLocal).distinct()).hasSize(1);
            assertThat(jar.getManifest().getMainAttributes().keySet())
                    .extracting(Object::toString)
                    .doesNotContain("Built-By", "Build-Time", "Bnd-LastModified");
        }
    }
}
