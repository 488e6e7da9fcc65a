package rigbrief.pricelist;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import rigbrief.catalogue.Offer;
import rigbrief.part.Part;

/**
 * What a price list makes of one offer.
 *
 * @param part the part
 * @param before the offer as it was; empty when the supplier had none
 * @param after the offer as it will be
 */
public record OfferChange(Part part, Optional<Offer> before, Offer after) {

    /** By how much the price moves, in percent with one decimal; empty for a new offer. */
    public Optional<BigDecimal> percent() {
        return before.map(offer -> percent(offer, after));
    }

    private static BigDecimal percent(Offer before, Offer after) {
        BigDecimal old = before.price().amount();
        return after.price()
                .amount()
                .subtract(old)
                .movePointRight(2)
                .divide(old, 1, RoundingMode.HALF_UP);
    }

    /** Whether the price moves. */
    public boolean moves() {
        return before.isPresent() && !before.get().price().equals(after.price());
    }

    /** Whether there is no longer any in stock, where there was some. */
    public boolean sellsOut() {
        return before.filter(offer -> offer.stock() > 0).isPresent() && after.stock() == 0;
    }
}
