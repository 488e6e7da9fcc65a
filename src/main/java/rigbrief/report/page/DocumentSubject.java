package rigbrief.report.page;

import rigbrief.audit.Audit;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;

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
        String file, BuildRecord filed, Brief brief, Catalogue catalogue, Audit audit) {}
