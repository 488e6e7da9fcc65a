package rigbrief.part;

/** An enum constant that files spell in their own way. */
public interface Word {
    /** The spelling in files and on screens. */
    String word();
}
