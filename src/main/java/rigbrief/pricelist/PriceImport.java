package rigbrief.pricelist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.part.Part;
import rigbrief.pricelist.Match.By;

/** Works out what a price list means for a catalogue, and changes nothing. */
public final class PriceImport {
    private final Catalogue catalogue;
    private final PriceList list;
    private final Verdicts verdicts;
    private final PartFinder finder;
    private final SuspicionFinder suspects;
    private final List<Match> matches = new ArrayList<>();
    private final List<Unmatched> unmatched = new ArrayList<>();
    private final List<Suspicion> suspicions = new ArrayList<>();

    private PriceImport(Catalogue catalogue, PriceList list, Verdicts verdicts) {
        this.catalogue = catalogue;
        this.list = list;
        this.verdicts = verdicts;
        this.finder = new PartFinder(catalogue);
        this.suspects = new SuspicionFinder(catalogue, list.supplier());
    }

    /**
     * What a list means.
     *
     * @param verdicts what the builder has said of single lines; the parts named there are in the
     *     catalogue
     */
    public static ImportPlan plan(Catalogue catalogue, PriceList list, Verdicts verdicts) {
        return new PriceImport(catalogue, list, verdicts).plan();
    }

    private ImportPlan plan() {
        PartSuggester suggester = null;
        for (PriceRow row : list.rows()) {
            if (verdicts.skipped().contains(row.line())) {
                continue;
            }
            Optional<Match> match = match(row);
            if (match.isPresent()) {
                matches.add(match.get());
            } else if (finder.named(row).size() < 2) {
                suggester = suggester == null ? new PartSuggester(catalogue) : suggester;
                unmatched.add(new Unmatched(row, suggester.of(row)));
            } else {
                suspicions.add(SuspicionFinder.disagrees(row, finder.named(row)));
            }
        }
        twice();
        List<OfferChange> changes = changes();
        List<Offer> unlisted = unlisted();
        if (list.unlistedSoldOut()) {
            unlisted.forEach(offer -> soldOut(offer).ifPresent(changes::add));
        }
        suspicions.sort(Comparator.comparing(suspicion -> suspicion.row().line()));
        return new ImportPlan(list, matches, changes, unmatched, suspicions, unlisted);
    }

    private Optional<Match> match(PriceRow row) {
        String accepted = verdicts.parts().get(row.line());
        if (accepted != null) {
            return part(row, accepted, By.ACCEPTED);
        }
        for (String number : List.of(row.article(), row.number(), row.gtin())) {
            if (!number.isEmpty() && list.same().containsKey(number)) {
                return part(row, list.same().get(number), By.MAP);
            }
        }
        if (finder.named(row).size() != 1) {
            return Optional.empty();
        }
        Part part = finder.named(row).iterator().next();
        By by =
                !finder.byId(row).isEmpty()
                        ? By.ID
                        : !finder.byNumber(row).isEmpty() ? By.NUMBER : By.GTIN;
        return Optional.of(new Match(row, part, by));
    }

    private Optional<Match> part(PriceRow row, String id, By by) {
        return catalogue.part(id).map(part -> new Match(row, part, by));
    }

    /** Rows that are one part; where the builder called one of them right, the others go. */
    private void twice() {
        Map<String, List<Match>> byPart = new LinkedHashMap<>();
        matches.forEach(
                match ->
                        byPart.computeIfAbsent(match.part().id(), any -> new ArrayList<>())
                                .add(match));
        for (List<Match> same : byPart.values()) {
            List<Match> right =
                    same.stream().filter(match -> verdicts.accepted(match.row().line())).toList();
            if (same.size() > 1 && right.size() == 1) {
                matches.removeIf(match -> same.contains(match) && match != right.get(0));
            } else if (same.size() > 1) {
                suspicions.add(SuspicionFinder.twice(same));
            }
        }
    }

    private List<OfferChange> changes() {
        List<OfferChange> changes = new ArrayList<>();
        for (Match match : matches) {
            Optional<Offer> before = before(match.part());
            if (!verdicts.accepted(match.row().line())) {
                suspicions.addAll(suspects.of(match, before));
            }
            changes.add(new OfferChange(match.part(), before, after(match)));
        }
        return changes;
    }

    /** The supplier's newest offer of a part; of several of one day the first. */
    private Optional<Offer> before(Part part) {
        Offer newest = null;
        for (Offer offer : catalogue.offers(part.id())) {
            boolean his = offer.supplier().equals(list.supplier());
            if (his && (newest == null || offer.asOf().isAfter(newest.asOf()))) {
                newest = offer;
            }
        }
        return Optional.ofNullable(newest);
    }

    private Offer after(Match match) {
        PriceRow row = match.row();
        return new Offer(
                match.part().id(),
                list.supplier(),
                row.price(),
                Math.max(0, row.stock()),
                row.leadDays(),
                row.asOf());
    }

    private List<Offer> unlisted() {
        Set<String> listed = new HashSet<>();
        matches.forEach(match -> listed.add(match.part().id()));
        List<Offer> unlisted = new ArrayList<>();
        for (Part part : PartFinder.all(catalogue)) {
            if (!listed.contains(part.id())) {
                before(part).ifPresent(unlisted::add);
            }
        }
        return unlisted;
    }

    /** What is not listed on the list's newest day is sold out from then on. */
    private Optional<OfferChange> soldOut(Offer before) {
        return list.rows().stream()
                .map(PriceRow::asOf)
                .max(Comparator.naturalOrder())
                .filter(day -> before.stock() > 0 && !day.isBefore(before.asOf()))
                .map(
                        day ->
                                new OfferChange(
                                        catalogue.part(before.part()).orElseThrow(),
                                        Optional.of(before),
                                        new Offer(
                                                before.part(),
                                                before.supplier(),
                                                before.price(),
                                                0,
                                                before.leadDays(),
                                                day)));
    }
}
