package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.intake.Choice;
import rigbrief.intake.Interview.Said;
import rigbrief.intake.Least;
import rigbrief.intake.Question;
import rigbrief.quantity.Money;

/** What an interview shows, piece by piece. */
public final class InterviewText {
    private static final String NUMBER = "  %2d  ";
    private static final int WIDEST_LABEL = 40;
    private static final int TOPIC_COLUMNS = 22;
    private static final int ANSWER_COLUMNS = 30;

    private final Style style;

    /** An interview laid out in a style. */
    public InterviewText(Style style) {
        this.style = style;
    }

    /** What is said before the first question. */
    public String welcome(String file) {
        return new TextPage(style)
                .paragraph(
                        0,
                        ("A few questions about the computer that is wanted. The"
                                        + " answers become a brief, the file %s.")
                                .formatted(file))
                .paragraph(
                        0,
                        "Type the number or the word of an answer. Enter alone takes"
                                + " the one that is"
                                + " named last. ? explains, back goes back, and whoever has to stop"
                                + " can go on later.")
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
                        ? "%d, the last".formatted(number)
                        : "%d of about %d".formatted(number, number + remaining - 1);
        page.blank().chapter(question.topic(), place);
        page.paragraph(0, question.ask());
        choices(page, question.choices());
        return page.paragraph(0, usual(question)).toString();
    }

    private static String usual(Question question) {
        String usual = answered(question, question.usual());
        return question.usual().isEmpty()
                ? "(? explains, back goes back)"
                : "(Enter alone: %s; ? explains, back goes back)".formatted(usual);
    }

    private static String label(Question question, String word) {
        for (Choice choice : question.choices()) {
            if (choice.word().equals(word)) {
                return choice.label();
            }
        }
        return word;
    }

    private static void choices(TextPage page, List<Choice> choices) {
        int label = 0;
        for (Choice choice : choices) {
            label = Math.max(label, Math.min(WIDEST_LABEL, TextPage.length(choice.label())));
        }
        for (int i = 0; i < choices.size(); i++) {
            Choice choice = choices.get(i);
            String padding = " ".repeat(Math.max(0, label - TextPage.length(choice.label())));
            page.hanging(
                    NUMBER.formatted(i + 1) + choice.label() + padding + "  ", choice.meaning());
        }
    }

    /** What the terms in a question mean and why it is asked. */
    public String explanation(Question question) {
        return new TextPage(style).hanging("  ? ", question.explanation()).toString();
    }

    /** What follows from an answer. */
    public String consequence(String words) {
        return new TextPage(style).hanging("  - ", words).toString();
    }

    /** An answer that was not understood. */
    public String refusal(String words) {
        return new TextPage(style).hanging("  ! ", words).toString();
    }

    /** The least money now, and what the last answer changed about it; empty where it did not. */
    public String least(Optional<Least> before, Optional<Least> now) {
        if (now.isEmpty() || now.equals(before)) {
            return "";
        }
        TextPage page = new TextPage(style);
        return page.hanging("  = ", words(before, now.get())).toString();
    }

    private static String words(Optional<Least> before, Least now) {
        if (now instanceof Least.Known known) {
            return "Least so far: %s%s.".formatted(known.total(), change(before, known.total()));
        }
        if (now instanceof Least.Between between) {
            return "Least so far: at most %s, not below %s; the search stopped before it knew."
                    .formatted(between.high(), between.low());
        }
        return now instanceof Least.Impossible
                ? "No computer in this catalogue can do all of that, at any price. Type"
                        + " back to change"
                        + " something, or go on: the proposal names what clashes and the"
                        + " cheapest ways out."
                : "Least so far: not found out in the time for a question.";
    }

    private static String change(Optional<Least> before, Money now) {
        if (before.isEmpty()) {
            return ", the least money for a computer that does all you said";
        }
        if (before.get() instanceof Least.Known known) {
            int order = now.compareTo(known.total());
            return order > 0
                    ? ", %s more than before".formatted(now.minus(known.total()))
                    : ", %s less than before".formatted(known.total().minus(now));
        }
        return "";
    }

    /** The key of a question as words; what belongs to one workload stands under its title. */
    private static String asked(Question question) {
        return question.id().split(" ")[0].replace('-', ' ');
    }

    private static String answered(Question question, String text) {
        if (!question.several()) {
            return label(question, text);
        }
        List<String> labels = new ArrayList<>();
        for (String word : text.split(", ")) {
            labels.add(label(question, word));
        }
        return String.join(", ", labels);
    }

    /** Everything that was answered. */
    public String summary(List<Said> said, Optional<Least> least) {
        TextPage page = new TextPage(style).blank().chapter("What was answered", "");
        TextTable table =
                new TextTable()
                        .left("about", TOPIC_COLUMNS)
                        .left("asked", TOPIC_COLUMNS)
                        .left("answer", ANSWER_COLUMNS);
        String topic = "";
        for (Said each : said) {
            Question question = each.question();
            table.row(
                    question.topic().equals(topic) ? "" : question.topic(),
                    asked(question),
                    answered(question, each.text()));
            topic = question.topic();
        }
        page.table(table);
        least.ifPresent(it -> page.paragraph(2, words(Optional.empty(), it)));
        return page.toString();
    }
}
