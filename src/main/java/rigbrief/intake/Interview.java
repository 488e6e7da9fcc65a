package rigbrief.intake;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;

/**
 * An interview: which question comes next, what an answer changes, how to go back.
 *
 * <p>All it keeps is the answers; everything else follows from them, so that answers kept in a file
 * and taken up again lead to the same brief.
 */
public final class Interview {
    /** The last question: whether the brief shall be written. */
    public static final String REVIEW = "write";

    /** From the answer to this question on the least money says something. */
    private static final String SAYS_SOMETHING = "workloads";

    private static final int MOST_QUESTIONS = 10_000;

    private final String name;
    private final Catalogue catalogue;
    private final LeastMoney least;

    /** Answers that stand, in the order in which they were given. */
    private final Map<String, String> answers = new LinkedHashMap<>();

    /** The last answer to every question ever answered: what going back offers again. */
    private final Map<String, String> earlier = new LinkedHashMap<>();

    /** Answers of an earlier run whose questions have not come up again. */
    private final Map<String, String> waiting = new LinkedHashMap<>();

    /**
     * An interview.
     *
     * @param name what the brief will be called: its file name without the ending
     * @param least what the least money is found by
     */
    public Interview(String name, Catalogue catalogue, LeastMoney least) {
        this.name = name;
        this.catalogue = catalogue;
        this.least = least;
    }

    /** The answers that stand, by question, in the order in which they were given. */
    public Map<String, String> answers() {
        return Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    }

    /**
     * The answers to keep for another run: those that stand and, behind them, those of an earlier
     * run that no question has asked for yet.
     */
    public Map<String, String> toKeep() {
        Map<String, String> all = new LinkedHashMap<>(answers);
        waiting.forEach(all::putIfAbsent);
        return Collections.unmodifiableMap(all);
    }

    /**
     * Takes up answers that were kept; what no longer fits is asked again, with what was said.
     *
     * @return how many of them stand
     */
    public int resume(Map<String, String> kept) {
        earlier.putAll(kept);
        waiting.putAll(kept);
        Optional<Question> next = question();
        while (next.isPresent() && kept.containsKey(next.get().id())) {
            try {
                answer(next.get(), kept.get(next.get().id()));
            } catch (NotUnderstood changed) {
                break;
            }
            next = question();
        }
        return answers.size();
    }

    /** The question to be put; empty when all are answered. */
    public Optional<Question> question() {
        return walk(answers).next();
    }

    /** The brief as far as it is answered. */
    public Brief brief() {
        return walk(answers).sheet().brief();
    }

    /** The least money for the brief as far as it is answered; empty before that means anything. */
    public Optional<Least> least() {
        return answers.containsKey(SAYS_SOMETHING)
                ? Optional.of(least.of(brief()))
                : Optional.empty();
    }

    /** The answers that stand as a list to look through. */
    public List<Said> said() {
        List<Said> said = new ArrayList<>();
        Interview again = new Interview(name, catalogue, brief -> new Least.Unknown());
        for (Optional<Question> next = again.question();
                next.isPresent();
                next = again.question()) {
            String text = answers.get(next.get().id());
            if (text == null) {
                return said;
            }
            try {
                again.answer(next.get(), text);
                said.add(new Said(next.get(), text));
            } catch (NotUnderstood changed) {
                return said;
            }
        }
        return said;
    }

    /**
     * An answer that stands.
     *
     * @param question the question
     * @param text the answer
     */
    public record Said(Question question, String text) {}

    /**
     * Takes an answer; an empty line stands for the usual one.
     *
     * @param question the question that was put
     * @throws NotUnderstood when it is no answer to the question, which then stays to be answered
     */
    public Answer answer(Question question, String typed) throws NotUnderstood {
        String line = typed.isBlank() && !question.usual().isEmpty() ? question.usual() : typed;
        Answer answer = question.reading().read(line);
        answers.put(question.id(), answer.text());
        earlier.put(question.id(), answer.text());
        waiting.remove(question.id());
        return answer;
    }

    /** Takes the last answer back, so that its question is put again; false when there is none. */
    public boolean back() {
        if (answers.isEmpty()) {
            return false;
        }
        List<String> ids = new ArrayList<>(answers.keySet());
        answers.remove(ids.get(ids.size() - 1));
        return true;
    }

    /** How many questions are still to come if each gets its usual answer. */
    public int remaining() {
        Map<String, String> supposed = new LinkedHashMap<>(answers);
        Walk walk = walk(supposed, brief -> new Least.Unknown());
        int count = 0;
        while (walk.next().isPresent() && count < MOST_QUESTIONS) {
            count++;
            Question question = walk.next().get();
            supposed.put(question.id(), question.usual().isEmpty() ? "1" : question.usual());
            walk = walk(supposed, brief -> new Least.Unknown());
        }
        return count;
    }

    private record Walk(Sheet sheet, Optional<Question> next) {}

    private Walk walk(Map<String, String> given) {
        return walk(given, least);
    }

    /** Goes through the script with answers, up to the first question without one. */
    private Walk walk(Map<String, String> given, LeastMoney by) {
        Brief blank = BlankBrief.named(name, catalogue.currency());
        Sheet sheet = new Sheet(catalogue, blank, Map.of(), by);
        for (Step step : Script.STEPS) {
            List<Question> questions = step.questions(sheet);
            // An answer may change what the later questions of its step start from.
            for (int i = 0; i < questions.size(); i++) {
                Question question = questions.get(i);
                Optional<Answer> answer = read(question, given);
                if (answer.isEmpty()) {
                    return new Walk(sheet, Optional.of(offered(question)));
                }
                Map<String, String> more = new LinkedHashMap<>(sheet.answers());
                more.put(question.id(), answer.get().text());
                sheet = new Sheet(catalogue, answer.get().brief(), more, by);
                questions = step.questions(sheet);
            }
        }
        return new Walk(sheet, Optional.empty());
    }

    private static Optional<Answer> read(Question question, Map<String, String> given) {
        String text = given.get(question.id());
        if (text == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(question.reading().read(text));
        } catch (NotUnderstood changed) {
            // The answers before it have changed what can be said here.
            return Optional.empty();
        }
    }

    private Question offered(Question question) {
        String said = earlier.get(question.id());
        if (said == null) {
            return question;
        }
        try {
            return question.usually(question.reading().read(said).text());
        } catch (NotUnderstood changed) {
            return question;
        }
    }
}
