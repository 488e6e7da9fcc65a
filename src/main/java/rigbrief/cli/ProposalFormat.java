package rigbrief.cli;

import java.util.Locale;

/** How proposals are written. */
enum ProposalFormat {
    TEXT,
    JSON,
    HTML,
    PDF;

    /** Whether it is a page: a file of its own rather than lines on a screen. */
    boolean isPage() {
        return this == HTML || this == PDF;
    }

    /** The ending of its files. */
    String ending() {
        return "." + this;
    }

    /** As it is spelt on the command line. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
