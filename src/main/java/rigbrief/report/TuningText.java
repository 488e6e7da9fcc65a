package rigbrief.report;

import java.util.Optional;
import rigbrief.measurement.tune.FrameCap;
import rigbrief.measurement.tune.MenuLine;
import rigbrief.measurement.tune.SceneLine;
import rigbrief.measurement.tune.SceneLine.Pace;
import rigbrief.measurement.tune.TunedTitle;
import rigbrief.measurement.tune.Tuning;
import rigbrief.wording.Counted;

/** Settings and frame caps in plain text, a table per title. */
public final class TuningText implements Report<TuningAnswer> {
    private static final ReportInfo INFO =
            ReportInfo.text("tuning-text", "settings and frame caps for people");
    private static final int NAME_COLUMNS = 22;
    private static final int STEP_COLUMNS = 14;
    private static final int WHY_COLUMNS = 24;
    private static final double PERCENT = 100;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(TuningAnswer answer, Style style) {
        TextPage page = new TextPage(style);
        Tuning tuning = answer.tuning();
        page.chapter("Settings for each title", Counted.of(tuning.titles().size(), "title"));
        page.paragraph(
                0,
                "Build \"%s\" under the brief \"%s\". What is said to hold does so with a chance of"
                                .formatted(answer.name(), tuning.brief().name())
                        + " %d %%; frame rates are in frames per second (fps)."
                                .formatted(tuning.brief().confidencePercent()));
        if (tuning.titles().isEmpty()) {
            page.blank().paragraph(0, "The brief names no title that draws frames.");
        }
        for (TunedTitle title : tuning.titles()) {
            new Writing(page, tuning, title).write();
        }
        return page.blank().toString();
    }

    private record Writing(TextPage page, Tuning tuning, TunedTitle title) {
        void write() {
            page.blank();
            page.chapter(
                    title.title().title(),
                    title.cap().map(cap -> "cap " + TuningWords.fps(cap)).orElse("no cap"));
            for (String sentence : TuningWords.outcome(tuning, title)) {
                page.paragraph(0, sentence);
            }
            page.blank().table(menu());
            page.section("Frame cap");
            for (String sentence : TuningWords.cap(tuning, title)) {
                page.hanging("  ", sentence);
            }
            page.blank().table(scenes());
            page.blank();
            for (String sentence : TuningWords.mix(title)) {
                page.hanging("  ", sentence);
            }
        }

        private TextTable menu() {
            TextTable table =
                    new TextTable()
                            .left("in the menu", NAME_COLUMNS)
                            .left("set to", STEP_COLUMNS)
                            .left("highest", STEP_COLUMNS)
                            .left("why", WHY_COLUMNS)
                            .right("saves card")
                            .right("processor");
            for (MenuLine line : title.menu()) {
                table.row(
                        line.name(),
                        line.setTo(),
                        line.highest(),
                        TuningWords.why(line),
                        TuningWords.saved(line.cardPercent()),
                        TuningWords.saved(line.processorPercent()));
            }
            return table;
        }

        private TextTable scenes() {
            TextTable table =
                    new TextTable()
                            .left("scene", NAME_COLUMNS)
                            .right("of play")
                            .right("expected")
                            .right("range")
                            .left("limited by", STEP_COLUMNS)
                            .left("under the cap", WHY_COLUMNS);
            for (SceneLine line : title.scenes()) {
                table.row(
                        line.name(),
                        Rounded.print(0, line.share() * PERCENT, " %"),
                        Rounded.print(0, line.fps(), ""),
                        TuningWords.range(line),
                        line.processorBound() ? "processor" : "graphics",
                        underCap(line, title.cap()));
            }
            return table;
        }

        private static String underCap(SceneLine line, Optional<FrameCap> cap) {
            if (line.pace() == Pace.STEADY && cap.isPresent()) {
                return "steady " + TuningWords.fps(cap.get());
            }
            return TuningWords.pace(line);
        }
    }
}
