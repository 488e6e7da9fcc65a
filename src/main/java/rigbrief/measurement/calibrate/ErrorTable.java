package rigbrief.measurement.calibrate;

/**
 * The errors of a set of measurements, before and after a fit.
 *
 * @param before with the catalogue's figures
 * @param after with the fitted ones
 * @param leftOut each measurement predicted by a fit without it
 * @param newMachine each measurement predicted by a fit without its machine
 */
public record ErrorTable(Errors before, Errors after, Errors leftOut, Errors newMachine) {}
