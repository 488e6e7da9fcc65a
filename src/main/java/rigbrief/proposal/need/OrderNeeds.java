package rigbrief.proposal.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.Buying;
import rigbrief.brief.Brief.Strength;
import rigbrief.brief.Brief.SystemNeed;
import rigbrief.brief.Brief.Wireless;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Kept;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.FrontPort;
import rigbrief.part.WirelessStandard;
import rigbrief.wording.Phrase;

/** What else has to be in the box, and where it may come from. */
final class OrderNeeds {
    private OrderNeeds() {}

    static void addMusts(Brief brief, Catalogue catalogue, List<Need> needs) {
        if (brief.wireless().strength() == Strength.MUST) {
            needs.add(wireless(brief.wireless().atLeast(), Need.Kind.MUST));
        }
        if (!brief.frontPorts().isEmpty()) {
            needs.add(frontPorts(brief.frontPorts()));
        }
        brief.keep().forEach(kept -> needs.add(kept(kept)));
        addAvoid(brief, catalogue, needs);
        addBuying(brief.buying(), catalogue, needs);
        if (brief.system().strength() == Strength.MUST) {
            needs.add(system(brief.system(), catalogue, Need.Kind.MUST));
        }
    }

    static void addWishes(Brief brief, Catalogue catalogue, List<Need> needs) {
        if (brief.wireless().strength() == Strength.WISH) {
            needs.add(wireless(brief.wireless().atLeast(), Need.Kind.WISH));
        }
        if (brief.system().strength() == Strength.WISH) {
            needs.add(system(brief.system(), catalogue, Need.Kind.WISH));
        }
    }

    private static Need wireless(WirelessStandard atLeast, Need.Kind kind) {
        List<Level> looser = new ArrayList<>();
        WirelessStandard[] all = WirelessStandard.values();
        for (int i = atLeast.ordinal() - 1; i > 0; i--) {
            looser.add(wireless(all[i]));
        }
        boolean last = atLeast.ordinal() == all.length - 1;
        Phrase words =
                atLeast == WirelessStandard.NONE
                        ? Phrase.of("need.any-standard")
                        : Phrase.of("standard." + atLeast.word());
        return Need.stepped(
                "wireless",
                Phrase.of("need.name.wireless", words),
                kind,
                wireless(atLeast),
                it ->
                        new BriefDraft(it)
                                .wireless(new Wireless(Strength.NONE, WirelessStandard.NONE))
                                .toBrief(),
                looser,
                looser.stream().findFirst(),
                last ? Optional.empty() : Optional.of(wireless(all[atLeast.ordinal() + 1])),
                it -> Phrase.of("need.none-needed"));
    }

    private static Level wireless(WirelessStandard atLeast) {
        return new Level(
                atLeast == WirelessStandard.NONE
                        ? Phrase.of("need.no-wireless")
                        : Phrase.of("standard." + atLeast.word()),
                it -> new BriefDraft(it).wireless(new Wireless(Strength.MUST, atLeast)).toBrief());
    }

    private static Need frontPorts(List<FrontPort> ports) {
        Phrase words =
                Phrase.joined(
                        ", ",
                        ports.stream().map(port -> Phrase.of("port.name." + port.word())).toList());
        return Need.whole(
                "front-ports",
                Phrase.of("need.name.front-ports", words),
                Need.Kind.MUST,
                new Level(words, it -> new BriefDraft(it).frontPorts(ports).toBrief()),
                it -> new BriefDraft(it).frontPorts(List.of()).toBrief());
    }

    private static Need kept(Kept kept) {
        String slot = kept.slot().word();
        return Need.whole(
                "keep-" + slot,
                Phrase.of("need.name.keep", Phrase.of("slot.name." + slot), kept.part().name()),
                Need.Kind.OWN,
                new Level(
                        Phrase.data(kept.part().name()),
                        it -> {
                            List<Kept> all = others(it, kept);
                            all.add(kept);
                            return new BriefDraft(it).keep(all).toBrief();
                        }),
                it -> new BriefDraft(it).keep(others(it, kept)).toBrief());
    }

    private static List<Kept> others(Brief brief, Kept kept) {
        List<Kept> others = new ArrayList<>(brief.keep());
        others.remove(kept);
        return others;
    }

