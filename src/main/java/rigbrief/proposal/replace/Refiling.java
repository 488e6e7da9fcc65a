package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessor;
import rigbrief.assess.Cost;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.build.PartState;
import rigbrief.build.SetAside;
import rigbrief.build.Units;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/**
 * Files a build anew: parts that stay keep their states, new ones are wanted, and what was ordered
 * and is not used any more is set aside, so that no order is lost.
 */
final class Refiling {
    private final Situation situation;
    private final Assessor assessor;
    private final Build after;
    private final Cost cost;

    Refiling(Situation situation, Assessor assessor, Build after) {
        this.situation = situation;
        this.assessor = assessor;
        this.after = after;
        this.cost = assessor.assess(after).cost();
    }

    /** The new build, with the changes in its history. */
    BuildRecord record(List<Change> changes) {
        BuildRecord record = start();
        for (Change change : changes) {
            record = change.sameAgain() ? again(record, change) : swapped(record, change);
        }
        List<BuildLine> lines = new ArrayList<>();
        for (BuildLine line : record.lines()) {
            boolean changed = changes.stream().anyMatch(it -> it.slot() == line.slot());
            lines.add(changed || line.kept() ? line : repriced(line));
        }
        return record.with(lines, record.aside(), record.history())
                .from(situation.catalogue().name(), situation.catalogue().digest());
    }

    private BuildRecord start() {
        BuildRecord filed = situation.filed();
        return filed.brief().isEmpty()
                ? filed
                : new BuildRecord(
                        Optional.of(situation.brief()),
                        filed.tier(),
                        filed.catalogueName(),
                        filed.catalogueDigest(),
                        filed.lines(),
                        filed.aside(),
                        filed.history());
    }

    private BuildRecord swapped(BuildRecord record, Change change) {
        Optional<String> why = Optional.of(change.because());
        if (change.to().isEmpty()) {
            return record.emptied(
                    change.slot(), situation.catalogue().asOf(), Optional.empty(), why);
        }
        BuildLine line = wanted(change.slot(), change.to().get(), change.toPieces());
        boolean some = change.units() < change.toPieces() * record.machines();
        if (!some) {
            return record.swapped(line, situation.catalogue().asOf(), Optional.empty(), why);
        }
        // Other packs of the same part: those that were ordered stay in the line.
        BuildLine before = record.line(change.slot()).orElseThrow();
        return swappedFor(
                record, before, line.with(units(before, record.machines(), change.units())), why);
    }

    /** Another unit of the same part: the faulty ones are set aside, the others stay. */
    private BuildRecord again(BuildRecord record, Change change) {
        BuildLine before = record.line(change.slot()).orElseThrow();
        BuildLine line = wanted(change.slot(), before.part(), before.pieces());
        return swappedFor(
                record,
                before,
                line.with(units(before, record.machines(), change.units())),
                Optional.of(change.because()));
    }

    private static List<Units> units(BuildLine before, int machines, int wanted) {
        List<Units> units = new ArrayList<>();
        for (Units group : before.units(machines)) {
            if (group.state().promised() || group.state() == PartState.RETURNED) {
                units.add(group);
            }
        }
        if (wanted > 0) {
            units.add(Units.of(wanted, PartState.WANTED));
        }
        return units;
    }

    private BuildRecord swappedFor(
            BuildRecord record, BuildLine before, BuildLine after, Optional<String> why) {
        List<BuildLine> lines = new ArrayList<>(record.lines());
        lines.remove(before);
        lines.add(after);
        lines.sort(Comparator.comparing(BuildLine::slot));
        List<SetAside> aside = new ArrayList<>(record.aside());
        List<Units> faulty =
                before.units(record.machines()).stream().filter(Marking::broken).toList();
        if (!faulty.isEmpty()) {
            aside.add(
                    new SetAside(
                            before.slot(),
                            before.part().id(),
                            before.part().name(),
                            before.supplier(),
                            before.unitPrice(),
                            before.kept(),
                            faulty));
        }
        List<HistoryEntry> history = new ArrayList<>(record.history());
        history.add(
                new HistoryEntry.Swap(
                        situation.catalogue().asOf(),
                        Optional.empty(),
                        before.slot(),
                        Optional.of(before.part().id()),
                        Optional.of(after.part().id()),
                        why));
        return record.with(lines, aside, history);
    }

    private BuildLine wanted(Slot slot, Part part, int pieces) {
        Optional<Cost.Line> bought = bought(slot);
        return new BuildLine(
                slot,
                part,
                pieces,
                bought.map(Cost.Line::supplier).filter(id -> !id.isEmpty()),
                Money.ofMinor(
                        bought.map(Cost.Line::unitMinor).orElse(0L),
                        situation.catalogue().currency()),
                PartState.WANTED,
                false);
    }

    /** A part that stays and that nobody ordered yet is bought where it is cheapest today. */
    private BuildLine repriced(BuildLine line) {
        int machines = situation.filed().machines();
        boolean allWanted =
                line.units(machines).stream().allMatch(units -> units.state() == PartState.WANTED);
        if (!allWanted) {
            return line;
        }
        BuildLine today = wanted(line.slot(), line.part(), line.pieces());
        return line.units().isEmpty() ? today : today.with(line.units());
    }

    private Optional<Cost.Line> bought(Slot slot) {
        return cost.lines().stream().filter(line -> line.slot() == slot).findFirst();
    }

    /** What suppliers pay back: everything begun that is neither used any more nor lost. */
    long refundMinor() {
        long refund = 0;
        for (BuildLine line : situation.filed().lines()) {
            if (!line.kept()) {
                refund += begunMinor(line) - retainedMinor(line.slot());
            }
        }
        return refund - lostMinor();
    }

    /** What restocking and postage eat up. */
    long lostMinor() {
        long lost = 0;
        for (var holding : situation.settled().holdings()) {
            lost += stays(holding.slot(), holding.part()) ? 0 : holding.lossMinor();
        }
        return lost;
    }

    private long begunMinor(BuildLine line) {
        long minor = 0;
        for (Units units : line.units(situation.filed().machines())) {
            boolean begun = units.state().promised() || Marking.broken(units);
            long each = units.paid().orElse(line.unitPrice()).minorUnits();
            minor += begun ? each * units.count() : 0;
        }
        return minor;
    }

    private long retainedMinor(Slot slot) {
        return situation
                .settled()
                .of(slot)
                .filter(holding -> stays(slot, holding.part()))
                .map(holding -> holding.paidMinor())
                .orElse(0L);
    }

    private boolean stays(Slot slot, Part part) {
        return after.has(slot) && after.part(slot).id().equals(part.id());
    }

    /** What parts that stay cost more than as filed, since they are not bought yet. */
    long stayingMinor(List<Change> changes) {
        long minor = 0;
        for (Cost.Line line : cost.lines()) {
            boolean changed = changes.stream().anyMatch(it -> it.slot() == line.slot());
            int units =
                    assessor.pricing()
                            .unitsToBuy(line.slot(), after.part(line.slot()), line.pieces());
            if (!changed) {
                long held =
                        situation
                                .settled()
                                .of(line.slot())
                                .map(holding -> holding.paidMinor())
                                .orElse(0L);
                minor +=
                        held
                                + line.unitMinor() * units
                                - situation.lineMinor().getOrDefault(line.slot(), 0L);
            }
        }
        return minor;
    }
}
