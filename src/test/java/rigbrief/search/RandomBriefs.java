package rigbrief.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.brief.Brief.Strength;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Kept;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Colour;
import rigbrief.part.FrontPort;
import rigbrief.part.Part;
import rigbrief.part.SidePanel;
import rigbrief.part.Slot;
import rigbrief.part.WirelessStandard;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Money;

/** Scenario briefs with terms of every sort changed at random. */
public final class RandomBriefs {
    private static final List<Slot> OFTEN_KEPT =
            List.of(Slot.CASE, Slot.SUPPLY, Slot.DRIVE, Slot.SECOND_DRIVE, Slot.COOLER, Slot.FANS);

    private RandomBriefs() {}

    /** A brief of a small world, with more terms. */
    public static Brief brief(Random random, Catalogue catalogue) {
        Brief brief = SmallWorld.brief(random, catalogue);
        BriefDraft draft = new BriefDraft(brief);
        draft.ceiling(
                Money.ofMinor(
                        brief.ceiling().minorUnits() * (1 + random.nextInt(3)), brief.currency()));
        looks(draft, random);
        buying(draft, random, catalogue);
        if (random.nextInt(6) == 0) {
            draft.keep(kept(random, catalogue));
        }
        if (random.nextInt(6) == 0) {
            draft.size(
                    new Brief.SizeNeed(
                            OptionalInt.of(200 + random.nextInt(500)),
                            Optional.of(Length.mm(300 + random.nextInt(250))),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(Mass.g(9_000 + random.nextInt(9_000)))));
        }
        if (random.nextInt(6) == 0) {
            draft.memory(new Brief.MemoryNeed(8 << random.nextInt(4), random.nextInt(3) == 0));
        }
        if (random.nextInt(6) == 0) {
            draft.storage(new Brief.StorageNeed(500 << random.nextInt(4), List.of(), 3));
        }
        if (random.nextInt(6) == 0) {
            draft.wireless(
                    new Brief.Wireless(
                            random.nextBoolean() ? Strength.MUST : Strength.WISH,
                            any(WirelessStandard.values(), random)));
        }
        if (random.nextInt(6) == 0) {
            draft.frontPorts(List.of(any(FrontPort.values(), random)));
        }
        if (random.nextInt(6) == 0) {
            draft.noise(
                    new Brief.Noise(
                            OptionalInt.of(26 + random.nextInt(16)), OptionalInt.empty(), 0.8));
        }
        if (random.nextInt(6) == 0) {
            draft.quantity(1 + random.nextInt(3));
        }
        return draft.toBrief();
    }

    private static void looks(BriefDraft draft, Random random) {
        if (random.nextInt(2) == 0) {
            return;
        }
        draft.looks(
                new Brief.Looks(
                        any(LightingNeed.values(), random),
                        random.nextInt(3) == 0
                                ? Optional.empty()
                                : Optional.of(random.nextBoolean() ? Colour.BLACK : Colour.WHITE),
                        any(Strength.values(), random),
                        random.nextInt(3) == 0
                                ? Optional.of(any(SidePanel.values(), random))
                                : Optional.empty()));
    }

    private static void buying(BriefDraft draft, Random random, Catalogue catalogue) {
        if (random.nextInt(2) == 0) {
            return;
        }
        List<String> some = new ArrayList<>();
        for (Supplier supplier : catalogue.suppliers()) {
            if (random.nextInt(4) > 0) {
                some.add(supplier.id());
            }
        }
        draft.buying(
                new Brief.Buying(
                        random.nextBoolean() ? some : List.of(),
                        random.nextBoolean()
                                ? OptionalInt.of(1 + random.nextInt(4))
                                : OptionalInt.empty(),
                        random.nextBoolean()
                                ? OptionalInt.of(3 + random.nextInt(20))
                                : OptionalInt.empty()));
    }

    private static List<Kept> kept(Random random, Catalogue catalogue) {
        Slot slot = OFTEN_KEPT.get(random.nextInt(OFTEN_KEPT.size()));
        List<Part> parts = catalogue.parts(slot.kind());
        return parts.isEmpty()
                ? List.of()
                : List.of(new Kept(slot, parts.get(random.nextInt(parts.size())), 1));
    }

    private static <T> T any(T[] values, Random random) {
        return values[random.nextInt(values.length)];
    }
}
