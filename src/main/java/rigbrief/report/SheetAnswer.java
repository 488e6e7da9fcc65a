package rigbrief.report;

import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.measurement.accept.Sheet;

/**
 * An acceptance sheet, with what it was made from.
 *
 * @param name what the build is called
 * @param brief the brief it was promised for
 * @param catalogue the catalogue
 * @param sheet the sheet
 */
public record SheetAnswer(String name, Brief brief, Catalogue catalogue, Sheet sheet) {}
