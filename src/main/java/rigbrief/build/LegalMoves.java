package rigbrief.build;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * From which states a unit may come to which.
 *
 * <table>
 * <caption>The moves there are</caption>
 * <tr><th>to</th><th>as usual from</th><th>also from</th></tr>
 * <tr><td>wanted</td><td>ordered (the order was cancelled, nothing was paid)</td><td></td></tr>
 * <tr><td>ordered</td><td>wanted</td><td></td></tr>
 * <tr><td>received</td><td>ordered</td><td>wanted (bought over the counter), faulty (found sound
 * after all), fitted (taken out)</td></tr>
 * <tr><td>fitted</td><td>received</td><td></td></tr>
 * <tr><td>faulty</td><td></td><td>received, fitted</td></tr>
 * <tr><td>returned</td><td>faulty</td><td>received (not needed), ordered (cancelled)</td></tr>
 * </table>
 *
 * <p>Nothing comes back from returned: what takes its place is wanted anew.
 */
public final class LegalMoves {
    private static final Map<PartState, Row> ROWS = new EnumMap<>(PartState.class);

    static {
        row(PartState.WANTED, Optional.of(PartState.ORDERED));
        row(PartState.ORDERED, Optional.of(PartState.WANTED));
        row(
                PartState.RECEIVED,
                Optional.of(PartState.ORDERED),
                PartState.WANTED,
                PartState.FAULTY,
                PartState.FITTED);
        row(PartState.FITTED, Optional.of(PartState.RECEIVED));
        row(PartState.FAULTY, Optional.empty(), PartState.RECEIVED, PartState.FITTED);
        row(
                PartState.RETURNED,
                Optional.of(PartState.FAULTY),
                PartState.RECEIVED,
                PartState.ORDERED);
    }

    private LegalMoves() {}

    private record Row(Optional<PartState> usual, List<PartState> also) {}

    private static void row(PartState to, Optional<PartState> usual, PartState... also) {
        ROWS.put(to, new Row(usual, List.of(also)));
    }

    /** The state that units come from when nobody says otherwise; empty when there is none such. */
    public static Optional<PartState> usual(PartState to) {
        return ROWS.get(to).usual();
    }

    /** All states that units may come from, the usual one first. */
    public static List<PartState> from(PartState to) {
        List<PartState> all = new ArrayList<>();
        usual(to).ifPresent(all::add);
        all.addAll(ROWS.get(to).also());
        return all;
    }

    /** The states that units in a state may come to, in the order of the states. */
    public static List<PartState> to(PartState from) {
        List<PartState> all = new ArrayList<>();
        for (PartState to : PartState.values()) {
            if (from(to).contains(from)) {
                all.add(to);
            }
        }
        return all;
    }
}
