package rigbrief.rule;

import java.util.Optional;
import java.util.function.Supplier;
import rigbrief.part.Fact;
import rigbrief.quantity.Quantity;
import rigbrief.quantity.Unit;
import rigbrief.wording.Phrase;

/**
 * One rule's remark on a build.
 *
 * <p>Words are made only when somebody reads them: the search asks for nothing but the excess,
 * millions of times.
 */
public sealed interface Finding {
    /** Nothing to say and nothing to measure. */
    Finding MET = new Met(Optional.empty());

    /**
     * By how much the rule is broken, in its unit; 0 when it is not. Always positive for a breach.
     */
    default long excess() {
        return 0;
    }

    /** What there is against what is needed, where that can be measured. */
    Optional<Margin> margin();

    /** What to tell a person; nothing when the rule is simply met. */
    default Phrase phrase() {
        return Phrase.NONE;
    }

    /** The same in English; empty when the rule is simply met. */
    default String text() {
        return phrase().toString();
    }

    /**
     * The rule is met.
     *
     * @param margin what there is against what is needed
     */
    record Met(Optional<Margin> margin) implements Finding {}

    /**
     * Something worth knowing.
     *
     * @param words what to tell
     * @param margin what there is against what is needed
     */
    record Note(Supplier<Phrase> words, Optional<Margin> margin) implements Finding {
        @Override
        public Phrase phrase() {
            return words.get();
        }
    }

    /**
     * Something to look at, or a cell that is empty.
     *
     * @param words what to tell
     * @param margin what there is against what is needed
     */
    record Caution(Supplier<Phrase> words, Optional<Margin> margin) implements Finding {
        @Override
        public Phrase phrase() {
            return words.get();
        }
    }

    /**
     * The rule is broken.
     *
     * @param excess by how much, at least 1
     * @param words what to tell
     * @param margin what there is against what is needed
     */
    record Breach(long excess, Supplier<Phrase> words, Optional<Margin> margin) implements Finding {
        public Breach {
            if (excess < 1) {
                throw new IllegalArgumentException(
                        "found a breach of %d, expected at least 1; a rule that is not broken gives another finding"
                                .formatted(excess));
            }
        }

        @Override
        public Phrase phrase() {
            return words.get();
        }
    }

    /** A note. */
    static Finding note(Supplier<Phrase> words) {
        return new Note(words, Optional.empty());
    }

    /** A caution. */
    static Finding caution(Supplier<Phrase> words) {
        return new Caution(words, Optional.empty());
    }

    /** A breach with nothing to measure beside its size. */
    static Finding breach(long excess, Supplier<Phrase> words) {
        return new Breach(excess, words, Optional.empty());
    }

    /** Met when a condition holds; else a breach of one. */
    static Finding require(boolean holds, Supplier<Phrase> words) {
        return holds ? MET : breach(1, words);
    }

    /** Met at an excess of 0; a breach of any greater one. */
    static Finding unlessZero(long excess, Supplier<Phrase> words) {
        return excess == 0 ? MET : breach(excess, words);
    }

    /**
     * Met while the need is at most what there is, equality included; else a breach of the
     * difference.
     */
    static Finding atMost(long need, long have, Unit unit, Supplier<Phrase> words) {
        Optional<Margin> margin = Optional.of(new Margin(have, need, unit));
        return need <= have ? new Met(margin) : new Breach(need - have, words, margin);
    }

    /** The same for data-sheet figures; an empty cell on either side is a caution that names it. */
    static <Q extends Quantity> Finding atMost(Fact<Q> need, Fact<Q> have, Supplier<Phrase> words) {
        if (need instanceof Fact.Stated<Q> needed && have instanceof Fact.Stated<Q> had) {
            return atMost(
                    needed.value().amount(), had.value().amount(), needed.value().unit(), words);
        }
        return unknown(need.stated() ? have : need);
    }

    /** A caution that names an empty cell. */
    static Finding unknown(Fact<?> fact) {
        if (!(fact instanceof Fact.NotStated<?> empty)) {
            throw new IllegalArgumentException(
                    "found the stated figure %s, expected an empty cell; judge the figure instead"
                            .formatted(fact));
        }
        return caution(() -> Phrase.of("finding.unknown", empty.column(), empty.part()));
    }
}
