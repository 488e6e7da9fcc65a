package rigbrief.intake;

import java.util.List;
import rigbrief.wording.Phrase;

/**
 * A question of the interview.
 *
 * @param id stable key under which the answer is kept
 * @param topic what it is about, in a word or two
 * @param ask the question, in plain words
 * @param explanation the terms in it and why it is asked
 * @param choices the answers offered; empty where anything of a form may be typed
 * @param several whether several may be named, with commas between them
 * @param names what a terminal may complete beside the choices, such as titles
 * @param usual the answer that an empty line stands for; empty where one has to be typed
 * @param reading how an answer is taken
 */
public record Question(
        String id,
        Phrase topic,
        Phrase ask,
        Phrase explanation,
        List<Choice> choices,
        boolean several,
        List<String> names,
        String usual,
        Reading reading) {
    public Question {
        choices = List.copyOf(choices);
        names = List.copyOf(names);
    }

    /** How an answer is taken. */
    @FunctionalInterface
    public interface Reading {
        /**
         * Takes a typed line.
         *
         * @throws NotUnderstood when it is no answer to the question
         */
        Answer read(String typed) throws NotUnderstood;
    }

    /** The same question with another answer for an empty line. */
    Question usually(String answer) {
        return new Question(id, topic, ask, explanation, choices, several, names, answer, reading);
    }
}
