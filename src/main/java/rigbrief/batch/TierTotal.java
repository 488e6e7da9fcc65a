package rigbrief.batch;

/**
 * What one proposal comes to.
 *
 * @param tier the tier's word, or {@value #VARIANTS} for an order in two variants
 * @param total its total, a plain decimal in the brief's currency
 * @param gapPercent how far it can be from the best, a plain decimal rounded up; 0 when proven,
 *     empty where nothing is known
 */
public record TierTotal(String tier, String total, String gapPercent) {
    /** An order in two variants: found, not proven. */
    public static final String VARIANTS = "variants";

    /** Whether nothing better exists in the catalogue. */
    public boolean proven() {
        return gapPercent.equals("0");
    }
}
