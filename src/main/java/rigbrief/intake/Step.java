package rigbrief.intake;

import java.util.List;

/** A stretch of the interview: the questions that the answers before it call for, maybe none. */
@FunctionalInterface
interface Step {
    List<Question> questions(Sheet sheet);
}
