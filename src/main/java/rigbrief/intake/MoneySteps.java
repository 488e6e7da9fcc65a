package rigbrief.intake;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rigbrief.brief.Wishes;
import rigbrief.quantity.Money;

/** What matters most, and how much it may cost. */
final class MoneySteps {
    private static final String TOPIC = "Money";
    private static final String YES = "yes";
    private static final String USUAL = "usual";
    private static final int MOST_FIRST = 3;
    private static final int HEAVIEST = 5;

    private MoneySteps() {}

    static List<Question> wishes(Sheet sheet) {
        return List.of(
                Asking.about("What matters most", "wishes")
                        .ask(
                                "If money is left, what shall it go into first? Up to"
                                        + " three, the dearest first; or usual.")
                        .explain(
                                "What you demanded always holds. These say which of"
                                        + " the computers that hold it are better. Usual weighs"
                                        + " good value and quietness a little more than the rest.")
                        .choices(Levels.GOALS)
                        .several()
                        .usual(USUAL)
                        .read(typed -> wishes(sheet, typed)));
    }

    private static Answer wishes(Sheet sheet, String typed) throws NotUnderstood {
        if (typed.strip().toLowerCase(Locale.ROOT).equals(USUAL)) {
            return new Answer(USUAL, sheet.brief(), "Everything is weighed in the usual way.");
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
                    "at most %d of them: what comes first can't be everything"
                            .formatted(MOST_FIRST),
                    "choose the dearest");
        }
        return new Answer(
                String.join(", ", first),
                sheet.draft().wishes(weighed(first)).toBrief(),
                "Money left over goes there first.");
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
        String whole =
                sheet.brief().quantity() > 1
                        ? "all %d computers together".formatted(sheet.brief().quantity())
                        : "the whole computer";
        return List.of(
                Asking.about(TOPIC, "ceiling")
                        .ask(
                                "What may %s cost at the most, everything included, in %s? %s"
                                        .formatted(whole, sheet.brief().currency(), range(least)))
                        .explain(
                                "Everything is parts, delivery, work and tax. Nothing"
                                        + " dearer will be proposed. The least is found by trying"
                                        + " the catalogue's parts against your answers, not"
                                        + " guessed; more money buys what you wish for beyond the"
                                        + " least.")
                        .usual(suggested(least))
                        .read(typed -> ceiling(sheet, least, typed)),
                Asking.about(TOPIC, "overrun")
                        .ask("By how many percent may it go over that, if a wish needs it?")
                        .explain(
                                "Some people say 1500 and mean about 1500. The part"
                                        + " beyond is only used if it buys something you wish"
                                        + " for, and the proposal says so. 0 keeps to the amount.")
                        .usual("0")
                        .read(typed -> overrun(sheet, typed)));
    }

    private static String range(Least least) {
        if (least instanceof Least.Known known) {
            return "With these answers the least is %s.".formatted(known.total());
        }
        if (least instanceof Least.Between between) {
            return ("With these answers it can be had for %s; whether for less is not proven,"
                            + " but not below %s.")
                    .formatted(between.high(), between.low());
        }
        return least instanceof Least.Impossible
                ? "With these answers no computer can be had from this catalogue at any"
                        + " price: go back, or let the proposal say which answers clash."
                : "The least could not be found out in the time for a question; the"
                        + " proposal looks longer.";
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

    private static String judged(Money ceiling, Least least) {
        if (least instanceof Least.Known known) {
            return ceiling.compareTo(known.total()) < 0
                    ? ("That is %s below the least: no computer can be proposed, but the"
                                    + " cheapest ways out can.")
                            .formatted(known.total().minus(ceiling))
                    : "That leaves %s above the least for what you wish."
                            .formatted(ceiling.minus(known.total()));
        }
        if (least instanceof Least.Between between && ceiling.compareTo(between.low()) < 0) {
            return "That is below %s, under which nothing can be had: the proposal will say so."
                    .formatted(between.low());
        }
        return "Nothing dearer will be proposed.";
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
                        ? "The amount is kept to."
                        : "At the very most %s.".formatted(most));
    }

    static List<Question> review(Sheet sheet) {
        return List.of(
                Asking.about("Everything is answered", Interview.REVIEW)
                        .ask("Shall the brief be written?")
                        .explain(
                                "The brief is the file in which all this stands, one"
                                        + " line for each thing you said. Type back to change"
                                        + " something.")
                        .choices(List.of(new Choice(YES, YES, "The brief is written.")))
                        .usual(YES)
                        .readChoice(choice -> sheet.brief()));
    }
}
