package rigbrief.intake;

import java.util.List;
import rigbrief.brief.Brief;

/** A question being put together. */
final class Asking {
    private final String id;
    private final String topic;
    private String ask = "";
    private String explanation = "";
    private List<Choice> choices = List.of();
    private boolean several;
    private List<String> names = List.of();
    private String usual = "";

    private Asking(String id, String topic) {
        this.id = id;
        this.topic = topic;
    }

    /** A question of an id, about a topic. */
    static Asking about(String topic, String id) {
        return new Asking(id, topic);
    }

    Asking ask(String words) {
        ask = words;
        return this;
    }

    Asking explain(String words) {
        explanation = words;
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
