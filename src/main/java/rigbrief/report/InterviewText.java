package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.intake.Choice;
import rigbrief.intake.Interview.Said;
import rigbrief.intake.Least;
import rigbrief.intake.Question;
import rigbrief.quantity.Money;
import rigbrief.wording.Phrase;
import rigbrief.wording.Texts;

/** What an interview shows, piece by piece. */
public final class InterviewText {
    private static final String NUMBER = "  %2d  ";
    private static final int WIDEST_LABEL = 40;
    private static final int TOPIC_COLUMNS = 22;
    private static final int ANSWER_COLUMNS = 30;

    private static final String BACK = "word.back";

    private final Style style;
    private final Texts texts;

    /** An interview laid out in a style, in a language. */
    public InterviewText(Style style, Texts texts) {
        this.style = style;
        this.texts = texts;
    }

    /** Whether a word takes the last answer back, in whichever language. */
    public static boolean isBack(String word) {
        return Texts.LANGUAGES.stream()
                .anyMatch(language -> Texts.of(language).text(BACK).equals(word));
    }

    /** The word that takes the last answer back. */
    public String back() {
        return texts.text(BACK);
    }

    /** A line of its own. */
    public String line(String key, Object... places) {
        return new TextPage(style).line(texts.text(key, places)).toString();
    }

    /** What may be typed for a choice: its word, or what that is called in another language. */
    public String typed(Choice choice) {
        return texts.language().equals(Texts.ENGLISH.language())
                ? choice.word()
                : texts.say(choice.label()).replaceFirst(",.*", "");
    }

    /** What is told while the least money is looked for. */
    public String reckoning() {
        return texts.text("intake.reckoning");
    }

    /** What is said before the first question. */
    public String welcome(String file) {
        return new TextPage(style)
                .paragraph(0, texts.text("intake.welcome", file))
                .paragraph(0, texts.text("intake.welcome.how"))
                .toString();
    }

    /**
     * A question with its answers.
     *
     * @param number how many questions this makes
     * @param remaining how many are still to come, about, this one included
     */
    public String question(Question question, int number, int remaining) {
        TextPage page = new TextPage(style);
        String place =
                remaining <= 1
                        ? texts.text("intake.place.last", number)
                        : texts.text("intake.place", number, number + remaining - 1);
        page.blank().chapter(texts.say(question.topic()), place);
        page.paragraph(0, texts.say(question.ask()));
        choices(page, question.choices());
        return page.paragraph(0, usual(question)).toString();
    }

    private String usual(Question question) {
        return question.usual().isEmpty()
                ? texts.text("intake.usual.none")
                : texts.text("intake.usual", answered(question, question.usual()));
    }

    private String label(Question question, String word) {
        for (Choice choice : question.choices()) {
            if (choice.word().equals(word)) {
                return texts.say(choice.label());
            }
        }
        // What has no usual answer is a name or an amount, and no word of the interview's.
        String key = "word." + word.replace(' ', '-');
        return !question.usual().isEmpty() && texts.has(key) ? texts.text(key) : word;
    }

    private void choices(TextPage page, List<Choice> choices) {
        int label = 0;
        for (Choice choice : choices) {
            label =
                    Math.max(
                            label,
                            Math.min(WIDEST_LABEL, TextPage.length(texts.say(choice.label()))));
        }
        for (int i = 0; i < choices.size(); i++) {
            Choice choice = choices.get(i);
            String called = texts.say(choice.label());
            String padding = " ".repeat(Math.max(0, label - TextPage.length(called)));
            page.hanging(
                    NUMBER.formatted(i + 1) + called + padding + "  ", texts.say(choice.meaning()));
        }
    }

    /** What the terms in a question mean and why it is asked. */
    public String explanation(Question question) {
        return new TextPage(style).hanging("  ? ", texts.say(question.explanation())).toString();
    }

    /** What follows from an answer. */
    public String consequence(Phrase words) {
        return new TextPage(style).hanging("  - ", texts.say(words)).toString();
    }

    /** An answer that was not understood. */
    public String refusal(Phrase words) {
        return new TextPage(style).hanging("  ! ", texts.say(words)).toString();
    }

    /** The least money now, and what the last answer changed about it; empty where it did not. */
    public String least(Optional<Least> before, Optional<Least> now) {
        if (now.isEmpty() || now.equals(before)) {
            return "";
        }
        TextPage page = new TextPage(style);
        return page.hanging("  = ", words(before, now.get())).toString();
    }

    private String words(Optional<Least> before, Least now) {
        if (now instanceof Least.Known known) {
            return changed(before, known.total());
        }
        if (now instanceof Least.Between between) {
            return texts.text("least.between", between.high(), between.low());
        }
        return texts.text(now instanceof Least.Impossible ? "least.impossible" : "least.unknown");
    }

    private String changed(Optional<Least> before, Money now) {
        if (before.isEmpty()) {
            return texts.text("least.first", now);
        }
        if (before.get() instanceof Least.Known known) {
            return now.compareTo(known.total()) > 0
                    ? texts.text("least.more", now, now.minus(known.total()))
                    : texts.text("least.less", now, known.total().minus(now));
        }
        return texts.text("least.known", now);
    }

    /** What a question is about, in a word; what belongs to one workload stands under its title. */
    private String asked(Question question) {
        return texts.text("short." + question.id().split(" ")[0]);
    }

    private String answered(Question question, String text) {
        List<String> labels = new ArrayList<>();
        for (String word : text.split(", ")) {
            labels.add(label(question, word));
        }
        return String.join(", ", labels);
    }

    /** Everything that was answered. */
    public String summary(List<Said> said, Optional<Least> least) {
        TextPage page = new TextPage(style).blank().chapter(texts.text("intake.answered"), "");
        TextTable table =
                new TextTable()
                        .left(texts.text("intake.column.about"), TOPIC_COLUMNS)
                        .left(texts.text("intake.column.asked"), TOPIC_COLUMNS)
                        .left(texts.text("intake.column.answer"), ANSWER_COLUMNS);
        Phrase topic = Phrase.NONE;
        for (Said each : said) {
            Question question = each.question();
            table.row(
                    question.topic().equals(topic) ? "" : texts.say(question.topic()),
                    asked(question),
                    answered(question, each.text()));
            topic = question.topic();
        }
        page.table(table);
        least.ifPresent(it -> page.paragraph(2, words(Optional.empty(), it)));
        return page.toString();
    }
}
