package rigbrief.report;

import rigbrief.catalogue.Catalogue;
import rigbrief.measurement.accept.Acceptance;

/**
 * A judged acceptance test, with what it was made from.
 *
 * @param name what the build is called
 * @param catalogue the catalogue
 * @param acceptance the judgement
 */
public record AcceptanceAnswer(String name, Catalogue catalogue, Acceptance acceptance) {}
