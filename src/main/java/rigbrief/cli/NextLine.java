package rigbrief.cli;

import rigbrief.diagnostic.Quotation;

/** The last line of a text: what may usefully be run next. */
final class NextLine {
    private NextLine() {}

    static void print(Console console, String next) {
        console.print(console.style().faint("Next: " + Quotation.visible(next)) + "\n");
    }
}
