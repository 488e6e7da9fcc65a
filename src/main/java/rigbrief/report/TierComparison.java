package rigbrief.report;

import java.util.List;
import java.util.function.Function;
import rigbrief.audit.Audit;
import rigbrief.audit.Audit.Figures;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.quantity.Money;

/** A table of what differs between the tiers. */
final class TierComparison {
    private static final int SLOT_COLUMNS = 13;
    private static final int TIER_COLUMNS = 19;

    private TierComparison() {}

    /** Figures first, then each slot that is not filled alike in all tiers. */
    static TextTable of(Proposals answer) {
        List<Proposal> proposals = answer.proposals();
        TextTable table = new TextTable().left("", SLOT_COLUMNS);
        proposals.forEach(proposal -> table.left(proposal.tier().word(), TIER_COLUMNS));
        row(
                table,
                "total",
                proposals,
                audit ->
                        Money.ofMinor(audit.cost().totalMinor(), answer.brief().currency())
                                .grouped());
        row(table, "utility", proposals, audit -> GoalShare.utility(audit).toPlainString());
        row(
                table,
                "noise, load",
                proposals,
                audit -> Rounded.print(1, figures(audit).load().levelDba(), " dB(A)"));
        row(
                table,
                "wall, load",
                proposals,
                audit -> Rounded.print(0, figures(audit).power().wallW(), " W"));
        for (Slot slot : Slot.values()) {
            if (differs(slot, proposals)) {
                row(table, slot.word(), proposals, audit -> part(audit.build(), slot));
            }
        }
        return table;
    }

    private static void row(
            TextTable table, String head, List<Proposal> proposals, Function<Audit, String> cell) {
        String[] cells = new String[proposals.size() + 1];
        cells[0] = head;
        for (int i = 1; i < cells.length; i++) {
            cells[i] = cell.apply(proposals.get(i - 1).audit());
        }
        table.row(cells);
    }

    private static Figures figures(Audit audit) {
        return audit.figures().orElseThrow();
    }

    private static boolean differs(Slot slot, List<Proposal> proposals) {
        String first = part(proposals.get(0).audit().build(), slot);
        return proposals.stream()
                .anyMatch(proposal -> !part(proposal.audit().build(), slot).equals(first));
    }

    private static String part(Build build, Slot slot) {
        if (!build.has(slot)) {
            return "-";
        }
        int pieces = build.pieces(slot);
        return (pieces > 1 ? pieces + " x " : "") + build.part(slot).name();
    }
}
