package rigbrief.pricelist;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.part.Part;
import rigbrief.pricelist.Suspicion.Kind;
import rigbrief.quantity.Money;

/** Finds what is more likely wrong than right in a matched row. */
final class SuspicionFinder {
    /** A price that moves by more than this, in percent, is looked at by a person first. */
    private static final BigDecimal MOST_PERCENT = BigDecimal.valueOf(40);

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private final Catalogue catalogue;
    private final String supplier;

    SuspicionFinder(Catalogue catalogue, String supplier) {
        this.catalogue = catalogue;
        this.supplier = supplier;
    }

    List<Suspicion> of(Match match, Optional<Offer> before) {
        List<Suspicion> found = new ArrayList<>();
        PriceRow row = match.row();
        before.filter(offer -> moved(offer.price(), row.price()))
                .ifPresent(offer -> found.add(moved(match, offer)));
        before.filter(offer -> row.asOf().isBefore(offer.asOf()))
                .ifPresent(offer -> found.add(older(match, offer)));
        if (before.isEmpty()) {
            median(match.part())
                    .filter(median -> far(median, row.price().amount()))
                    .ifPresent(median -> found.add(far(match, median)));
        }
        if (row.stock() < 0) {
            found.add(
                    suspicion(
                            match,
                            Kind.STOCK_NEGATIVE,
                            "stock %d, and no stock is below 0".formatted(row.stock())));
        }
        return found;
    }

    /** Whether the difference is over the limit; exact, so that 40 % itself is not. */
    private static boolean moved(Money old, Money now) {
        BigDecimal difference = now.minus(old).amount().abs();
        return difference.multiply(HUNDRED).compareTo(old.amount().multiply(MOST_PERCENT)) > 0;
    }

    private static Suspicion moved(Match match, Offer before) {
        BigDecimal percent =
                new OfferChange(
                                match.part(),
                                Optional.of(before),
                                new Offer(
                                        before.part(),
                                        before.supplier(),
                                        match.row().price(),
                                        0,
                                        0,
                                        match.row().asOf()))
                        .percent()
                        .orElseThrow();
        return suspicion(
                match,
                Kind.PRICE_MOVED,
                "price %s, %s%s %% against %s of %s"
                        .formatted(
                                match.row().price().grouped(),
                                percent.signum() > 0 ? "+" : "",
                                percent.toPlainString(),
                                before.price().grouped(),
                                before.asOf()));
    }

    private static Suspicion older(Match match, Offer before) {
        return suspicion(
                match,
                Kind.OLDER,
                "of %s, and the offer known is of %s".formatted(match.row().asOf(), before.asOf()));
    }

    /** The median of the others' prices; of an even number, the mean of the middle two. */
    private Optional<BigDecimal> median(Part part) {
        List<BigDecimal> others =
                catalogue.offers(part.id()).stream()
                        .filter(offer -> !offer.supplier().equals(supplier))
                        .map(offer -> offer.price().amount())
                        .sorted()
                        .toList();
        if (others.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal upper = others.get(others.size() / 2);
        BigDecimal lower = others.get((others.size() - 1) / 2);
        return Optional.of(upper.add(lower).divide(TWO));
    }

    private static boolean far(BigDecimal median, BigDecimal price) {
        return price.compareTo(median.multiply(TWO)) > 0
                || price.multiply(TWO).compareTo(median) < 0;
    }

    private static Suspicion far(Match match, BigDecimal median) {
        return suspicion(
                match,
                Kind.PRICE_FAR,
                "price %s, and other suppliers ask %s in the middle"
                        .formatted(match.row().price().grouped(), Money.grouped(median)));
    }

    private static Suspicion suspicion(Match match, Kind kind, String text) {
        return new Suspicion(match.row(), Optional.of(match.part()), kind, text);
    }

    static Suspicion twice(List<Match> same) {
        Match last = same.get(same.size() - 1);
        String lines =
                same.stream()
                        .map(match -> Integer.toString(match.row().line()))
                        .collect(Collectors.joining(", "));
        return suspicion(
                last,
                Kind.TWICE,
                "the lines %s are one part, %s".formatted(lines, last.part().id()));
    }

    static Suspicion disagrees(PriceRow row, Collection<Part> parts) {
        String ids = parts.stream().map(Part::id).collect(Collectors.joining(", "));
        return new Suspicion(
                row,
                Optional.empty(),
                Kind.DISAGREES,
                "its numbers name different parts: %s".formatted(ids));
    }
}
