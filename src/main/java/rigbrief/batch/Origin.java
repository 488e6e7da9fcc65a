package rigbrief.batch;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
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
     * One digest over all that a brief's result is made from.
     *
     * @throws BadInput when the brief can't be read, or is none that could be read again
     */
    String of(Path brief) throws BadInput {
        String made =
                String.join(
                        "\n",
                        "version " + version,
                        "catalogue " + catalogueDigest,
                        "options " + options,
                        "name " + brief.getFileName(),
                        "brief " + BriefReader.digest(brief));
        return Sha256.of(made.getBytes(StandardCharsets.UTF_8));
    }
}
