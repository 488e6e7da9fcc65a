package rigbrief.build;

import rigbrief.part.Word;

/** How far an ordered part has come. */
public enum PartState implements Word {
    WANTED("wanted"),
    ORDERED("ordered"),
    RECEIVED("received"),
    FITTED("fitted"),
    FAULTY("faulty"),
    RETURNED("returned");

    private final String word;

    PartState(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
