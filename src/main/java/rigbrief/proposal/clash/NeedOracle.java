package rigbrief.proposal.clash;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.solve.Answer;
import rigbrief.proposal.solve.Least;
import rigbrief.proposal.solve.Solving;

/**
 * Whether some of a brief's musts can be met together.
 *
 * <p>A part of what can be met can be met too, and more than what can't be met can't; a build that
 * was found answers for every set that it meets. Only what remains is searched.
 */
final class NeedOracle implements Function<BitSet, Answer> {
    private final Needs needs;
    private final Solving solving;
    private final List<BitSet> possible = new ArrayList<>();
    private final List<BitSet> impossible = new ArrayList<>();
    private final Map<BitSet, Answer> answers = new HashMap<>();
    private final List<Build> builds = new ArrayList<>();

    NeedOracle(Needs needs, Solving solving) {
        this.needs = needs;
        this.solving = solving;
    }

    @Override
    public Answer apply(BitSet kept) {
        for (BitSet other : possible) {
            if (HittingSets.within(kept, other)) {
                return Answer.YES;
            }
        }
        for (BitSet other : impossible) {
            if (HittingSets.within(other, kept)) {
                return Answer.NO;
            }
        }
        return answers.computeIfAbsent((BitSet) kept.clone(), this::search);
    }

    /**
     * A part of the client's own that nobody insists on may be used all the same, free of charge:
     * so it is tried both ways.
     */
    private Answer search(BitSet kept) {
        Answer answer = Answer.NO;
        for (BitSet tried : withOwn(kept)) {
            Answer one = searchAsIs(tried);
            if (one == Answer.YES) {
                answer = one;
                break;
            }
            answer = one == Answer.NOT_KNOWN ? one : answer;
        }
        if (answer == Answer.YES) {
            possible.add(kept);
        } else if (answer == Answer.NO) {
            impossible.add(kept);
        }
        return answer;
    }

    /** The set itself, and with each and all of the client's own parts that are not in it. */
    private List<BitSet> withOwn(BitSet kept) {
        List<BitSet> tried = new ArrayList<>();
        tried.add(kept);
        BitSet all = (BitSet) kept.clone();
        for (int i = 0; i < needs.musts().size(); i++) {
            if (!kept.get(i) && needs.musts().get(i).kind() == Need.Kind.OWN) {
                BitSet one = (BitSet) kept.clone();
                one.set(i);
                tried.add(one);
                all.set(i);
            }
        }
        if (tried.size() > 2) {
            tried.add(all);
        }
        return tried;
    }

    private Answer searchAsIs(BitSet kept) {
        Brief brief = needs.keeping(kept);
        Answer answer = Answer.NOT_KNOWN;
        for (Build build : builds) {
            if (solving.fits(build, brief)) {
                answer = Answer.YES;
            }
        }
        if (answer != Answer.YES) {
            Least found = solving.first(brief);
            answer = found.answer();
            found.best().ifPresent(standing -> builds.add(standing.build()));
        }
        return answer;
    }

    /** Builds that were found on the way. */
    List<Build> builds() {
        return List.copyOf(builds);
    }
}
