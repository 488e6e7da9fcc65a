package rigbrief.report;

import java.util.List;
import java.util.Locale;
import rigbrief.assembly.handover.Care;
import rigbrief.assembly.handover.Handover;
import rigbrief.assembly.handover.PartPassport;
import rigbrief.assembly.handover.Setting;
import rigbrief.assembly.handover.Upgrade;
import rigbrief.report.page.DocumentSubject;
import rigbrief.report.page.Words;

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
        return write(subject, style, Words.of(Locale.ENGLISH));
    }

    /** The same in the reader's language. */
    public String write(DocumentSubject subject, Style style, Words words) {
        Handover handover = Handover.of(subject.filed(), subject.bench(words.texts()));
        return new Writing(new TextPage(style), subject, handover, words).document();
    }

    private record Writing(TextPage page, DocumentSubject subject, Handover handover, Words words) {

        String document() {
            page.chapter(words.text("hand.head"), "");
            page.paragraph(0, words.text("hand.for", BenchWords.machines(subject, words), BLANK));
            parts();
            promises();
            figures();
            settings();
            care();
            path();
            page.section(words.text("hand.keep"));
            HandoverWords.keep(words).forEach(line -> page.hanging("  - ", line));
            return page.blank().toString();
        }

        private void parts() {
            page.section(words.text("hand.parts"));
            TextTable table =
                    new TextTable()
                            .left(words.text("column.place"), SLOT_COLUMNS)
                            .left(words.text("column.part"), PART_COLUMNS)
                            .left(words.text("column.guarantee"), GUARANTEE_COLUMNS)
                            .left(words.text("column.serial"), BLANK.length());
            for (PartPassport part : handover.parts()) {
                table.row(
                        words.text("slot.lower." + part.slot().word()),
                        HandoverWords.name(part),
                        HandoverWords.guarantee(part, subject, words),
                        BLANK);
            }
            page.table(table);
            page.paragraph(2, HandoverWords.guarantee(words));
        }

        private void promises() {
            page.section(words.text("hand.promised"));
            TextTable table =
                    new TextTable()
                            .left(words.text("column.need"), NEED_COLUMNS)
                            .right(words.text("column.asked"))
                            .right(words.text("column.promised"))
                            .right(words.text("column.range"))
                            .left(words.text("column.measured"), BLANK.length());
            for (NeedLine need : NeedLine.of(subject.brief(), subject.audit())) {
                table.row(
                        HandoverWords.title(need, words),
                        HandoverWords.asked(need, words),
                        HandoverWords.promised(need, words),
                        HandoverWords.range(need, words),
                        BLANK);
            }
            if (table.isEmpty()) {
                page.paragraph(2, words.text("hand.none"));
            } else {
                page.table(table);
                page.paragraph(2, HandoverWords.range(subject, words));
            }
        }

        private void figures() {
            page.section(words.text("hand.use"));
            HandoverWords.figures(handover.bench(), words)
                    .forEach(line -> page.hanging("  - ", line));
        }

        private void settings() {
            page.section(words.text("hand.settings"));
            TextTable table =
                    new TextTable()
                            .left(words.text("column.where"), WHERE_COLUMNS)
                            .left(words.text("column.what"), NAME_COLUMNS)
                            .left(words.text("column.set-to"), VALUE_COLUMNS);
            for (Setting setting : handover.settings()) {
                table.row(setting.where(), setting.name(), setting.value());
            }
            page.table(table);
        }

        private void care() {
            page.section(words.text("hand.care"));
            for (Care care : handover.care()) {
                page.hanging("  " + care.when() + ": ", care.what());
            }
        }

        private void path() {
            page.section(words.text("hand.next"));
            page.paragraph(2, HandoverWords.path(subject, words));
            for (Upgrade upgrade : handover.path().upgrades()) {
                page.blank().hanging("  ", HandoverWords.head(upgrade, words));
                upgrade.changes().forEach(change -> page.hanging("    + ", change));
                List<String> gains = upgrade.gains();
                gains.forEach(gain -> page.hanging("    = ", gain));
                upgrade.losses()
                        .forEach(loss -> page.hanging("    - ", words.text("hand.slower", loss)));
            }
            String nothing = HandoverWords.nothing(handover.path(), words);
            if (!nothing.isEmpty()) {
                page.blank().paragraph(2, nothing);
            }
        }
    }
}
