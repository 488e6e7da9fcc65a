package rigbrief.assembly;

import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.assess.Settled;
import rigbrief.audit.Audit;
import rigbrief.audit.AuditFinding;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;

/**
 * A finished build on the bench, with all that the rules and models say of it.
 *
 * @param it its assessment
 * @param audit its audit
 */
public record Bench(Assessment it, Audit audit) {

    /**
     * A build under a brief, of which nothing was ordered yet.
     *
     * @throws IllegalArgumentException when a required slot is empty: nobody can put that together
     */
    public static Bench of(Brief brief, Catalogue catalogue, Build build) {
        return of(brief, catalogue, build, Settled.NOTHING);
    }

    /**
     * A build under a brief.
     *
     * @param settled what was ordered of it, which today's offers no longer decide
     * @throws IllegalArgumentException when a required slot is empty: nobody can put that together
     */
    public static Bench of(Brief brief, Catalogue catalogue, Build build, Settled settled) {
        if (!build.missing().isEmpty()) {
            throw new IllegalArgumentException(
                    "found a build without %s, expected one with every required slot filled; add the part"
                            .formatted(build.missing().get(0).word()));
        }
        return new Bench(
                new Assessor(brief, catalogue, settled).assess(build),
                new Auditor(brief, catalogue, settled).audit(build));
    }

    /** The build. */
    public Build build() {
        return it.build();
    }

    /** The brief. */
    public Brief brief() {
        return it.brief();
    }

    /** What a rule remarked; empty when it had nothing to say. */
    public Optional<AuditFinding> finding(String rule) {
        List<AuditFinding> findings = audit.findings();
        return findings.stream().filter(finding -> finding.rule().equals(rule)).findFirst();
    }
}
