package rigbrief.report.page;

import rigbrief.assembly.Bench;
import rigbrief.audit.Audit;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.replace.Ordered;

/**
 * What a document is about.
 *
 * @param file what the build file is called
 * @param filed the build as it is filed
 * @param brief the brief it is judged by
 * @param catalogue the catalogue
 * @param audit everything the judge says of it, at today's offers
 */
public record DocumentSubject(
        String file, BuildRecord filed, Brief brief, Catalogue catalogue, Audit audit) {
    /**
     * The machine on the bench, for the papers of those who order and build it: what was ordered or
     * is here already no longer hangs on today's offers.
     *
     * @throws IllegalArgumentException when a required slot is empty
     */
    public Bench bench() {
        return Bench.of(brief, catalogue, filed.build(), Ordered.of(filed, catalogue));
    }
}
