package rigbrief.proposal.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/** Works on a list of independent questions with two threads; the answers keep the order. */
public final class SideBySide {
    private static final int THREADS = 2;

    private SideBySide() {}

    /** The answer to each question, in the order of the questions. */
    public static <Q, A> List<A> map(List<Q> questions, Function<Q, A> answer) {
        if (questions.size() < 2) {
            return questions.stream().map(answer).toList();
        }
        ExecutorService hands =
                Executors.newFixedThreadPool(
                        THREADS,
                        work -> {
                            Thread thread = new Thread(work, "side-by-side");
                            thread.setDaemon(true);
                            return thread;
                        });
        try {
            List<Future<A>> answers = new ArrayList<>();
            for (Q question : questions) {
                answers.add(hands.submit(() -> answer.apply(question)));
            }
            List<A> all = new ArrayList<>();
            for (Future<A> one : answers) {
                all.add(joined(one));
            }
            return all;
        } finally {
            end(hands);
        }
    }

    /** Done with, they are idle: a moment is enough, and then none is left behind. */
    private static void end(ExecutorService hands) {
        hands.shutdownNow();
        try {
            hands.awaitTermination(1, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static <A> A joined(Future<A> answer) {
        try {
            return answer.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while waiting for a search", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (e.getCause() instanceof Error cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
