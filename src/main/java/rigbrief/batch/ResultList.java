package rigbrief.batch;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rigbrief.file.Sha256;

/**
 * The list of a result's files with their digests, in the form that the usual checksum programs
 * check ({@code sha256sum -c result.sha256}); what a rerun has to know stands before it in lines
 * that they pass over.
 *
 * @param origin digest of what the result was made from
 * @param answered what a summary tells of it
 * @param digests SHA-256 by file name, without this list itself
 */
record ResultList(String origin, Answered answered, Map<String, String> digests) {
    /** Its name in the result's folder. */
    static final String FILE = "result.sha256";

    private static final String HEAD = "# rigbrief result 1";
    private static final String GAP = "  ";
    private static final int DIGEST_LETTERS = 64;

    ResultList {
        digests = Collections.unmodifiableMap(new TreeMap<>(digests));
    }

    static ResultList of(String origin, Answered answered, Map<String, byte[]> files) {
        Map<String, String> digests = new TreeMap<>();
        files.forEach((name, bytes) -> digests.put(name, Sha256.of(bytes)));
        return new ResultList(origin, answered, digests);
    }

    String text() {
        StringBuilder text = new StringBuilder(HEAD).append('\n');
        text.append("# made from ").append(origin).append('\n');
        text.append("# ended ").append(answered.ending().name()).append('\n');
        text.append("# currency ").append(answered.currency()).append('\n');
        for (TierTotal total : answered.totals()) {
            text.append("# total ").append(total.tier()).append(' ').append(total.total());
            text.append(total.gapPercent().isEmpty() ? "" : " " + total.gapPercent()).append('\n');
        }
        digests.forEach(
                (name, digest) -> text.append(digest).append(GAP).append(name).append('\n'));
        return text.toString();
    }

    /** The list that a text is; empty where it is none, or not a whole one. */
    static Optional<ResultList> read(String text) {
        String origin = "";
        String ended = "";
        String currency = "";
        List<TierTotal> totals = new ArrayList<>();
        Map<String, String> digests = new TreeMap<>();
        for (String line : text.lines().toList()) {
            String[] words = line.split(" ");
            if (line.startsWith("# made from ")) {
                origin = words[words.length - 1];
            } else if (line.startsWith("# ended ")) {
                ended = words[words.length - 1];
            } else if (line.startsWith("# currency ")) {
                currency = words[words.length - 1];
            } else if (line.startsWith("# total ") && words.length >= 4) {
                totals.add(new TierTotal(words[2], words[3], words.length > 4 ? words[4] : ""));
            } else if (line.indexOf(GAP) == DIGEST_LETTERS) {
                digests.put(
                        line.substring(DIGEST_LETTERS + GAP.length()),
                        line.substring(0, DIGEST_LETTERS));
            }
        }
        ResultList read =
                new ResultList(origin, new Answered(ending(ended), currency, totals), digests);
        // A list is whole when writing it again gives it back.
        return read.text().equals(text) ? Optional.of(read) : Optional.empty();
    }

    private static Ending ending(String word) {
        return word.equals(Ending.IMPOSSIBLE.name()) ? Ending.IMPOSSIBLE : Ending.PROPOSED;
    }
}
