package rigbrief.proposal.clash;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigbrief.assess.Foresight;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Memory;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.search.SearchSpace;

/**
 * What the needs of a brief leave of each slot: the candidates, and of processors and cards those
 * with which the workloads' musts can be met whatever else is in the machine.
 */
final class Left {
    private final Map<Slot, List<Candidate>> bySlot = new EnumMap<>(Slot.class);
    private final Map<Slot, Integer> offered = new EnumMap<>(Slot.class);
    private boolean cardWanted;

    private Left() {}

    static Left of(SearchSpace space) {
        Left left = new Left();
        for (Slot slot : Slot.values()) {
            left.bySlot.put(slot, FitReasons.filled(space.candidates().of(slot)));
            left.offered.put(slot, space.assessor().catalogue().parts(slot.kind()).size());
        }
        if (space.assessor().brief().workloads().stream().anyMatch(w -> w.must().isPresent())) {
            left.keepAble(space);
        }
        return left;
    }

    List<Candidate> of(Slot slot) {
        return bySlot.get(slot);
    }

    /** Whether the needs left less than half of the parts that the catalogue has. */
    boolean narrowed(Slot slot) {
        long parts = of(slot).stream().map(Candidate::partOrNull).distinct().count();
        return 2 * parts < offered.get(slot);
    }

    /** Whether every build has something in a slot that may stay empty. */
    boolean filled(Slot slot) {
        return slot == Slot.GRAPHICS && cardWanted;
    }

    private void keepAble(SearchSpace space) {
        Drive fastest = fastest();
        Foresight foresight = new Foresight(space.assessor(), rates(), fastest, fastest, List.of());
        Set<Candidate> cards = new LinkedHashSet<>();
        List<Candidate> processors = new ArrayList<>();
        boolean withoutCard = false;
        for (Candidate processor : of(Slot.PROCESSOR)) {
            Processor chip = (Processor) processor.partOrNull();
            boolean any = met(foresight.atMemory(chip, null, fastest, true));
            withoutCard |= any;
            for (Candidate card : of(Slot.GRAPHICS)) {
                Graphics graphics = (Graphics) card.partOrNull();
                if (met(foresight.atMemory(chip, graphics, fastest, true))) {
                    any = true;
                    cards.add(card);
                }
            }
            if (any) {
                processors.add(processor);
            }
        }
        cardWanted = !withoutCard;
        if (!cards.isEmpty() && cardWanted) {
            bySlot.put(Slot.GRAPHICS, List.copyOf(cards));
        }
        if (!processors.isEmpty()) {
            bySlot.put(Slot.PROCESSOR, processors);
        }
    }

    private List<Integer> rates() {
        List<Integer> rates = new ArrayList<>();
        for (Candidate kit : of(Slot.MEMORY)) {
            rates.add(((Memory) kit.partOrNull()).mts());
        }
        return rates;
    }

    private Drive fastest() {
        Drive fastest = null;
        for (Candidate candidate : of(Slot.DRIVE)) {
            Drive drive = (Drive) candidate.partOrNull();
            fastest = fastest == null || drive.readMbs() > fastest.readMbs() ? drive : fastest;
        }
        return fastest;
    }

    private static boolean met(List<Prediction> predictions) {
        for (Prediction prediction : predictions) {
            for (Promise promise : prediction.promises()) {
                if (promise.must() && !promise.met()) {
                    return false;
                }
            }
        }
        return true;
    }
}
