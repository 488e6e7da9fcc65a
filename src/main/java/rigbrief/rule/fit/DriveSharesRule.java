package rigbrief.rule.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rigbrief.assess.Assessment;
import rigbrief.part.Share;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * What M.2 slots in use take away is not needed: SATA ports, or the slot under the graphics card.
 *
 * <p>Ports lost with enough left are a caution. The excess counts ports that lack because of it,
 * and one for a card's slot switched off.
 */
public final class DriveSharesRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "drive-shares",
                    "M.2 slots in use leave the ports that are needed",
                    Unit.PIECE,
                    Source.makersSheet("board, what M.2 slots share"));
    private static final Set<Slot> READS =
            Reads.of(Slot.BOARD, Slot.GRAPHICS, Slot.DRIVE, Slot.SECOND_DRIVE, Slot.CASE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    @Override
    public Finding check(Assessment it) {
        List<Share> shares = it.build().board().shares();
        int lost = 0;
        int cardOff = 0;
        for (int i = 0; i < shares.size(); i++) {
            if (it.layout().driveM2().contains(shares.get(i).m2())) {
                lost += shares.get(i).sataPorts().size() + shares.get(i).slotPositions().size();
                cardOff |= shares.get(i).slotPositions().contains(it.layout().cardFirst()) ? 1 : 0;
            }
        }
        int lacking = lacking(it) + cardOff;
        if (lacking > 0) {
            return Finding.breach(lacking, () -> words(it));
        }
        return lost == 0 ? Finding.MET : Finding.caution(() -> words(it));
    }

    /** SATA ports that lack because of sharing alone. */
    private static int lacking(Assessment it) {
        int left = it.layout().sataPortsLeft();
        int unshared = it.build().board().sataPorts() - DrivePlaceRule.sataDrives(it.build());
        return Math.max(0, Math.min(0, unshared) - Math.min(0, left));
    }

    /** What a used M.2 slot switches off: ports, slots or both. */
    private static Phrase off(Share share) {
        String ports = numbers(share.sataPorts());
        String slots = numbers(share.slotPositions());
        int portCount = share.sataPorts().size();
        int slotCount = share.slotPositions().size();
        if (slotCount == 0) {
            return Phrase.of("finding.drive-shares.ports-off", share.m2(), ports, portCount);
        }
        return portCount == 0
                ? Phrase.of("finding.drive-shares.slots-off", share.m2(), slots, slotCount)
                : Phrase.of(
                        "finding.drive-shares.off", share.m2(), ports, slots, portCount, slotCount);
    }

    private static String numbers(List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static Phrase words(Assessment it) {
        List<Phrase> words = new ArrayList<>();
        for (Share share : it.build().board().shares()) {
            if (it.layout().driveM2().contains(share.m2())) {
                words.add(off(share));
            }
        }
        words.add(Phrase.of("finding.drive-shares.left", it.layout().sataPortsLeft()));
        return Phrase.joined("; ", words);
    }
}
