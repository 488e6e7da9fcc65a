package rigbrief.report;

import java.util.List;
import rigbrief.assembly.handover.Care;
import rigbrief.assembly.handover.Handover;
import rigbrief.assembly.handover.PartPassport;
import rigbrief.assembly.handover.Setting;
import rigbrief.assembly.handover.Upgrade;
import rigbrief.report.page.DocumentSubject;

/** A handover sheet in plain text. */
public final class HandoverText implements Report<DocumentSubject> {
    private static final ReportInfo INFO =
            ReportInfo.text("handover-text", "a handover sheet for the owner");
    private static final int SLOT_COLUMNS = 12;
    private static final int PART_COLUMNS = 28;
    private static final int GUARANTEE_COLUMNS = 22;
    private static final int NEED_COLUMNS = 28;
    private static final int WHERE_COLUMNS = 18;
    private static final int NAME_COLUMNS = 24;
    private static final int VALUE_COLUMNS = 32;
    private static final String BLANK = "__________";

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(DocumentSubject subject, Style style) {
        Handover handover = Handover.of(subject.filed(), subject.bench());
        return new Writing(new TextPage(style), subject, handover).document();
    }

    private record Writing(TextPage page, DocumentSubject subject, Handover handover) {

        String document() {
            page.chapter("HANDOVER SHEET", "");
            page.paragraph(
                    0,
                    "For %s. Machine no. %s, handed over on %s by %s."
                            .formatted(BenchWords.machines(subject), BLANK, BLANK, BLANK));
            parts();
            promises();
            figures();
            settings();
            care();
            path();
            page.section("Keep together");
            HandoverWords.KEEP.forEach(line -> page.hanging("  - ", line));
            return page.blank().toString();
        }

        private void parts() {
            page.section("What it is");
            TextTable table =
                    new TextTable()
                            .left("place", SLOT_COLUMNS)
                            .left("part", PART_COLUMNS)
                            .left("guarantee", GUARANTEE_COLUMNS)
                            .left("serial number", BLANK.length());
            for (PartPassport part : handover.parts()) {
                table.row(
                        part.slot().word(),
                        HandoverWords.name(part),
                        HandoverWords.guarantee(part, subject),
                        BLANK);
            }
            page.table(table);
            page.paragraph(2, HandoverWords.GUARANTEE);
        }

        private void promises() {
            page.section("What was promised");
            TextTable table =
                    new TextTable()
                            .left("need", NEED_COLUMNS)
                            .right("asked")
                            .right("promised")
                            .right("range")
                            .left("measured", BLANK.length());
            for (NeedLine need : NeedLine.of(subject.brief(), subject.audit())) {
                table.row(
                        need.title(),
                        HandoverWords.asked(need),
                        HandoverWords.promised(need),
                        HandoverWords.range(need),
                        BLANK);
            }
            if (table.isEmpty()) {
                page.paragraph(2, "Nothing that is measured was asked for.");
            } else {
                page.table(table);
                page.paragraph(2, HandoverWords.range(subject));
            }
        }

        private void figures() {
            page.section("In use");
            HandoverWords.figures(handover.bench()).forEach(line -> page.hanging("  - ", line));
        }

        private void settings() {
            page.section("How it is set");
            TextTable table =
                    new TextTable()
                            .left("where", WHERE_COLUMNS)
                            .left("what", NAME_COLUMNS)
                            .left("set to", VALUE_COLUMNS);
            for (Setting setting : handover.settings()) {
                table.row(setting.where(), setting.name(), setting.value());
            }
            page.table(table);
        }

        private void care() {
            page.section("Care");
            for (Care care : handover.care()) {
                page.hanging("  " + care.when() + ": ", care.what());
            }
        }

        private void path() {
            page.section("What fits next");
            page.paragraph(2, HandoverWords.path(handover.path(), subject));
            for (Upgrade upgrade : handover.path().upgrades()) {
                page.blank().hanging("  ", HandoverWords.head(upgrade));
                upgrade.changes().forEach(change -> page.hanging("    + ", change));
                List<String> gains = upgrade.gains();
                gains.forEach(gain -> page.hanging("    = ", gain));
                upgrade.losses().forEach(loss -> page.hanging("    - slower: ", loss));
            }
            String nothing = HandoverWords.nothing(handover.path());
            if (!nothing.isEmpty()) {
                page.blank().paragraph(2, nothing);
            }
        }
    }
}
