package rigbrief.intake;

import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.wording.Phrase;

/**
 * A question being put together. Unless told otherwise its texts are those of its id: {@code
 * ask.ID} and {@code why.ID}; what belongs to one workload has an id of two words, of which the
 * first counts.
 */
final class Asking {
    private final String id;
    private final Phrase topic;
    private Phrase ask;
    private Phrase explanation;
    private List<Choice> choices = List.of();
    private boolean several;
    private List<String> names = List.of();
    private String usual = "";

    private Asking(String id, Phrase topic) {
        this.id = id;
        this.topic = topic;
        this.ask = Phrase.of("ask." + family());
        this.explanation = Phrase.of("why." + family());
    }

    /** A question of an id, about a topic of the bundles: {@code topic.TOPIC}. */
    static Asking about(String topic, String id) {
        return new Asking(id, Phrase.of("topic." + topic));
    }

    /** A question of an id, about a workload. */
    static Asking aboutTitle(String title, String id) {
        return new Asking(id, Phrase.data(title));
    }

    private String family() {
        return id.split(" ")[0];
    }

    /** Another way to ask. */
    Asking as(String key) {
        ask = Phrase.of("ask." + key);
        return this;
    }

    /** What fills the places of the question. */
    Asking ask(Object... places) {
        ask = Phrase.of(ask.key(), places);
        return this;
    }

    /** What fills the places of the explanation. */
    Asking why(Object... places) {
        explanation = Phrase.of(explanation.key(), places);
        return this;
    }

    /** An explanation that several questions share. */
    Asking whyAs(String key) {
        explanation = Phrase.of("why." + key);
        return this;
    }

    Asking choices(List<Choice> offered) {
        choices = offered;
        return this;
    }

    Asking several() {
        several = true;
        return this;
    }

    Asking names(List<String> completed) {
        names = completed;
        return this;
    }

    Asking usual(String answer) {
        usual = answer;
        return this;
    }

    Question read(Question.Reading reading) {
        return new Question(id, topic, ask, explanation, choices, several, names, usual, reading);
    }

    /** The question answered by one of its choices. */
    Question readChoice(Taking taking) {
        List<Choice> offered = choices;
        return read(
                typed -> {
                    Choice choice = Entries.choice(offered, typed);
                    return new Answer(choice.word(), taking.take(choice), choice.meaning());
                });
    }

    /** What a choice changes about the brief. */
    @FunctionalInterface
    interface Taking {
        Brief take(Choice choice) throws NotUnderstood;
    }
}
