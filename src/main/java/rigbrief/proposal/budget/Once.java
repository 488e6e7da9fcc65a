package rigbrief.proposal.budget;

import java.util.function.Supplier;

/**
 * An answer that other questions lean on: found once, by whoever asks first; others wait for it.
 *
 * <p>Whoever leans on an answer has to stand behind it in the list of questions, so that it is
 * being worked on by then and nobody waits for ever.
 *
 * @param <T> the answer
 */
final class Once<T> implements Supplier<T> {
    private Supplier<T> question;
    private T answer;

    Once(Supplier<T> question) {
        this.question = question;
    }

    @Override
    public synchronized T get() {
        if (question != null) {
            answer = question.get();
            question = null;
        }
        return answer;
    }
}
