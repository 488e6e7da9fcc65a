package rigbrief.proposal.budget;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import rigbrief.proposal.solve.SideBySide;

/** Answers lists of independent questions, and tells how far it is. */
final class Questions {
    private final BooleanSupplier stop;
    private final Progress progress;
    private final AtomicInteger done = new AtomicInteger();
    private int asked;

    Questions(BooleanSupplier stop, Progress progress) {
        this.stop = stop;
        this.progress = progress;
    }

    /** How many more questions will come. */
    void expect(int more) {
        asked += more;
    }

    /** Whether the work was called off. */
    boolean calledOff() {
        return stop.getAsBoolean();
    }

    /** The answers, in the order of the questions. */
    <T> List<T> all(List<Supplier<T>> questions) {
        return SideBySide.map(questions, this::one);
    }

    private <T> T one(Supplier<T> question) {
        T answer = question.get();
        synchronized (progress) {
            progress.at(done.incrementAndGet(), asked);
        }
        return answer;
    }
}
