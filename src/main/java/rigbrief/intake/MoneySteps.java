package rigbrief.intake;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.brief.Wishes;
import rigbrief.quantity.Money;
import rigbrief.wording.Phrase;

/** What matters most, and how much it may cost. */
final class MoneySteps {
    private static final String TOPIC = "money";
    private static final String YES = "yes";
    private static final String USUAL = "usual";
    private static final int MOST_FIRST = 3;
    private static final int HEAVIEST = 5;

    private MoneySteps() {}

    static List<Question> wishes(Sheet sheet) {
        return List.of(
                Asking.about("matters", "wishes")
                        .choices(Levels.GOALS)
                        .several()
                        .usual(USUAL)
                        .read(typed -> wishes(sheet, typed)));
    }

    private static Answer wishes(Sheet sheet, String typed) throws NotUnderstood {
        if (Entries.means(USUAL, typed)) {
            return new Answer(USUAL, sheet.brief(), Phrase.of("then.wishes.usual"));
        }
        List<String> first = new ArrayList<>();
        for (String entry : typed.split("[,;]")) {
            String word = Entries.choice(Levels.GOALS, entry).word();
            if (!first.contains(word)) {
                first.add(word);
            }
        }
        if (first.size() > MOST_FIRST) {
            throw new NotUnderstood(
                    typed.strip(),
                    Phrase.of("expected.wishes", MOST_FIRST),
                    Phrase.of("advice.wishes"));
        }
        return new Answer(
                String.join(", ", first),
                sheet.draft().wishes(weighed(first)).toBrief(),
                Phrase.of("then.wishes"));
    }

    /** The dearest weighs 5, each further one less; every other goal keeps a weight of 1. */
    static Wishes weighed(List<String> first) {
        Map<String, Integer> weights = new LinkedHashMap<>();
        weights.put("workloads", 4);
        for (Choice goal : Levels.GOALS) {
            int place = first.indexOf(goal.word());
            weights.put(goal.word(), place < 0 ? 1 : HEAVIEST - place);
        }
        return new Wishes(weights);
    }

    static List<Question> ceiling(Sheet sheet) {
        Least least = sheet.least().of(sheet.brief());
        int quantity = sheet.brief().quantity();
        return List.of(
                Asking.about(TOPIC, "ceiling")
                        .as(quantity > 1 ? "ceiling-of-all" : "ceiling")
                        .ask(sheet.brief().currency().getCurrencyCode(), range(least), quantity)
                        .usual(suggested(least))
                        .read(typed -> ceiling(sheet, least, typed)),
                Asking.about(TOPIC, "overrun").usual("0").read(typed -> overrun(sheet, typed)));
    }

    private static Phrase range(Least least) {
        if (least instanceof Least.Known known) {
            return Phrase.of("least.range", known.total());
        }
        if (least instanceof Least.Between between) {
            return Phrase.of("least.range.between", between.high(), between.low());
        }
        return least instanceof Least.Impossible
                ? Phrase.of("least.range.impossible")
                : Phrase.of("least.range.unknown");
    }

    /** A quarter above the least, rounded up to fifty: common practice for a first figure. */
    private static String suggested(Least least) {
        Money from =
                least instanceof Least.Known known
                        ? known.total()
                        : least instanceof Least.Between between ? between.high() : null;
        if (from == null) {
            return "";
        }
        BigDecimal fifty = BigDecimal.valueOf(50);
        BigDecimal more = from.amount().multiply(new BigDecimal("1.25"));
        return more.divide(fifty, 0, RoundingMode.CEILING).multiply(fifty).toPlainString();
    }

    private static Answer ceiling(Sheet sheet, Least least, String typed) throws NotUnderstood {
        Money ceiling = Entries.money(typed, sheet.brief().currency(), false);
        return new Answer(
                Entries.plain(ceiling.amount()),
                sheet.draft().ceiling(ceiling).toBrief(),
                judged(ceiling, least));
    }

    private static Phrase judged(Money ceiling, Least least) {
        if (least instanceof Least.Known known) {
            return ceiling.compareTo(known.total()) < 0
                    ? Phrase.of("then.ceiling.below", known.total().minus(ceiling))
                    : Phrase.of("then.ceiling.above", ceiling.minus(known.total()));
        }
        if (least instanceof Least.Between between && ceiling.compareTo(between.low()) < 0) {
            return Phrase.of("then.ceiling.hopeless", between.low());
        }
        return Phrase.of("then.ceiling");
    }

    private static Answer overrun(Sheet sheet, String typed) throws NotUnderstood {
        BigDecimal percent = Entries.number(typed.replace("%", ""), 0, 50, 2);
        Money ceiling = sheet.brief().ceiling();
        Money most = ceiling.plus(ceiling.share(percent.movePointLeft(2)));
        return new Answer(
                Entries.plain(percent),
                sheet.draft()
                        .overrunBasisPoints(percent.movePointRight(2).intValueExact())
                        .toBrief(),
                percent.signum() == 0
                        ? Phrase.of("then.overrun.none")
                        : Phrase.of("then.overrun", most));
    }

    static List<Question> review(Sheet sheet) {
        return List.of(
                Asking.about("review", Interview.REVIEW)
                        .choices(List.of(Choice.of(Interview.REVIEW, YES)))
                        .usual(YES)
                        .readChoice(choice -> sheet.brief()));
    }
}
