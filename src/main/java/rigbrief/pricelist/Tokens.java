package rigbrief.pricelist;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Words and numbers of a name: lower case, without accents, digits parted from letters. */
final class Tokens {
    private Tokens() {}

    static List<String> of(String name) {
        String plain =
                Normalizer.normalize(name, Normalizer.Form.NFKD)
                        .replaceAll("\\p{M}", "")
                        .toLowerCase(Locale.ROOT);
        List<String> tokens = new ArrayList<>();
        StringBuilder token = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            boolean breaks =
                    !Character.isLetterOrDigit(c)
                            || token.length() > 0
                                    && Character.isDigit(c)
                                            != Character.isDigit(token.charAt(token.length() - 1));
            if (breaks && token.length() > 0) {
                tokens.add(token.toString());
                token.setLength(0);
            }
            if (Character.isLetterOrDigit(c)) {
                token.append(c);
            }
        }
        if (token.length() > 0) {
            tokens.add(token.toString());
        }
        return tokens;
    }

    static boolean isNumber(String token) {
        return Character.isDigit(token.charAt(0));
    }

    /** Whether one letter was typed wrong, left out, or put in too many. */
    static boolean oneLetterApart(String a, String b) {
        if (Math.abs(a.length() - b.length()) > 1 || a.equals(b)) {
            return false;
        }
        int i = 0;
        while (i < Math.min(a.length(), b.length()) && a.charAt(i) == b.charAt(i)) {
            i++;
        }
        int end = 0;
        while (end < Math.min(a.length(), b.length()) - i
                && a.charAt(a.length() - 1 - end) == b.charAt(b.length() - 1 - end)) {
            end++;
        }
        return Math.max(a.length(), b.length()) - i - end <= 1;
    }
}
