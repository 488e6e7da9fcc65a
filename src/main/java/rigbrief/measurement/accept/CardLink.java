package rigbrief.measurement.accept;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.build.Build;
import rigbrief.model.pcie.PcieLink;
import rigbrief.part.ExpansionSlot;
import rigbrief.part.Slot;

/**
 * The link between card and board.
 *
 * <p>Formula: a frame moves a share of the card's memory traffic over the link; a narrower link
 * adds that share x (1 / its rate - 1 / the planned rate), and lengthens the way out of a full
 * graphics memory in the ratio of the rates.
 *
 * <p>Common practice: 0.3 % of the traffic, with which a quarter of the lanes costs a fast card
 * some 5 to 10 %; the slot nearest the processor is the one to use.
 */
final class CardLink {
    /** Share of the card's memory traffic that crosses the link. Common practice. */
    static final double TRAFFIC_SHARE = 0.003;

    private static final double BYTES_PER_GB = 1e9;
    private static final List<Integer> NARROWER = List.of(8, 4, 1);

    private CardLink() {}

    /** The planned link; empty without a card, or where the board has no slot for it. */
    static Optional<PcieLink> planned(Build build) {
        if (!build.has(Slot.GRAPHICS)) {
            return Optional.empty();
        }
        PcieLink card =
                new PcieLink(build.graphics().bus().generation(), build.graphics().bus().lanes());
        return build.board().slots().stream()
                .filter(slot -> slot.lanes() == 16)
                .min((one, other) -> Integer.compare(one.position(), other.position()))
                .map(slot -> card.with(new PcieLink(slot.generation(), slot.lanes())));
    }

    /** Links that a card ends up behind in a wrong slot, or with dirty or bent contacts. */
    static List<PcieLink> narrower(Build build) {
        Optional<PcieLink> planned = planned(build);
        List<PcieLink> links = new ArrayList<>();
        if (planned.isPresent()) {
            int oldest = oldestGeneration(build, planned.get());
            for (int lanes : NARROWER) {
                if (lanes < planned.get().lanes()) {
                    links.add(new PcieLink(planned.get().generation(), lanes));
                    if (oldest < planned.get().generation()) {
                        links.add(new PcieLink(oldest, lanes));
                    }
                }
            }
        }
        return links;
    }

    private static int oldestGeneration(Build build, PcieLink planned) {
        return build.board().slots().stream()
                .mapToInt(ExpansionSlot::generation)
                .min()
                .orElse(planned.generation());
    }

    /** Time that a link adds for each GB of the card's memory traffic, in s. */
    static double addedS(PcieLink planned, PcieLink narrow) {
        double each = 1 / narrow.bytesPerSecond() - 1 / planned.bytesPerSecond();
        return TRAFFIC_SHARE * BYTES_PER_GB * each;
    }

    /** By how much it lengthens the way out of a full graphics memory. */
    static double times(PcieLink planned, PcieLink narrow) {
        return planned.bytesPerSecond() / narrow.bytesPerSecond();
    }
}
