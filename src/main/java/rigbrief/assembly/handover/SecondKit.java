package rigbrief.assembly.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assembly.Bench;
import rigbrief.assess.Assessor;
import rigbrief.assess.Cost;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Kept;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/**
 * Twice the memory by the same kits once more in slots that are free, which no search proposes
 * since it fills a slot of the build with one order.
 */
final class SecondKit {
    private SecondKit() {}

    /** The step; empty when slots, rules, offers or money don't allow it. */
    static Optional<Upgrade> beside(Bench bench, Brief brief, String title) {
        Build build = bench.build();
        int pieces = build.pieces(Slot.MEMORY);
        if (2 * build.memoryModules() > build.board().memorySlots()) {
            return Optional.empty();
        }
        Build doubled = build.with(Slot.MEMORY, build.memory(), 2 * pieces);
        Bench then =
                Bench.of(keeping(brief, build), bench.it().catalogue(), doubled, bench.texts());
        Cost cost = cost(brief, bench, Build.empty().with(Slot.MEMORY, build.memory(), pieces));
        boolean offered = cost.unavailable().isEmpty();
        if (!then.audit().fits() || !offered || cost.totalMinor() > brief.ceiling().minorUnits()) {
            return Optional.empty();
        }
        String change =
                bench.say("next.second-kit", pieces, build.memory().name(), then.it().memoryMts());
        return Optional.of(
                new Upgrade(
                        title,
                        List.of(change),
                        Money.ofMinor(cost.totalMinor(), brief.currency()),
                        Gains.between(bench, then),
                        Gains.losses(bench, then),
                        true));
    }

    /** The memory is the client's own too: only what is added costs money. */
    private static Brief keeping(Brief brief, Build build) {
        List<Kept> keep = new ArrayList<>(brief.keep());
        keep.add(new Kept(Slot.MEMORY, build.memory(), build.pieces(Slot.MEMORY)));
        return new BriefDraft(brief).keep(keep).toBrief();
    }

    private static Cost cost(Brief brief, Bench bench, Build order) {
        return new Assessor(brief, bench.it().catalogue()).assess(order).cost();
    }
}
