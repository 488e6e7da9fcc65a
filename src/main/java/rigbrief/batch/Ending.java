package rigbrief.batch;

import rigbrief.part.Word;

/** How a brief of a batch ended, the gravest last. */
public enum Ending implements Word {
    /** Builds were proposed. */
    PROPOSED("proposed"),
    /** No build meets the musts; an answer too. */
    IMPOSSIBLE("impossible"),
    /** The brief can't be used. */
    BAD_INPUT("bad input"),
    /** The result can't be written, or would take the place of what somebody changed. */
    NOT_WRITTEN("not written"),
    /** The batch was called off before; the next run answers it. */
    CALLED_OFF("called off"),
    /** The program is at fault. */
    FAULT("internal fault");

    private final String word;

    Ending(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** Whether there is a result on the disk. */
    public boolean answered() {
        return this == PROPOSED || this == IMPOSSIBLE;
    }
}
