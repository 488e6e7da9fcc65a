package rigbrief.file.cell;

/** The texts of one row, and where to complain about them. */
public interface Row {
    /**
     * The text in a column without the blanks around it, empty where there is none; null where a
     * fault of the cell has been reported already.
     */
    String cell(String column);

    /** Reports what is wrong with a cell. */
    void fault(String column, String found, String expected, String advice);

    /** How to state nothing here: {@code leave the cell empty}, say. */
    String leaveOut();

    /** Whether the file has the column at all; asked before a missing cell is reported. */
    boolean knows(String column);
}
