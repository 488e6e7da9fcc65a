package rigbrief.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import rigbrief.file.Sha256;

/**
 * What all results of a batch are made from, beside the brief.
 *
 * @param version version of the program
 * @param catalogueDigest digest of the catalogue
 * @param options every option that an answer's bytes depend on
 */
public record Origin(String version, String catalogueDigest, String options) {

    /**
     * One digest over all that a brief's result is made from; empty where the brief can't be read.
     */
    Optional<String> of(Path brief) {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(brief);
        } catch (IOException unreadable) {
            // Its reader tells what is wrong with it, in the usual words.
            return Optional.empty();
        }
        String made =
                String.join(
                        "\n",
                        "version " + version,
                        "catalogue " + catalogueDigest,
                        "options " + options,
                        "name " + brief.getFileName(),
                        "brief " + Sha256.of(bytes));
        return Optional.of(Sha256.of(made.getBytes(StandardCharsets.UTF_8)));
    }
}
