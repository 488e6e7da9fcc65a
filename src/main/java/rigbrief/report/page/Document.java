package rigbrief.report.page;

import java.util.Optional;

/** One sort of document that a build is made into. */
public interface Document {
    /** What it is called on the command line. */
    String word();

    /** The page; {@link PageWriter} makes HTML or PDF of it. */
    Page page(DocumentSubject subject, Words words);

    /** The same as plain text, with line feeds alone and one at the end. */
    String text(DocumentSubject subject, Words words);

    /** The same as CSV; empty for a document that is no list. */
    default Optional<String> csv(DocumentSubject subject) {
        return Optional.empty();
    }

    /** Whether it can be made only of a build with every required slot filled. */
    default boolean wholeMachine() {
        return false;
    }
}
