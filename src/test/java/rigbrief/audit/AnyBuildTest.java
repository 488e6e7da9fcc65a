package rigbrief.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/** Whatever somebody puts together, the audit answers; parts are drawn from the whole sample. */
class AnyBuildTest {
    private static final int BUILDS_PER_BRIEF = 60;
    private static final int MOST_PIECES = 6;

    private static Catalogue catalogue;

    @BeforeAll
    static void readTheSample() throws BadInput {
        catalogue = CatalogueReader.read(Path.of("catalog-sample"));
    }

    static List<String> briefs() {
        return List.of(
                "potter",
                "writer",
                "editor",
                "competitor",
                "living-room",
                "cad",
                "forty-desks",
                "keeper",
                "tight-600",
                "impossible");
    }

    @ParameterizedTest
    @MethodSource("briefs")
    void any_build_can_be_judged_and_the_judgement_is_consistent(String name) throws BadInput {
        Brief brief = BriefReader.read(Path.of("scenarios", name + ".yaml"), catalogue);
        Auditor auditor = new Auditor(brief, catalogue);
        Random random = new Random(name.hashCode());

        for (int i = 0; i < BUILDS_PER_BRIEF; i++) {
            Build build = any(random, i % 3 == 0);
            Audit audit = auditor.audit(build);

            assertConsistent(audit, build);
        }
    }

    private static void assertConsistent(Audit audit, Build build) {
        List<Level> levels = audit.findings().stream().map(AuditFinding::level).toList();
        assertThat(levels).as("levels of %s", build).isSorted();
        assertThat(audit.fits()).isEqualTo(!levels.contains(Level.BREACH));
        assertThat(audit.figures().isPresent()).isEqualTo(build.missing().isEmpty());
        assertThat(audit.utility()).isBetween(0.0, 1.0);
        for (AuditFinding finding : audit.findings()) {
            assertThat(finding.text()).as(finding.rule()).isNotBlank();
            assertThat(finding.excess() > 0).isEqualTo(finding.level() == Level.BREACH);
        }
        for (MarginLine line : audit.margins()) {
            boolean broken = line.margin().spare() < 0;
            boolean told =
                    audit.findings().stream()
                            .anyMatch(
                                    finding ->
                                            finding.rule().equals(line.rule())
                                                    && finding.level() == Level.BREACH);
            assertThat(told || !broken).as("%s of %s", line, build).isTrue();
        }
    }

    private static Build any(Random random, boolean unfinished) {
        Build build = Build.empty();
        for (Slot slot : Slot.values()) {
            boolean fill =
                    slot.required() ? !unfinished || random.nextInt(4) > 0 : random.nextBoolean();
            if (fill) {
                List<Part> parts = catalogue.parts(slot.kind());
                Part part = parts.get(random.nextInt(parts.size()));
                int most = slot.mostPieces() == 1 ? 1 : MOST_PIECES;
                build = build.with(slot, part, 1 + random.nextInt(most));
            }
        }
        return build;
    }
}
