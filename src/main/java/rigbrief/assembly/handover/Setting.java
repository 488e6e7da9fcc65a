package rigbrief.assembly.handover;

/**
 * A setting as the machine is handed over with it.
 *
 * @param where firmware, a title, the screen
 * @param name what it is called there
 * @param value what it is set to
 */
public record Setting(String where, String name, String value) {}
