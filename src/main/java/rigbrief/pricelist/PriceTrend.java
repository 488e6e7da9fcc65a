package rigbrief.pricelist;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rigbrief.catalogue.Offer;
import rigbrief.pricelist.PriceHistory.Series;

/**
 * How prices have moved over a history: each supplier's newest price of a part against its oldest.
 *
 * @param offers number of offers known, those of now among them
 * @param series number of pairs of part and supplier with more than one
 * @param from date of the oldest offer
 * @param to date of the newest
 * @param dearer pairs whose price went up
 * @param cheaper pairs whose price went down
 * @param moves those that moved, the largest first
 */
public record PriceTrend(
        int offers,
        int series,
        LocalDate from,
        LocalDate to,
        int dearer,
        int cheaper,
        List<Move> moves) {
    public PriceTrend {
        moves = List.copyOf(moves);
    }

    /**
     * A price that moved.
     *
     * @param before the oldest offer
     * @param after the newest
     * @param percent by how much, with one decimal
     */
    public record Move(Offer before, Offer after, BigDecimal percent) {
        boolean rises() {
            return after.price().compareTo(before.price()) > 0;
        }
    }

    /**
     * The trend of a history.
     *
     * @throws IllegalArgumentException when the history is empty
     */
    public static PriceTrend of(PriceHistory history) {
        if (history.size() == 0) {
            throw new IllegalArgumentException("found no offers, expected some; ask size() first");
        }
        List<Move> moves = new ArrayList<>();
        int several = 0;
        LocalDate from = LocalDate.MAX;
        LocalDate to = LocalDate.MIN;
        for (Series series : history.series()) {
            several += series.offers().size() > 1 ? 1 : 0;
            from = earlier(from, series.oldest().asOf());
            to = series.newest().asOf().isAfter(to) ? series.newest().asOf() : to;
            move(series, moves);
        }
        moves.sort(Comparator.comparing(move -> move.percent().abs().negate()));
        int dearer = (int) moves.stream().filter(move -> move.rises()).count();
        return new PriceTrend(
                history.size(), several, from, to, dearer, moves.size() - dearer, moves);
    }

    private static LocalDate earlier(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }

    private static void move(Series series, List<Move> moves) {
        BigDecimal old = series.oldest().price().amount();
        BigDecimal now = series.newest().price().amount();
        if (old.compareTo(now) != 0) {
            BigDecimal percent =
                    now.subtract(old).movePointRight(2).divide(old, 1, RoundingMode.HALF_UP);
            moves.add(new Move(series.oldest(), series.newest(), percent));
        }
    }
}
