package rigbrief.intake;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Numbers and lists in plain words. */
final class Plain {
    private Plain() {}

    /** "1 day", "3 days". */
    static String counted(int count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }

    /** "a", "a and b", "a, b and c". */
    static String list(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** A duration as a person says it: seconds below two minutes, then minutes, then hours. */
    static String duration(double seconds) {
        if (seconds < 120) {
            return shortest(seconds) + " s";
        }
        return seconds < 7_200 ? shortest(seconds / 60) + " min" : shortest(seconds / 3_600) + " h";
    }

    private static String shortest(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP);
        return Entries.plain(rounded);
    }
}
