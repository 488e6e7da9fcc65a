package rigbrief.diagnostic;

/**
 * One thing that is wrong in an input file.
 *
 * @param file the file, as the person who named it knows it
 * @param line line of the fault, from 1
 * @param column column of the fault, from 1, in UTF-16 units
 * @param subject what the fault is about: a column header, a key with its path, {@code file}
 * @param found what stands there, as it stands there; empty for nothing
 * @param expected what should stand there
 * @param advice what to do, in the imperative
 */
public record Fault(
        String file,
        int line,
        int column,
        String subject,
        String found,
        String expected,
        String advice) {

    /**
     * The fault in one line: {@code FILE:LINE:COLUMN: SUBJECT: found "X", expected Y; do Z}.
     *
     * <p>What was found is shortened beyond 80 characters. Control characters, bidirectional marks
     * and everything else that could move a terminal's cursor are written as {@code \}{@code
     * uXXXX}.
     */
    public String text() {
        String quoted = found.isEmpty() ? "nothing" : Quotation.of(found);
        return Quotation.visible("%s:%d:%d: %s: found ".formatted(file, line, column, subject))
                + quoted
                + Quotation.visible(", expected %s; %s".formatted(expected, advice));
    }

    @Override
    public String toString() {
        return text();
    }
}