    private static void addAvoid(Brief brief, Catalogue catalogue, List<Need> needs) {
        Brief.Avoid avoid = brief.avoid();
        List<String> all = new ArrayList<>(avoid.makers());
        avoid.parts().forEach(part -> all.add(Names.part(catalogue, part)));
        if (!all.isEmpty()) {
            Phrase words = Phrase.data(String.join(", ", all));
            needs.add(
                    Need.whole(
                            "avoid",
                            Phrase.of("need.name.avoid", words),
                            Need.Kind.MUST,
                            new Level(words, it -> new BriefDraft(it).avoid(avoid).toBrief()),
                            it ->
                                    new BriefDraft(it)
                                            .avoid(new Brief.Avoid(List.of(), List.of()))
                                            .toBrief()));
        }
    }

    private static void addBuying(Buying buying, Catalogue catalogue, List<Need> needs) {
        if (!buying.suppliers().isEmpty()) {
            Phrase words = Names.suppliers(catalogue, buying.suppliers());
            needs.add(
                    Need.whole(
                            "suppliers",
                            Phrase.of("need.name.suppliers", words),
                            Need.Kind.MUST,
                            new Level(words, it -> withSuppliers(it, buying.suppliers())),
                            it -> withSuppliers(it, List.of())));
        }
        buying.atMostSuppliers().ifPresent(most -> needs.add(atMostSuppliers(most)));
        buying.withinDays().ifPresent(days -> needs.add(withinDays(days)));
    }

    private static Need atMostSuppliers(int most) {
        IntFunction<Level> level =
                count ->
                        new Level(
                                Phrase.data(String.valueOf(count)),
                                it -> withMost(it, OptionalInt.of(count)));
        return Need.stepped(
                "at-most-suppliers",
                Phrase.of("need.name.at-most-suppliers", most),
                Need.Kind.MUST,
                level.apply(most),
                it -> withMost(it, OptionalInt.empty()),
                List.of(level.apply(most + 1), level.apply(most + 2)),
                Optional.of(level.apply(most + 1)),
                most > 1 ? Optional.of(level.apply(most - 1)) : Optional.empty(),
                it -> Phrase.data(String.valueOf(Math.max(most, it.cost().suppliers()))));
    }

    private static Need withinDays(int days) {
        IntFunction<Level> level =
                within ->
                        new Level(
                                Phrase.of("need.days", within),
                                it -> withDays(it, OptionalInt.of(within)));
        return Need.stepped(
                "within-days",
                Phrase.of("need.name.within-days", days),
                Need.Kind.MUST,
                level.apply(days),
                it -> withDays(it, OptionalInt.empty()),
                StoreNeeds.levels(Ladder.DAYS.allOver(days), level),
                BodyNeeds.optional(Ladder.DAYS.over(days)).map(level::apply),
                BodyNeeds.optional(Ladder.DAYS.under(days)).map(level::apply),
                it -> Phrase.of("need.longer"));
    }

    private static Brief withSuppliers(Brief brief, List<String> suppliers) {
        Buying buying = brief.buying();
        return with(
                brief,
                new Buying(
                        suppliers,
                        buying.atMostSuppliers(),
                        buying.withinDays(),
                        buying.variants()));
    }

    private static Brief withMost(Brief brief, OptionalInt most) {
        Buying buying = brief.buying();
        return with(
                brief,
                new Buying(buying.suppliers(), most, buying.withinDays(), buying.variants()));
    }

    private static Brief withDays(Brief brief, OptionalInt days) {
        Buying buying = brief.buying();
        return with(
                brief,
                new Buying(buying.suppliers(), buying.atMostSuppliers(), days, buying.variants()));
    }

    private static Brief with(Brief brief, Buying buying) {
        return new BriefDraft(brief).buying(buying).toBrief();
    }

    private static Need system(SystemNeed system, Catalogue catalogue, Need.Kind kind) {
        Phrase words =
                system.part()
                        .map(part -> Phrase.data(Names.part(catalogue, part)))
                        .orElse(Phrase.of("need.any-licence"));
        return Need.whole(
                "system",
                Phrase.of("need.name.system", words),
                kind,
                new Level(
                        words,
                        it ->
                                new BriefDraft(it)
                                        .system(new SystemNeed(Strength.MUST, system.part()))
                                        .toBrief()),
                it ->
                        new BriefDraft(it)
                                .system(new SystemNeed(Strength.NONE, Optional.empty()))
                                .toBrief());
    }
}
