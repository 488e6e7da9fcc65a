package rigbrief.proposal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;
import rigbrief.proposal.clash.NeedClash;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Rules;
import rigbrief.search.SearchSpace;
import rigbrief.wording.Phrase;

/** Finds which musts clash when no build meets them all, and what can give way. */
public final class ClashFinder {
    private final Catalogue catalogue;
    private final long steps;
    private final BooleanSupplier stop;

    /**
     * A finder.
     *
     * @param steps most steps of the certifier for three questions
     * @param stop asked now and then; true ends the search early
     */
    public ClashFinder(Catalogue catalogue, long steps, BooleanSupplier stop) {
        this.catalogue = catalogue;
        this.steps = steps;
        this.stop = stop;
    }

    /** The clash of a brief that no build meets. */
    public Clash find(Brief brief) {
        return find(brief, SearchSpace.of(brief, catalogue));
    }

    /** The clash of a brief that no build meets. */
    Clash find(Brief brief, SearchSpace space) {
        NeedClash found = NeedClash.find(brief, catalogue, steps, stop);
        List<List<Phrase>> sets = new ArrayList<>();
        for (BitSet set : found.sets().conflicts()) {
            sets.add(found.names(set));
        }
        List<Phrase> first = sets.isEmpty() ? List.of() : sets.get(0);
        return new Clash(
                first,
                found.minimal() && !first.isEmpty(),
                explanation(space, found, first),
                first.isEmpty() ? List.of() : sets,
                found.sets().complete(),
                found.waysOut());
    }

    private static Phrase title(String rule) {
        String own =
                Rules.ALL.stream()
                        .map(Rule::info)
                        .filter(info -> info.id().equals(rule))
                        .map(RuleInfo::title)
                        .findFirst()
                        .orElse(rule);
        return Phrase.titled("rule." + rule, own);
    }

    private static List<Phrase> explanation(
            SearchSpace space, NeedClash found, List<Phrase> first) {
        List<Phrase> lines = new ArrayList<>();
        for (Map.Entry<Slot, Map<String, Integer>> slot : space.candidates().refused().entrySet()) {
            List<Phrase> refused = new ArrayList<>();
            refused.add(Phrase.of("slot.name." + slot.getKey().word()));
            slot.getValue()
                    .forEach(
                            (rule, count) ->
                                    refused.add(
                                            Phrase.of("clash.refused", count, rule, title(rule))));
            lines.add(Phrase.of("clash.no-part", Phrase.joined(", ", refused)));
        }
        lines.add(meaning(found, first));
        lines.addAll(found.fitReasons());
        return lines;
    }

    private static Phrase meaning(NeedClash found, List<Phrase> first) {
        if (first.isEmpty()) {
            return Phrase.of("clash.nothing");
        }
        if (first.size() == 1) {
            return Phrase.of("clash.alone");
        }
        return Phrase.of(found.minimal() ? "clash.minimal" : "clash.open");
    }
}
