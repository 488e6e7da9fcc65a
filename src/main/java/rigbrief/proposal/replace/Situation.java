package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessor;
import rigbrief.assess.Settled;
import rigbrief.audit.OpenBrief;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Kept;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.build.SetAside;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/**
 * Where a filed build stands once its trouble is taken into account: what can still be bought, what
 * is settled, and what giving a part up would cost.
 *
 * @param filed the build, with faulty units marked as such
 * @param brief the brief, less what the client keeps but can't be used any more
 * @param catalogue today's offers, less those that the trouble takes away
 * @param build the parts as they were chosen
 * @param settled what was ordered and still counts
 * @param losses by slot, what giving up its sound units would cost; only where some are here
 * @param faulty slots with faulty or returned units
 * @param plannedMinor what everything was to cost as filed, in minor units
 * @param lineMinor by slot, what its units were to cost as filed, in minor units
 * @param plannedDeliveryMinor deliveries as filed, in minor units
 * @param remarks what else to tell
 */
record Situation(
        BuildRecord filed,
        Brief brief,
        Catalogue catalogue,
        Build build,
        Settled settled,
        Map<Slot, Loss> losses,
        Set<Slot> faulty,
        long plannedMinor,
        Map<Slot, Long> lineMinor,
        long plannedDeliveryMinor,
        List<String> remarks) {
    private static final int OPEN_CEILING_TIMES = 2;

    /**
     * What giving up sound units costs.
     *
     * @param lossMinor money lost
     * @param minutes work made
     * @param weightMinor both weighed in money: the measure of disturbance
     */
    record Loss(long lossMinor, int minutes, long weightMinor) {}

    /** The situation of a build in trouble, with the offers of a catalogue. */
    static Situation of(
            BuildRecord build, Trouble trouble, Catalogue catalogue, Disturbance disturbance) {
        return new Reading(Marking.faulty(build, trouble, catalogue), trouble, catalogue)
                .read(disturbance);
    }

    /** An assessor of this situation. */
    Assessor assessor() {
        return new Assessor(brief, catalogue, settled);
    }

    /** By how much changing some slots disturbs what is here, in minor units. */
    long disturbanceMinor(Set<Slot> changed) {
        long sum = 0;
        for (Slot slot : changed) {
            sum += losses.containsKey(slot) ? losses.get(slot).weightMinor() : 0;
        }
        return sum;
    }

    /** Gathers a situation line by line. */
    private static final class Reading {
        private final BuildRecord filed;
        private final Trouble trouble;
        private final Catalogue catalogue;
        private final int machines;
        private final List<Settled.Holding> holdings = new ArrayList<>();
        private final Map<Slot, Loss> losses = new EnumMap<>(Slot.class);
        private final Set<Slot> faulty = java.util.EnumSet.noneOf(Slot.class);
        private final Map<Slot, Long> lineMinor = new EnumMap<>(Slot.class);
        private final Set<String> shipped = new LinkedHashSet<>();
        private final Set<String> toShip = new LinkedHashSet<>();
        private final List<String> remarks = new ArrayList<>();
        private Build build = Build.empty();
        private long lostMinor;

        Reading(BuildRecord filed, Trouble trouble, Catalogue catalogue) {
            this.filed = filed;
            this.trouble = trouble;
            this.catalogue = catalogue;
            this.machines = filed.machines();
        }

        Situation read(Disturbance disturbance) {
            for (BuildLine line : filed.lines()) {
                Part part = catalogue.part(line.part().id()).orElse(line.part());
                build = build.with(line.slot(), part, line.pieces());
                lineMinor.put(line.slot(), 0L);
                if (!line.kept()) {
                    bought(line, part, disturbance);
                } else if (Marking.broken(line, machines)) {
                    faulty.add(line.slot());
                }
            }
            for (SetAside aside : filed.aside()) {
                aside.units().forEach(units -> returned(units, aside.supplier()));
            }
            long sunk = lostMinor + deliveries(shipped);
            long planned = sunk + deliveries(toShip);
            Catalogue left = OffersLeft.of(catalogue, trouble, filed);
            Brief brief = brief(left, planned);
            Settled settled = new Settled(holdings, sunk);
            long parts = lineMinor.values().stream().mapToLong(Long::longValue).sum();
            long plannedMinor =
                    new Assessor(brief, left, settled).pricing().totalMinor(parts + planned);
            return new Situation(
                    filed,
                    brief,
                    left,
                    build,
                    settled,
                    losses,
                    faulty,
                    plannedMinor,
                    lineMinor,
                    planned,
                    remarks);
        }

        private void bought(BuildLine line, Part part, Disturbance disturbance) {
            boolean gone = trouble.unavailable().contains(line.part().id());
            int held = 0;
            long paid = 0;
            long paidHere = 0;
            for (Units units : line.units(machines)) {
                long each = units.paid().orElse(line.unitPrice()).minorUnits();
                if (units.state() == PartState.RETURNED) {
                    returned(units, line.supplier());
                    continue;
                }
                lineMinor.merge(line.slot(), each * units.count(), Long::sum);
                Optional<String> supplier = units.supplier().or(line::supplier);
                supplier.ifPresent(units.state() == PartState.WANTED ? toShip::add : shipped::add);
                boolean counts = units.state().here() || units.state().promised() && !gone;
                if (counts) {
                    held += units.count();
                    paid += each * units.count();
                    paidHere += units.state().here() ? each * units.count() : 0;
                }
                if (Marking.broken(units)) {
                    faulty.add(line.slot());
                }
            }
            if (held > 0) {
                hold(line, part, held, paid, paidHere, disturbance);
            }
            if (gone && held == line.pieces() * machines) {
                remarks.add(
                        part.name()
                                + " is here already, so that it can't be bought any more"
                                + " changes nothing.");
            }
        }

        private void hold(
                BuildLine line,
                Part part,
                int held,
                long paid,
                long paidHere,
                Disturbance disturbance) {
            long loss = 0;
            if (paidHere > 0 || line.units(machines).stream().anyMatch(u -> u.state().here())) {
                loss = disturbance.lossMinor(paidHere, deliveries(supplierOf(line)));
                int minutes = Disturbance.minutes(line, machines);
                long weight = Math.max(1, loss + disturbance.workMinor(minutes));
                losses.put(line.slot(), new Loss(loss, minutes, weight));
            }
            holdings.add(
                    new Settled.Holding(
                            line.slot(),
                            part,
                            held,
                            supplierOf(line).stream().findFirst(),
                            paid,
                            loss));
        }

        private Set<String> supplierOf(BuildLine line) {
            Set<String> one = new LinkedHashSet<>();
            for (Units units : line.units(machines)) {
                if (units.state().promised() && one.isEmpty()) {
                    units.supplier().or(line::supplier).ifPresent(one::add);
                }
            }
            return one;
        }

        /** What was replaced earlier: its delivery is paid, and what did not come back is lost. */
        private void returned(Units units, Optional<String> planned) {
            units.supplier().or(() -> planned).ifPresent(shipped::add);
            if (units.paid().isPresent() && units.refunded().isPresent()) {
                Money lost = units.paid().get().minus(units.refunded().get());
                lostMinor += Math.max(0, lost.minorUnits()) * units.count();
            }
        }

        private long deliveries(Set<String> suppliers) {
            long sum = 0;
            for (Supplier supplier : catalogue.suppliers()) {
                sum += suppliers.contains(supplier.id()) ? supplier.delivery().minorUnits() : 0;
            }
            return sum;
        }

        private Brief brief(Catalogue left, long plannedDelivery) {
            Brief known = filed.brief().orElseGet(() -> open(left, plannedDelivery));
            List<Kept> keep = new ArrayList<>(known.keep());
            keep.removeIf(kept -> faulty.contains(kept.slot()));
            return keep.size() == known.keep().size()
                    ? known
                    : new BriefDraft(known).keep(keep).toBrief();
        }

        /** A plain list names no ceiling, so twice its own price stands in for one. */
        private Brief open(Catalogue left, long plannedDelivery) {
            long parts = lineMinor.values().stream().mapToLong(Long::longValue).sum();
            Brief open = OpenBrief.of(filed, left);
            long ceiling = Math.max(1, OPEN_CEILING_TIMES * (parts + plannedDelivery));
            remarks.add(
                    "The list names no brief: the parts must work together, and may cost up to %d"
                                    .formatted(OPEN_CEILING_TIMES)
                            + " times what they cost as listed.");
            return new BriefDraft(open).ceiling(Money.ofMinor(ceiling, left.currency())).toBrief();
        }
    }
}
