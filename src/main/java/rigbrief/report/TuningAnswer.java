package rigbrief.report;

import rigbrief.catalogue.Catalogue;
import rigbrief.measurement.tune.Tuning;

/**
 * Settings for a build, with what they were made from.
 *
 * @param name what the build is called
 * @param catalogue the catalogue
 * @param tuning the settings
 */
public record TuningAnswer(String name, Catalogue catalogue, Tuning tuning) {}
