package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.Candidates;
import rigbrief.presolve.ReplacementCandidates;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;
import rigbrief.wording.Counted;

/** Says why there is no replacement: which rules refuse what might take a lost part's place. */
final class NoWayOut {
    private static final int MOST_RULES = 4;

    private final Situation situation;
    private final Assessor assessor;
    private final Candidates usual;
    private final ReplacementCandidates candidates;
    private final Set<Slot> lost;

    NoWayOut(
            Situation situation,
            Assessor assessor,
            Candidates usual,
            ReplacementCandidates candidates,
            Set<Slot> lost) {
        this.situation = situation;
        this.assessor = assessor;
        this.usual = usual;
        this.candidates = candidates;
        this.lost = lost;
    }

    /** The reasons, in sentences. */
    List<String> reasons(boolean proven) {
        List<String> why = new ArrayList<>();
        why.add(
                proven
                        ? "No build of today's offers keeps every must, even if everything may"
                                + " change."
                        : "No build was found before the step limit; it is not proven that there is"
                                + " none.");
        for (Slot slot : lost) {
            refusals(slot).ifPresent(why::add);
        }
        return why;
    }

    /** Which rules refuse what else might go into a lost slot, while nothing else changes. */
    private Optional<String> refusals(Slot slot) {
        if (candidates.all(slot).isEmpty()) {
            return Optional.of(nothingOnOffer(slot));
        }
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Candidate candidate : candidates.all(slot)) {
            Build other =
                    candidate.none()
                            ? situation.build().without(slot)
                            : situation
                                    .build()
                                    .with(slot, candidate.partOrNull(), candidate.pieces());
            firstBroken(assessor.assess(other))
                    .ifPresent(rule -> counts.merge(rule, 1, Integer::sum));
        }
        int ways = candidates.all(slot).size();
        StringBuilder words =
                new StringBuilder(
                        "With nothing else changed, %s to fill slot %s %s refused:"
                                .formatted(
                                        Counted.of(ways, "way"),
                                        slot.word(),
                                        ways == 1 ? "is" : "are"));
        counts.entrySet().stream()
                .sorted(
                        Map.Entry.<String, Integer>comparingByValue()
                                .reversed()
                                .thenComparing(Map.Entry.comparingByKey()))
                .limit(MOST_RULES)
                .forEach(
                        entry ->
                                words.append(words.charAt(words.length() - 1) == ':' ? " " : ", ")
                                        .append(entry.getValue())
                                        .append(" by rule ")
                                        .append(entry.getKey()));
        return Optional.of(words.append('.').toString());
    }

    private String nothingOnOffer(Slot slot) {
        StringBuilder words = new StringBuilder("Nothing on offer can go into slot " + slot.word());
        usual.refused()
                .getOrDefault(slot, Map.of())
                .forEach(
                        (rule, count) ->
                                words.append(", %d refused by rule %s".formatted(count, rule)));
        return words.append('.').toString();
    }

    private Optional<String> firstBroken(Assessment it) {
        for (Rule rule : Rules.ALL) {
            if (rule.forbids(rule.check(it))) {
                return Optional.of(rule.info().id());
            }
        }
        return Optional.empty();
    }
}
