package rigbrief.proposal.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Future;
import java.util.function.Function;
import rigbrief.search.Hands;

/** Works on a list of independent questions with two threads; the answers keep the order. */
public final class SideBySide {
    private static final int THREADS = 2;

    private SideBySide() {}

    /** The answer to each question, in the order of the questions. */
    public static <Q, A> List<A> map(List<Q> questions, Function<Q, A> answer) {
        if (questions.size() < 2) {
            return questions.stream().map(answer).toList();
        }
        try (Hands hands = new Hands("side-by-side", THREADS)) {
            List<Future<A>> answers = new ArrayList<>();
            for (Q question : questions) {
                answers.add(hands.threads().submit(() -> answer.apply(question)));
            }
            return answers.stream().map(Hands::joined).toList();
        }
    }
}
