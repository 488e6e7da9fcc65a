package rigbrief.rule;

/** Where a rule's limit comes from. */
public sealed interface Source {
    /** How the source is named on screen. */
    String text();

    /**
     * A published standard.
     *
     * @param title title and number
     * @param edition edition or revision
     * @param section section or table
     */
    record Standard(String title, String edition, String section) implements Source {
        @Override
        public String text() {
            return title + ", " + edition + ", " + section;
        }
    }

    /**
     * A figure on a maker's data sheet.
     *
     * @param figure which figure
     */
    record MakersSheet(String figure) implements Source {
        @Override
        public String text() {
            return "maker's sheet: " + figure;
        }
    }

    /**
     * What builders do, with no publication behind it.
     *
     * @param why why this number
     */
    record CommonPractice(String why) implements Source {
        @Override
        public String text() {
            return "common practice: " + why;
        }
    }

    /**
     * The client's own words.
     *
     * @param line which part of the brief
     */
    record ClientsBrief(String line) implements Source {
        @Override
        public String text() {
            return "the brief: " + line;
        }
    }

    /** A published standard. */
    static Source standard(String title, String edition, String section) {
        return new Standard(title, edition, section);
    }

    /** A figure on a maker's data sheet. */
    static Source makersSheet(String figure) {
        return new MakersSheet(figure);
    }

    /** What builders do, with no publication behind it. */
    static Source commonPractice(String why) {
        return new CommonPractice(why);
    }

    /** The client's own words. */
    static Source brief(String line) {
        return new ClientsBrief(line);
    }
}
