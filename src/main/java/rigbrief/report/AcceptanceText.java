package rigbrief.report;

import java.util.List;
import rigbrief.measurement.accept.Acceptance;
import rigbrief.measurement.accept.Cause;
import rigbrief.measurement.accept.JudgedLine;
import rigbrief.measurement.accept.JudgedLine.Verdict;
import rigbrief.measurement.accept.LineUnit;
import rigbrief.measurement.accept.RankedCause;
import rigbrief.measurement.accept.RankedCause.Effect;

/** A judged acceptance test in plain text. */
public final class AcceptanceText implements Report<AcceptanceAnswer> {
    private static final ReportInfo INFO =
            ReportInfo.text("acceptance-text", "a judged acceptance test for people");
    private static final int MOST_CAUSES = 5;
    private static final int WHAT_COLUMNS = 30;
    private static final int PROMISED_COLUMNS = 18;
    private static final int CAUSE_COLUMNS = 28;
    private static final int ADVICE_COLUMNS = 36;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(AcceptanceAnswer answer, Style style) {
        TextPage page = new TextPage(style);
        Acceptance test = answer.acceptance();
        page.chapter(headline(test), test.brief().client());
        page.paragraph(
                0,
                "Build \"%s\" under the brief \"%s\": %s."
                        .formatted(answer.name(), test.brief().name(), counts(test)));
        lines(page, test, Verdict.FAIL, "Broken promises");
        lines(page, test, Verdict.SUSPECT, "Suspect: outside what was expected");
        betterThanExpected(page, test);
        lines(page, test, Verdict.PASS, "As expected");
        passed(page, test);
        open(page, test);
        if (!test.causes().isEmpty()) {
            causes(page, test.causes());
        }
        return page.blank().toString();
    }

    private static String headline(Acceptance test) {
        if (!test.kept()) {
            return "NOT ACCEPTED";
        }
        if (test.count(Verdict.SUSPECT) > 0) {
            return "PROMISES KEPT, LOOK AGAIN";
        }
        if (test.count(Verdict.OPEN) == test.lines().size()) {
            return "NOTHING MEASURED";
        }
        return test.count(Verdict.OPEN) > 0 ? "PROMISES KEPT SO FAR" : "ACCEPTED";
    }

    private static String counts(Acceptance test) {
        return "%d broken, %d suspect, %d as expected, %d not measured"
                .formatted(
                        test.count(Verdict.FAIL),
                        test.count(Verdict.SUSPECT),
                        test.count(Verdict.PASS),
                        test.count(Verdict.OPEN));
    }

    /** What was only answered with pass takes a sentence, no table. */
    private static void passed(TextPage page, Acceptance test) {
        List<String> passed =
                test.lines().stream()
                        .filter(judged -> judged.verdict() == Verdict.PASS)
                        .filter(judged -> judged.line().unit() == LineUnit.CHECK)
                        .map(judged -> judged.line().what())
                        .toList();
        if (!passed.isEmpty()) {
            page.section("Passed").hanging("  ", String.join("; ", passed) + ".");
        }
    }

    private static void betterThanExpected(TextPage page, Acceptance test) {
        boolean any =
                test.lines().stream()
                        .filter(judged -> judged.verdict() == Verdict.SUSPECT)
                        .anyMatch(judged -> !judged.worse());
        if (any) {
            page.hanging(
                    "  ",
                    "Better than expected is suspect too: check that settings, resolution and"
                            + " meter are those of the sheet.");
        }
    }

    private static void lines(TextPage page, Acceptance test, Verdict verdict, String title) {
        TextTable table =
                new TextTable()
                        .left("what", WHAT_COLUMNS)
                        .right("measured")
                        .right("expected")
                        .left("promised", PROMISED_COLUMNS);
        for (JudgedLine judged : test.lines()) {
            boolean passedCheck = verdict == Verdict.PASS && judged.line().unit() == LineUnit.CHECK;
            if (judged.verdict() == verdict && !passedCheck) {
                table.row(
                        judged.line().what(),
                        SheetWords.figure(judged.line().unit(), judged.measured().orElseThrow()),
                        SheetWords.expected(judged.line()),
                        promised(judged));
            }
        }
        if (!table.isEmpty()) {
            page.section(title).table(table);
        }
    }

    /** A wish that was missed is no broken promise, but has to be seen. */
    private static String promised(JudgedLine judged) {
        boolean missed =
                judged.verdict() != Verdict.FAIL
                        && judged.line().promise().isPresent()
                        && !judged.line().promise().get().keptBy(judged.measured().orElseThrow());
        return SheetWords.promised(judged.line()) + (missed ? ", missed" : "");
    }

    private static void open(TextPage page, Acceptance test) {
        List<String> open =
                test.lines().stream()
                        .filter(judged -> judged.verdict() == Verdict.OPEN)
                        .map(judged -> judged.line().what())
                        .toList();
        if (!open.isEmpty()) {
            page.section("Not measured").hanging("  ", String.join("; ", open) + ".");
        }
    }

    private static void causes(TextPage page, List<RankedCause> causes) {
        page.section("Likeliest causes, by what each would do to everything that was measured");
        TextTable table =
                new TextTable()
                        .left("cause", CAUSE_COLUMNS)
                        .right("chance")
                        .left("what to do", ADVICE_COLUMNS);
        for (RankedCause ranked : causes.subList(0, Math.min(MOST_CAUSES, causes.size()))) {
            String strength = ranked.strength().isEmpty() ? "" : ": " + ranked.strength();
            table.row(
                    ranked.cause().title() + strength,
                    Rounded.chance(ranked.share()),
                    ranked.cause().advice());
        }
        page.table(table);
        page.hanging(
                "  ",
                "Chances are among these causes alone, each as likely as any other beforehand.");
        effects(page, causes.get(0));
    }

    private static void effects(TextPage page, RankedCause first) {
        if (first.effects().isEmpty() || first.cause() == Cause.CHANCE) {
            return;
        }
        page.section("If " + first.cause().title());
        TextTable table =
                new TextTable()
                        .left("what", WHAT_COLUMNS)
                        .right("planned")
                        .right("then")
                        .right("measured");
        for (Effect effect : first.effects()) {
            table.row(
                    effect.what(),
                    SheetWords.figure(effect.unit(), effect.planned()),
                    SheetWords.figure(effect.unit(), effect.then()),
                    SheetWords.figure(effect.unit(), effect.measured()));
        }
        page.table(table);
    }
}
