package rigbrief.build;

import rigbrief.part.Word;

/** How far an ordered part has come. */
public enum PartState implements Word {
    WANTED("wanted", 1),
    ORDERED("ordered", 2),
    RECEIVED("received", 3),
    FITTED("fitted", 4),
    FAULTY("faulty", 0),
    RETURNED("returned", 5);

    private final String word;
    private final int progress;

    PartState(String word, int progress) {
        this.word = word;
        this.progress = progress;
    }

    @Override
    public String word() {
        return word;
    }

    /**
     * How far on the way, from 0. A faulty part is behind a wanted one, since it has to go back
     * first; a returned one is done with.
     */
    int progress() {
        return progress;
    }

    /** Whether the machine can still count on the part: it is here, or on its way, and sound. */
    public boolean promised() {
        return this == ORDERED || here();
    }

    /** Whether the part is here and sound. */
    public boolean here() {
        return this == RECEIVED || this == FITTED;
    }
}
