package rigbrief.measurement.accept;

import java.util.List;

/**
 * A cause with how likely it is among those considered.
 *
 * @param cause the cause
 * @param share its share of all likelihood, 0 to 1
 * @param strength its likeliest strength, in words; empty where it has none
 * @param effects what it would do to the speeds that were measured, at that strength
 */
public record RankedCause(Cause cause, double share, String strength, List<Effect> effects) {
    public RankedCause {
        effects = List.copyOf(effects);
    }

    /**
     * What a cause would do to one figure.
     *
     * @param what the figure
     * @param unit its unit
     * @param planned what was expected
     * @param then what would be expected with the cause
     * @param measured what was measured
     */
    public record Effect(
            String what, LineUnit unit, double planned, double then, double measured) {}
}
