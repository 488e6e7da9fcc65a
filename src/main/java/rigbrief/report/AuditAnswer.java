package rigbrief.report;

import rigbrief.audit.Audit;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;

/**
 * An audit with what it was made from.
 *
 * @param name what the audited build is called
 * @param brief the brief it was judged by
 * @param catalogue the catalogue it was judged with
 * @param audit the judgement
 */
public record AuditAnswer(String name, Brief brief, Catalogue catalogue, Audit audit) {}
