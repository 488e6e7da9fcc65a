package rigbrief.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.Candidates;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/** Draws builds that keep every rule: depth first, candidates of each slot in random order. */
public final class RandomBuilds {
    private static final int MOST_STEPS = 4_000;
    private static final List<Slot> ORDER =
            List.of(
                    Slot.PROCESSOR,
                    Slot.BOARD,
                    Slot.MEMORY,
                    Slot.CASE,
                    Slot.GRAPHICS,
                    Slot.COOLER,
                    Slot.WIRELESS,
                    Slot.BRACE,
                    Slot.SYSTEM,
                    Slot.DISPLAY,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.SUPPLY,
                    Slot.FANS,
                    Slot.CABLES);

    private final Assessor assessor;
    private final Candidates candidates;
    private final Random random;
    private final List<List<Rule>> rulesAt = new ArrayList<>();
    private int steps;

    /** Draws from the candidates of a brief. */
    public RandomBuilds(Assessor assessor, Candidates candidates, Random random) {
        this.assessor = assessor;
        this.candidates = candidates;
        this.random = random;
        ORDER.forEach(slot -> rulesAt.add(new ArrayList<>()));
        for (Rule rule : Rules.ALL) {
            int last = rule.reads().isEmpty() ? ORDER.size() - 1 : 0;
            for (Slot slot : rule.reads()) {
                last = Math.max(last, ORDER.indexOf(slot));
            }
            rulesAt.get(last).add(rule);
        }
    }

    /** The next build, one candidate a slot; empty when a few thousand steps met none. */
    public Optional<Map<Slot, Candidate>> next() {
        steps = 0;
        Map<Slot, Candidate> choices = new EnumMap<>(Slot.class);
        return decide(0, Build.empty(), choices) ? Optional.of(choices) : Optional.empty();
    }

    private boolean decide(int depth, Build build, Map<Slot, Candidate> choices) {
        if (depth == ORDER.size()) {
            return true;
        }
        Slot slot = ORDER.get(depth);
        List<Candidate> list = new ArrayList<>(candidates.of(slot));
        Collections.shuffle(list, random);
        for (Candidate candidate : list) {
            if (++steps > MOST_STEPS) {
                return false;
            }
            Build next = with(build, candidate);
            choices.put(slot, candidate);
            if (keeps(rulesAt.get(depth), next) && decide(depth + 1, next, choices)) {
                return true;
            }
        }
        choices.remove(slot);
        return false;
    }

    private static Build with(Build build, Candidate candidate) {
        return candidate.none()
                ? build.without(candidate.slot())
                : build.with(candidate.slot(), candidate.partOrNull(), candidate.pieces());
    }

    private boolean keeps(List<Rule> rules, Build build) {
        Assessment it = assessor.assess(build);
        for (Rule rule : rules) {
            if (rule.forbids(rule.check(it))) {
                return false;
            }
        }
        return true;
    }
}
