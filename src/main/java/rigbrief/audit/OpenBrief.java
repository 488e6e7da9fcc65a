package rigbrief.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.brief.Brief.Strength;
import rigbrief.brief.Kept;
import rigbrief.brief.Screen;
import rigbrief.brief.Wishes;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Display;
import rigbrief.part.Drive;
import rigbrief.part.Slot;
import rigbrief.part.WirelessStandard;
import rigbrief.quantity.Money;

/**
 * The brief of somebody who asks for nothing but that the parts of a list work together.
 *
 * <p>No musts, no limits, the usual place and weights. It asks for what is on the list and no more:
 * a wireless card, a licence, a display or a second drive that is there was wanted, and lines
 * marked as kept are the client's own. The ceiling is the list's own price, so that no goal is
 * measured against money that nobody named.
 */
public final class OpenBrief {
    /** What it is called. */
    public static final String NAME = "open";

    private static final int CONFIDENCE_PERCENT = 80;
    private static final int BITS_PER_COLOUR = 8;

    private OpenBrief() {}

    /** The open brief for a filed build. */
    public static Brief of(BuildRecord filed, Catalogue catalogue) {
        List<Kept> keep = new ArrayList<>();
        for (BuildLine line : filed.lines()) {
            if (line.kept()) {
                keep.add(new Kept(line.slot(), line.part(), line.pieces()));
            }
        }
        Build build = filed.build();
        Money farAbove = Money.ofMinor(Long.MAX_VALUE / 1_000_000, catalogue.currency());
        Brief boundless = brief(build, catalogue, keep, farAbove);
        long totalMinor = new Assessor(boundless, catalogue).assess(build).cost().totalMinor();
        Money ceiling = Money.ofMinor(Math.max(1, totalMinor), catalogue.currency());
        return brief(build, catalogue, keep, ceiling);
    }

    private static Brief brief(Build build, Catalogue catalogue, List<Kept> keep, Money ceiling) {
        return new Brief(
                NAME,
                "anybody",
                catalogue.currency(),
                1,
                ceiling,
                0,
                CONFIDENCE_PERCENT,
                screen(build),
                List.of(),
                List.of(),
                new Brief.Looks(
                        LightingNeed.ANY, Optional.empty(), Strength.NONE, Optional.empty()),
                new Brief.Noise(OptionalInt.empty(), OptionalInt.empty(), 0.8),
                new Brief.Wireless(wishFor(build, Slot.WIRELESS), WirelessStandard.values()[0]),
                new Brief.MemoryNeed(0, false),
                new Brief.StorageNeed(storageGb(build), List.of(), 3),
                new Brief.SizeNeed(
                        OptionalInt.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                List.of(),
                keep,
                new Brief.Avoid(List.of(), List.of()),
                new Brief.Buying(List.of(), OptionalInt.empty(), OptionalInt.empty()),
                new Brief.SystemNeed(wishFor(build, Slot.SYSTEM), Optional.empty()),
                new Brief.Place(22, 0, 230, 4, 0.3, tariff(catalogue), false),
                new Brief.Headroom(80, 1, 5),
                usualWishes(),
                new Brief.Fees(Money.zero(catalogue.currency()), 0));
    }

    private static Strength wishFor(Build build, Slot slot) {
        return build.has(slot) ? Strength.WISH : Strength.NONE;
    }

    /** Who lists a second drive wants the room of both. */
    private static int storageGb(Build build) {
        if (!build.has(Slot.SECOND_DRIVE)) {
            return 0;
        }
        int storageGb = 0;
        for (Drive drive : build.drives()) {
            storageGb += drive.capacityGb();
        }
        return storageGb;
    }

    private static Optional<Screen> screen(Build build) {
        if (!build.has(Slot.DISPLAY)) {
            return Optional.empty();
        }
        Display display = build.display();
        return Optional.of(
                new Screen(
                        display.resolution(),
                        display.refreshHz(),
                        BITS_PER_COLOUR,
                        List.of(),
                        build.pieces(Slot.DISPLAY),
                        true,
                        Optional.empty()));
    }

    /** 0.30 a kWh, in hundredths of the minor unit; common practice. */
    private static long tariff(Catalogue catalogue) {
        return Money.zero(catalogue.currency()).amount().scale() == 0 ? 30 : 3_000;
    }

    private static Wishes usualWishes() {
        Map<String, Integer> weights = new LinkedHashMap<>();
        weights.put("workloads", 4);
        weights.put("value", 2);
        weights.put("quiet", 2);
        for (String goal : List.of("upgrade-room", "look", "energy", "lifetime", "simple-order")) {
            weights.put(goal, 1);
        }
        return new Wishes(weights);
    }
}
