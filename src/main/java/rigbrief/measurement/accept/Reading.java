package rigbrief.measurement.accept;

/**
 * One figure that was measured for a line of the sheet; pass counts 1 and fail 0.
 *
 * @param line id of the line
 * @param figure the figure, in the line's unit
 */
public record Reading(String line, double figure) {}
