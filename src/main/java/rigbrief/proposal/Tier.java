package rigbrief.proposal;

import rigbrief.part.Word;

/** The tiers of a set of proposals, least money first. */
public enum Tier implements Word {
    /** Least money that meets every must. */
    LEAN("lean", "least money that meets every must"),
    /** The knee of the front of money and utility. */
    BALANCED("balanced", "where more money stops buying much"),
    /** Most utility under the ceiling. */
    FULL("full", "most utility under the ceiling");

    private final String word;
    private final String meaning;

    Tier(String word, String meaning) {
        this.word = word;
        this.meaning = meaning;
    }

    @Override
    public String word() {
        return word;
    }

    /** What it stands for, in a few words. */
    public String meaning() {
        return meaning;
    }
}
