package rigbrief.search;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;

/**
 * One search by two certifiers, each with half of the processors and a space of its own.
 *
 * <p>They tell each other of their best builds when both have done so much work, and at no other
 * time: what each does then depends on nothing but its inputs, and the answer is the same on one
 * core.
 */
final class TwoHands {
    /** Work between two exchanges, growing: the first builds found cut the most. */
    private static final long FIRST_WORK = 64;

    private static final long MOST_WORK = 256;

    private final Certifier one;
    private final Certifier other;
    private final Objective objective;
    private final long steps;

    /**
     * Two hands for one search.
     *
     * @param problem the problem in one space
     * @param aside the same in another space over the same candidates
     * @param steps allowance of both together
     */
    TwoHands(
            Problem problem, Problem aside, Objective objective, long steps, BooleanSupplier stop) {
        this.one = new Certifier(problem, objective, steps, stop);
        this.other = new Certifier(aside, objective, steps, stop);
        this.objective = objective;
        this.steps = steps;
    }

    /** Runs from a known build, or from nothing. */
    Certificate run(Optional<Standing> incumbent) {
        try (Hands hands = new Hands("other-hand", 1)) {
            ExecutorService hand = hands.threads();
            Standing start = incumbent.orElse(null);
            Future<?> begun = hand.submit(() -> other.begin(start, 1, 2));
            one.begin(start, 0, 2);
            Hands.joined(begun);
            boolean oneDone = false;
            boolean otherDone = false;
            for (long work = FIRST_WORK; !oneDone || !otherDone; ) {
                share(oneDone, otherDone);
                long quantum = work;
                Future<Boolean> others = hand.submit(() -> other.goOn(quantum));
                oneDone = one.goOn(quantum);
                otherDone = Hands.joined(others);
                one.learn(other.best());
                other.learn(one.best());
                work = Math.min(MOST_WORK, 2 * work);
            }
        }
        return both(one.end(), other.end());
    }

    /** What is left of the allowance goes to whoever still has something to do. */
    private void share(boolean oneDone, boolean otherDone) {
        long left = steps - one.effort().used() - other.effort().used();
        long each = oneDone || otherDone ? left : left / 2;
        one.effort().limit(one.effort().used() + each);
        other.effort().limit(other.effort().used() + each);
    }

    private Certificate both(Certificate a, Certificate b) {
        Standing best = a.best().orElse(null);
        if (b.best().isPresent() && b.best().get().betterThan(best, objective)) {
            best = b.best().get();
        }
        return new Certificate(
                Optional.ofNullable(best),
                Math.max(a.bound(), b.bound()),
                a.complete() && b.complete(),
                a.steps() + b.steps());
    }
}
