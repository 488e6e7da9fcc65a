package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/** Files a build for tests: each part at its first offer. */
public final class Filed {
    private final Build build;
    private final Map<Slot, List<Units>> units = new EnumMap<>(Slot.class);
    private PartState state = PartState.WANTED;

    private Filed(Build build) {
        this.build = build;
    }

    /** A build of which nothing is ordered yet. */
    public static Filed of(Build build) {
        return new Filed(build);
    }

    /** All parts in one state. */
    public Filed all(PartState value) {
        state = value;
        return this;
    }

    /** The units of one slot. */
    public Filed with(Slot slot, Units... groups) {
        units.put(slot, List.of(groups));
        return this;
    }

    /** The filed build. */
    public BuildRecord record(Brief brief, Catalogue catalogue) {
        List<BuildLine> lines = new ArrayList<>();
        for (Slot slot : build.filled().keySet()) {
            String id = build.part(slot).id();
            boolean kept = brief.keep().stream().anyMatch(it -> it.slot() == slot);
            Optional<Offer> offer =
                    kept ? Optional.empty() : catalogue.offers(id).stream().findFirst();
            lines.add(
                    new BuildLine(
                            slot,
                            build.part(slot),
                            build.pieces(slot),
                            offer.map(Offer::supplier),
                            offer.map(Offer::price).orElse(Money.zero(brief.currency())),
                            kept ? PartState.RECEIVED : state,
                            kept,
                            units.getOrDefault(slot, List.of())));
        }
        return new BuildRecord(
                Optional.of(brief),
                Optional.of("lean"),
                catalogue.name(),
                catalogue.digest(),
                lines);
    }
}
