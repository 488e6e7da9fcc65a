package rigbrief.world;

/**
 * How a column's figure differs between like parts: the logarithm moves by three normal draws, two
 * of which all figures of a part share, so that figures stay consistent with each other.
 *
 * @param column name of the column
 * @param size change of the logarithm for one standard deviation of how big the part is
 * @param quality the same for how good it is
 * @param own standard deviation of what is this figure's alone
 */
record Figure(String column, double size, double quality, double own) {}
