package rigbrief.cli;

import java.io.IOException;
import java.util.Optional;
import rigbrief.intake.Question;

/** Where the answers of an interview come from. */
interface AnswerSource extends AutoCloseable {
    /** The next line; empty where there is none: the end of a pipe, or somebody who stops. */
    Optional<String> line(Question question) throws IOException;

    /** Whether somebody can be asked again who was not understood. */
    boolean canBeAskedAgain();

    /** How many lines were given. */
    int count();

    @Override
    void close() throws IOException;
}
