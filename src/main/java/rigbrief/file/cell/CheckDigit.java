package rigbrief.file.cell;

/**
 * The check digit of a GS1 item number: weights 3 and 1 from the right, summed up to a multiple of
 * ten.
 *
 * <p>Source: GS1 General Specifications, section 7.9.
 */
final class CheckDigit {
    private CheckDigit() {}

    /** Whether a text is an item number of 8, 12, 13 or 14 digits. */
    static boolean wellFormed(String text) {
        int length = text.length();
        boolean known = length == 8 || length == 12 || length == 13 || length == 14;
        return known && text.chars().allMatch(digit -> digit >= '0' && digit <= '9');
    }

    /** The check digit that belongs to all digits but the last. */
    static int of(String number) {
        int sum = 0;
        int weight = 3;
        for (int i = number.length() - 2; i >= 0; i--) {
            sum += weight * (number.charAt(i) - '0');
            weight = 4 - weight;
        }
        return (10 - sum % 10) % 10;
    }
}
