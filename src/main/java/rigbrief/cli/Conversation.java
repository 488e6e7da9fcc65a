package rigbrief.cli;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.intake.Answer;
import rigbrief.intake.Interview;
import rigbrief.intake.Least;
import rigbrief.intake.NotUnderstood;
import rigbrief.intake.Question;
import rigbrief.report.InterviewText;
import rigbrief.wording.Phrase;

/** Puts the questions of an interview and hands the answers in, keeping each as it is given. */
final class Conversation {
    private static final String EXPLAIN = "?";
    private static final String STREAM = "-";
    private static final String GO_ON =
            "--resume goes on from what was answered, --force with all lines begins anew";

    private final Console console;
    private final Interview interview;
    private final AnswerSource answers;
    private final AnswersFile kept;
    private final InterviewText text;
    private Optional<Least> least = Optional.empty();

    Conversation(
            Console console,
            Interview interview,
            AnswerSource answers,
            AnswersFile kept,
            InterviewText text) {
        this.console = console;
        this.interview = interview;
        this.answers = answers;
        this.kept = kept;
        this.text = text;
    }

    /**
     * Asks until everything is answered or somebody stops.
     *
     * @return whether everything is answered
     * @throws BadInput when a pipe ends early or holds what is no answer
     */
    boolean hold() throws IOException, BadInput, NotWritten {
        least = reckoned();
        console.print(text.least(Optional.empty(), least));
        Optional<Question> next = interview.question();
        while (next.isPresent()) {
            show(next.get());
            Optional<String> line = answers.line(next.get());
            if (line.isEmpty()) {
                return stopped(next.get());
            }
            take(next.get(), line.get());
            next = interview.question();
        }
        return true;
    }

    private void show(Question question) {
        if (question.id().equals(Interview.REVIEW)) {
            console.print(text.summary(interview.said(), least));
        }
        int number = interview.answers().size() + 1;
        console.print(text.question(question, number, interview.remaining()));
        console.flush();
    }

    private boolean stopped(Question question) throws BadInput {
        if (answers.canBeAskedAgain()) {
            return false;
        }
        throw fault(
                question,
                "",
                "an answer to \"%s\"".formatted(question.ask()),
                "add it and those behind it; " + GO_ON);
    }

    private BadInput fault(Question question, String found, String expected, String advice) {
        int line = answers.count() + (found.isEmpty() ? 1 : 0);
        return new BadInput(new Fault(STREAM, line, 1, question.id(), found, expected, advice));
    }

    private void take(Question question, String line) throws BadInput, NotWritten {
        String word = line.strip().toLowerCase(Locale.ROOT);
        if (word.equals(EXPLAIN)) {
            console.print(text.explanation(question));
        } else if (InterviewText.isBack(word)) {
            back();
        } else {
            answer(question, line);
        }
    }

    private void back() throws NotWritten {
        if (!interview.back()) {
            console.print(text.refusal(Phrase.of("intake.first")));
        }
        keep();
        least = reckoned();
    }

    private void answer(Question question, String line) throws BadInput, NotWritten {
        try {
            Answer answer = interview.answer(question, line);
            console.print(text.consequence(answer.consequence()));
            console.flush();
        } catch (NotUnderstood e) {
            refuse(question, line, e);
            return;
        }
        keep();
        Optional<Least> before = least;
        least = reckoned();
        console.print(text.least(before, least));
    }

    /**
     * Whoever types is told; behind a wrong line of a pipe every further one would be wrong too.
     */
    private void refuse(Question question, String line, NotUnderstood refused) throws BadInput {
        if (!answers.canBeAskedAgain()) {
            throw fault(
                    question, line, refused.expected().toString(), refused.advice() + "; " + GO_ON);
        }
        console.print(text.refusal(refused.told()));
    }

    private void keep() throws NotWritten {
        kept.write(interview.toKeep());
    }

    private Optional<Least> reckoned() {
        console.progress(text.reckoning());
        Optional<Least> now = interview.least();
        console.print("");
        return now;
    }
}
