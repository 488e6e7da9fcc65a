package rigbrief.report;

/**
 * One way to write one sort of answer.
 *
 * @param <T> the answer
 */
public interface Report<T> {
    /** Name, format and schema. */
    ReportInfo info();

    /** The answer written out, with line feeds alone and one at the end. */
    String write(T answer, Style style);
}
