package rigbrief.api;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.front.FrontFinder;
import rigbrief.wording.Phrase;

/** Fills an answer's front, for pages that let a reader walk along it. */
public final class FrontSearch {
    /** Steps of the certifier for the whole front; what a page needs is points, not proofs. */
    private static final long STEPS = 2_000;

    private FrontSearch() {}

    /**
     * The answer with more points on its front.
     *
     * @param time ceiling on the time of this search; its use is told among the remarks
     */
    public static Proposals widened(Proposals answer, Optional<Duration> time) {
        if (answer.proposals().size() < 2) {
            return answer;
        }
        long begin = System.nanoTime();
        boolean[] hit = {false};
        BooleanSupplier over =
                () -> {
                    boolean now =
                            time.isPresent() && System.nanoTime() - begin > time.get().toNanos();
                    hit[0] |= now;
                    return now;
                };
        List<FrontPoint> front = FrontFinder.find(answer.brief(), answer.catalogue(), STEPS, over);
        List<Phrase> remarks = new ArrayList<>(answer.remarks());
        if (hit[0]) {
            remarks.add(Phrase.of("remark.front-time"));
        }
        return new Proposals(
                answer.brief(),
                answer.catalogue(),
                answer.seed(),
                answer.proposals(),
                front,
                answer.clash(),
                remarks);
    }
}
