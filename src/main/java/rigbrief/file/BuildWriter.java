package rigbrief.file;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.file.tree.YamlText;

/** Writes a build file: what {@link BuildReader} reads back as an equal record. */
public final class BuildWriter {
    /** The name and version of the format. */
    static final String SCHEMA = "rigbrief/build/1";

    private BuildWriter() {}

    /** The build as a YAML text. */
    public static String write(BuildRecord build) {
        YamlText yaml = new YamlText();
        yaml.plain("schema", SCHEMA);
        build.tier().ifPresent(tier -> yaml.text("tier", tier));
        yaml.begin("catalogue")
                .text("name", build.catalogueName())
                .text("digest", build.catalogueDigest())
                .end();
        currency(build).ifPresent(currency -> yaml.plain("currency", currency));
        if (build.lines().isEmpty()) {
            yaml.list("lines", List.of());
        } else {
            yaml.begin("lines");
            build.lines().forEach(line -> line(line, yaml));
            yaml.end();
        }
        AsideSection.write(build.aside(), yaml);
        HistorySection.write(build.history(), yaml);
        build.brief().ifPresent(brief -> brief(brief, yaml));
        return yaml.toString();
    }

    private static Optional<Currency> currency(BuildRecord build) {
        return build.brief()
                .map(Brief::currency)
                .or(
                        () ->
                                build.lines().stream()
                                        .map(line -> line.unitPrice().currency())
                                        .findFirst());
    }

    private static void line(BuildLine line, YamlText yaml) {
        yaml.item()
                .plain("slot", line.slot().word())
                .text("part", line.part().id())
                .plain("pieces", line.pieces());
        line.supplier().ifPresent(supplier -> yaml.text("supplier", supplier));
        yaml.text("unit-price", line.unitPrice().plain());
        if (line.units().isEmpty()) {
            yaml.plain("state", line.state().word());
        }
        yaml.yes("kept", line.kept());
        UnitsSection.write(line.units(), yaml);
        BriefWriter.spec(line.part(), yaml);
        PartSheet.write(line, yaml);
        yaml.end();
    }

    private static void brief(Brief brief, YamlText yaml) {
        yaml.text("brief-name", brief.name()).begin("brief");
        BriefWriter.write(brief, yaml);
        yaml.end();
    }
}
