package rigbrief.report;

import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.proposal.Clash;
import rigbrief.proposal.clash.Change;
import rigbrief.proposal.clash.WayOut;
import rigbrief.quantity.Money;
import rigbrief.wording.Phrase;

/** Why no build meets the musts, and the ways out, in plain text. */
final class ClashText {
    private final TextPage page;
    private final Brief brief;

    ClashText(TextPage page, Brief brief) {
        this.page = page;
        this.brief = brief;
    }

    /** The clashing sets, what was found about them, and what can give way. */
    void write(Clash clash) {
        for (List<Phrase> set : clash.sets()) {
            page.section(
                    set.size() == 1
                            ? "This must can't be met"
                            : "These musts can't be met together");
            set.forEach(need -> page.hanging("  - ", need.toString()));
        }
        page.blank();
        clash.explanation().forEach(words -> page.paragraph(0, words.toString()));
        if (!clash.sets().isEmpty() && !clash.allSets()) {
            page.paragraph(0, "There may be other sets; these were found first.");
        }
        waysOut(clash.waysOut());
    }

    private void waysOut(List<WayOut> ways) {
        if (ways.isEmpty()) {
            return;
        }
        page.section("Ways out, each with a real build that meets everything else");
        TextTable table = new TextTable().left("let go", 30).left("from", 14).left("to", 17);
        table.right("total");
        for (WayOut way : ways) {
            String total = Money.ofMinor(way.totalMinor(), brief.currency()).grouped();
            String head = "";
            for (Change change : way.changes()) {
                table.row(
                        head + change.need(),
                        change.from().toString(),
                        change.to().toString(),
                        head.isEmpty() ? total + (way.proven() ? "" : " *") : "");
                head = "and ";
            }
        }
        page.table(table);
        page.paragraph(
                2,
                "To: what that build reaches. Total: least for it, in "
                        + brief.currency().getCurrencyCode()
                        + (ways.stream().allMatch(WayOut::proven)
                                ? ", proven."
                                : "; a star: a cheaper one is not ruled out."));
    }
}
