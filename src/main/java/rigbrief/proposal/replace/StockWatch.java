package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessor;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.part.Part;

/**
 * Sets a filed build against a newer catalogue: what is at risk, what to order first, and what
 * takes the place of each part if it sells out.
 */
public final class StockWatch {
    /** Common practice: less than this many times what is wanted may be gone by tomorrow. */
    private static final int LOW_STOCK_TIMES = 3;

    /** Common practice: from two working weeks on, a late order delays the whole machine. */
    private static final int LONG_LEAD_DAYS = 10;

    /** Common practice: smaller moves are not worth a word. */
    private static final int PRICE_MOVE_PERCENT = 5;

    private final Replacer replacer;
    private final Disturbance disturbance;

    /** A watch that works fallbacks out with these limits and assumptions. */
    public StockWatch(Limits limits, Disturbance disturbance) {
        this.replacer = new Replacer(limits, disturbance);
        this.disturbance = disturbance;
    }

    /**
     * The watch.
     *
     * @param filed the build
     * @param today the newer catalogue
     */
    public Watch watch(BuildRecord filed, Catalogue today) {
        Situation situation = Situation.of(filed, Trouble.NONE, today, disturbance);
        Replacement now = replacer.leastChange(filed, Trouble.NONE, today);
        Optional<Way> standing = now.ways().stream().findFirst();
        BuildRecord base = standing.map(Way::record).orElse(filed);
        List<Watch.Line> lines = new ArrayList<>();
        for (BuildLine line : filed.lines()) {
            lines.add(line(line, situation, base, standing.isPresent()));
        }
        boolean changes = now.impossible() || !now.nothingToDo();
        return new Watch(
                filed,
                situation.brief(),
                today,
                lines,
                changes ? Optional.of(now) : Optional.empty(),
                situation.plannedMinor(),
                standing.map(way -> way.audit().cost().totalMinor()),
                situation.remarks());
    }

    private Watch.Line line(
            BuildLine line, Situation situation, BuildRecord base, boolean fallbacks) {
        Assessor assessor = situation.assessor();
        Part part = situation.build().part(line.slot());
        int toBuy =
                line.kept() ? 0 : assessor.pricing().unitsToBuy(line.slot(), part, line.pieces());
        List<Offer> offers = new ArrayList<>();
        if (toBuy > 0) {
            for (Offer offer : assessor.offers().ofUnits(part, toBuy)) {
                if (offer != null) {
                    offers.add(offer);
                }
            }
        }
        boolean there =
                base.line(line.slot()).filter(it -> it.part().id().equals(part.id())).isPresent();
        Optional<Way> fallback = Optional.empty();
        boolean asked = toBuy > 0 && fallbacks && there;
        if (asked) {
            fallback =
                    replacer
                            .leastChange(base, Trouble.without(part.id()), situation.catalogue())
                            .ways()
                            .stream()
                            .findFirst();
        }
        Optional<Long> now =
                offers.stream().map(it -> it.price().minorUnits()).min(Comparator.naturalOrder());
        return new Watch.Line(
                line.slot(),
                part,
                line.pieces(),
                toBuy,
                line.unitPrice().minorUnits(),
                now,
                offers.size(),
                offers.stream().mapToInt(Offer::stock).max().orElse(0),
                offers.stream().mapToInt(Offer::leadDays).min().orElse(0),
                risks(line, toBuy, offers, now, asked && fallback.isEmpty()),
                fallback);
    }

    private static List<Watch.Risk> risks(
            BuildLine line, int toBuy, List<Offer> offers, Optional<Long> now, boolean noFallback) {
        List<Watch.Risk> risks = new ArrayList<>();
        if (toBuy == 0) {
            return risks;
        }
        if (offers.isEmpty()) {
            return List.of(Watch.Risk.GONE);
        }
        if (noFallback) {
            risks.add(Watch.Risk.NO_FALLBACK);
        }
        if (offers.stream().allMatch(it -> it.stock() < (long) LOW_STOCK_TIMES * toBuy)) {
            risks.add(Watch.Risk.LOW_STOCK);
        }
        if (offers.size() == 1) {
            risks.add(Watch.Risk.SINGLE_OFFER);
        }
        if (offers.stream().allMatch(it -> it.leadDays() >= LONG_LEAD_DAYS)) {
            risks.add(Watch.Risk.LONG_LEAD);
        }
        long planned = line.unitPrice().minorUnits();
        long moved = now.orElse(planned) - planned;
        if (Math.abs(moved) * 100 >= planned * PRICE_MOVE_PERCENT && moved != 0) {
            risks.add(moved > 0 ? Watch.Risk.DEARER : Watch.Risk.CHEAPER);
        }
        return risks;
    }
}
