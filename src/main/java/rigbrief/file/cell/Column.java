package rigbrief.file.cell;

/**
 * What a column holds, as its reader asks for it.
 *
 * @param name its header
 * @param required whether every row has to fill it
 * @param holds what a filled cell looks like, in words
 */
public record Column(String name, boolean required, String holds) {}
