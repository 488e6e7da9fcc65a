package rigbrief.proposal.clash;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Finding;
import rigbrief.rule.Rule;
import rigbrief.rule.Source;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.wording.Phrase;

/**
 * Names the rules of fit behind a clash: those that leave nothing where the needs leave little.
 *
 * <p>For every rule the parts that the needs leave of its slots are tried on each other; a rule
 * that refuses every combination stands in the way by itself. Of each such rule the nearest miss is
 * told in the rule's own words.
 */
final class FitReasons {
    private static final int FEWEST_SLOTS = 2;
    private static final int MOST_SLOTS = 3;
    private static final long MOST_COMBINATIONS = 60_000;
    private static final int MOST_REASONS = 3;

    private final Catalogue catalogue;

    FitReasons(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** One sentence per rule; none when the needs clash whatever fits. */
    List<Phrase> of(Brief brief) {
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (space.candidates().impossible()) {
            return List.of();
        }
        Left left = Left.of(space);
        Set<Phrase> sentences = new LinkedHashSet<>();
        for (Rule rule : space.within(0).rules()) {
            boolean ofFit = !(rule.info().source() instanceof Source.ClientsBrief);
            if (ofFit && sentences.size() < MOST_REASONS) {
                sentence(space, rule, left).ifPresent(sentences::add);
            }
        }
        return List.copyOf(sentences);
    }

    private static Optional<Phrase> sentence(SearchSpace space, Rule rule, Left left) {
        List<Slot> slots = slots(rule, left);
        if (slots.size() < FEWEST_SLOTS || combinations(slots, left) > MOST_COMBINATIONS) {
            return Optional.empty();
        }
        Trial trial = new Trial(space, rule, slots, left);
        trial.run(0, Build.empty());
        return trial.sentence();
    }

    /**
     * The slots that matter: those that have to be filled, and the card where the needs want one.
     */
    private static List<Slot> slots(Rule rule, Left left) {
        Set<Slot> slots = EnumSet.noneOf(Slot.class);
        for (Slot slot : rule.reads()) {
            if (slot.required() || left.filled(slot)) {
                slots.add(slot);
            }
        }
        return slots.size() > MOST_SLOTS ? List.of() : new ArrayList<>(slots);
    }

    private static long combinations(List<Slot> slots, Left left) {
        long combinations = 1;
        for (Slot slot : slots) {
            combinations = Math.min(MOST_COMBINATIONS + 1, combinations * left.of(slot).size());
        }
        return combinations;
    }

    /** Tries every combination of the parts left for a rule's slots, until one is allowed. */
    private static final class Trial {
        private final SearchSpace space;
        private final Rule rule;
        private final List<Slot> slots;
        private final Left left;
        private boolean allowed;
        private long leastExcess = Long.MAX_VALUE;
        private Assessment nearest;

        Trial(SearchSpace space, Rule rule, List<Slot> slots, Left left) {
            this.space = space;
            this.rule = rule;
            this.slots = slots;
            this.left = left;
        }

        void run(int depth, Build build) {
            if (depth == slots.size()) {
                judge(build);
                return;
            }
            for (Candidate candidate : left.of(slots.get(depth))) {
                if (!allowed) {
                    run(
                            depth + 1,
                            build.with(
                                    candidate.slot(), candidate.partOrNull(), candidate.pieces()));
                }
            }
        }

        private void judge(Build build) {
            Assessment it = space.assessor().assess(build);
            if (!Problem.askable(rule, build)) {
                allowed = true;
                return;
            }
            Finding finding = rule.check(it);
            allowed = !rule.forbids(finding);
            if (!allowed && nearer(finding.excess(), build)) {
                leastExcess = finding.excess();
                nearest = it;
            }
        }

        /** Of misses that are equally near the first by id counts, in whatever order they come. */
        private boolean nearer(long excess, Build build) {
            return excess < leastExcess
                    || excess == leastExcess
                            && nearest != null
                            && ids(build).compareTo(ids(nearest.build())) < 0;
        }

        private String ids(Build build) {
            List<String> ids = new ArrayList<>();
            slots.forEach(slot -> ids.add(build.part(slot).id()));
            return String.join(" ", ids);
        }

        Optional<Phrase> sentence() {
            if (allowed || nearest == null) {
                return Optional.empty();
            }
            List<Phrase> counts = new ArrayList<>();
            List<String> names = new ArrayList<>();
            for (Slot slot : told()) {
                counts.add(
                        Phrase.of(
                                "clash.left",
                                Phrase.of("slot.name." + slot.word()),
                                left.of(slot).size()));
                names.add(nearest.build().part(slot).name());
            }
            return Optional.of(
                    Phrase.of(
                            "clash.rule",
                            rule.info().id(),
                            Phrase.joined(", ", counts),
                            with(names),
                            rule.check(nearest).phrase(),
                            Phrase.titled("rule." + rule.info().id(), rule.info().title())));
        }

        private static Phrase with(List<String> names) {
            Phrase all = Phrase.data(names.get(0));
            for (String name : names.subList(1, names.size())) {
                all = Phrase.of("clash.with", all, name);
            }
            return all;
        }

        /** Slots of which the needs leave little; all of them where that is none. */
        private List<Slot> told() {
            List<Slot> narrowed = new ArrayList<>();
            for (Slot slot : slots) {
                if (left.narrowed(slot)) {
                    narrowed.add(slot);
                }
            }
            return narrowed.isEmpty() ? slots : narrowed;
        }
    }

    /** An unmodifiable view of a list, cut to what is filled. */
    static List<Candidate> filled(List<Candidate> candidates) {
        List<Candidate> filled = new ArrayList<>();
        for (Candidate candidate : candidates) {
            if (!candidate.none()) {
                filled.add(candidate);
            }
        }
        return Collections.unmodifiableList(filled);
    }
}
