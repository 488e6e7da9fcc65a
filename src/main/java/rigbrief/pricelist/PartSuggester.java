package rigbrief.pricelist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Part;

/**
 * Suggests parts for a row by the words and numbers of their names.
 *
 * <p>A part's score is the weight of those of its tokens that the row holds too, over the weight of
 * all of them; a token weighs the logarithm of how rare it is among the parts (common practice in
 * text retrieval). A longer word that is one letter off counts four fifths. Numbers have to agree:
 * a part with a number in its model that the row does not hold is not suggested.
 */
final class PartSuggester {
    private static final int LEAST_PERCENT = 60;
    private static final int MOST_SUGGESTIONS = 3;
    private static final int FUZZY_LENGTH = 5;
    private static final double FUZZY_SHARE = 0.8;

    /** A token of more parts than this tells too little to look all of them through. */
    private static final int COMMON = 2_000;

    private final List<Entry> entries = new ArrayList<>();
    private final Map<String, List<Entry>> byToken = new HashMap<>();

    private record Entry(Part part, Set<String> tokens, Set<String> numbers) {}

    private record Scored(Entry entry, int percent, long milliWeight) {}

    PartSuggester(Catalogue catalogue) {
        for (Part part : PartFinder.all(catalogue)) {
            Set<String> tokens = new LinkedHashSet<>(Tokens.of(part.name()));
            Set<String> numbers = new LinkedHashSet<>(Tokens.of(part.listing().model()));
            numbers.removeIf(token -> !Tokens.isNumber(token));
            Entry entry = new Entry(part, tokens, numbers);
            entries.add(entry);
            tokens.forEach(
                    token -> byToken.computeIfAbsent(token, any -> new ArrayList<>()).add(entry));
        }
    }

    /** The likeliest parts, the likeliest first. */
    List<Suggestion> of(PriceRow row) {
        Set<String> words = new LinkedHashSet<>(Tokens.of(row.words()));
        List<Scored> scored = new ArrayList<>();
        for (Entry entry : candidates(words)) {
            if (words.containsAll(entry.numbers())) {
                scored.add(scored(entry, words));
            }
        }
        return scored.stream()
                .filter(each -> each.percent() >= LEAST_PERCENT)
                .sorted(
                        Comparator.comparing(Scored::percent)
                                .thenComparing(Scored::milliWeight)
                                .reversed()
                                .thenComparing(each -> each.entry().part().id()))
                .limit(MOST_SUGGESTIONS)
                .map(each -> new Suggestion(each.entry().part(), each.percent()))
                .toList();
    }

    /** Parts that share a telling token with the row, in catalogue order within each token. */
    private Set<Entry> candidates(Set<String> words) {
        Set<Entry> candidates = new LinkedHashSet<>();
        for (String word : words) {
            List<Entry> having = byToken.getOrDefault(word, List.of());
            if (having.size() <= COMMON) {
                candidates.addAll(having);
            }
        }
        return candidates;
    }

    private Scored scored(Entry entry, Set<String> words) {
        double all = 0;
        double shared = 0;
        for (String token : entry.tokens()) {
            double weight = weight(token);
            all += weight;
            shared += weight * share(token, words);
        }
        int percent = all == 0 ? 0 : (int) Math.round(100 * shared / all);
        return new Scored(entry, percent, Math.round(1000 * shared));
    }

    private static double share(String token, Set<String> words) {
        if (words.contains(token)) {
            return 1;
        }
        boolean fuzzy =
                token.length() >= FUZZY_LENGTH
                        && !Tokens.isNumber(token)
                        && words.stream().anyMatch(word -> Tokens.oneLetterApart(token, word));
        return fuzzy ? FUZZY_SHARE : 0;
    }

    private double weight(String token) {
        return Math.log(1 + (double) entries.size() / byToken.get(token).size());
    }
}
