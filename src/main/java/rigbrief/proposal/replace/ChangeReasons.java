package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.assess.Cost;
import rigbrief.build.Build;
import rigbrief.goal.Goal;
import rigbrief.goal.Goals;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/**
 * Says of every changed slot why it changes: its part is lost, or a rule breaks when it stays while
 * the others change, or it is a free choice that saves money or serves a goal.
 */
final class ChangeReasons {
    private final Situation situation;
    private final Trouble trouble;
    private final Assessor assessor;
    private final Set<Slot> lost;

    ChangeReasons(Situation situation, Trouble trouble, Assessor assessor, Set<Slot> lost) {
        this.situation = situation;
        this.trouble = trouble;
        this.assessor = assessor;
        this.lost = lost;
    }

    /** The changes of a new build, in slot order; the slots that trouble struck come first. */
    List<Change> of(Build after) {
        Set<Slot> slots = EnumSet.copyOf(situation.faulty());
        slots.addAll(Changes.between(situation.build(), after));
        List<Change> changes = new ArrayList<>();
        Assessment it = assessor.assess(after);
        for (Slot slot : slots) {
            changes.add(change(slot, it));
        }
        changes.sort(
                java.util.Comparator.comparing(
                                (Change change) ->
                                        !lost.contains(change.slot())
                                                && !situation.faulty().contains(change.slot()))
                        .thenComparing(Change::slot));
        return changes;
    }

    private Change change(Slot slot, Assessment it) {
        Build before = situation.build();
        Build after = it.build();
        Optional<String> cause = cause(slot, after);
        Optional<String> broken = cause.isPresent() ? cause : brokenWhenKept(slot, after);
        return new Change(
                slot,
                part(before, slot),
                before.pieces(slot),
                part(after, slot),
                after.pieces(slot),
                unitsToBuy(slot, after),
                slotMinor(slot, it) - situation.lineMinor().getOrDefault(slot, 0L),
                broken.isPresent(),
                broken.orElseGet(() -> freeChoice(slot, it)));
    }

    private static Optional<Part> part(Build build, Slot slot) {
        return build.has(slot) ? Optional.of(build.part(slot)) : Optional.empty();
    }

    private int unitsToBuy(Slot slot, Build after) {
        return after.has(slot)
                ? assessor.pricing().unitsToBuy(slot, after.part(slot), after.pieces(slot))
                : 0;
    }

    /** What a slot costs in a build, with what was paid or is lost, in minor units. */
    private long slotMinor(Slot slot, Assessment it) {
        Build build = it.build();
        long minor =
                situation
                        .settled()
                        .of(slot)
                        .map(
                                holding ->
                                        build.has(slot) && holding.of(build.part(slot))
                                                ? holding.paidMinor()
                                                : holding.lossMinor())
                        .orElse(0L);
        for (Cost.Line line : it.cost().lines()) {
            minor += line.slot() == slot ? line.unitMinor() * unitsToBuy(slot, build) : 0;
        }
        return minor;
    }

    private Optional<String> cause(Slot slot, Build after) {
        if (!situation.build().has(slot)) {
            return Optional.empty();
        }
        Part part = situation.build().part(slot);
        if (situation.faulty().contains(slot)) {
            boolean again = after.has(slot) && after.part(slot).id().equals(part.id());
            return Optional.of(
                    part.name()
                            + " is faulty"
                            + (again
                                    ? "; another of the same takes its place"
                                    : lost.contains(slot) ? " and can't be had again" : ""));
        }
        if (!lost.contains(slot)) {
            return Optional.empty();
        }
        return Optional.of(
                trouble.unavailable().contains(part.id())
                        ? part.name() + " can't be had any more"
                        : part.name() + " has no offer left on the brief's terms");
    }

    /** The first rule that breaks when this slot alone stays as it was. */
    private Optional<String> brokenWhenKept(Slot slot, Build after) {
        Build before = situation.build();
        Build kept =
                before.has(slot)
                        ? after.with(slot, before.part(slot), before.pieces(slot))
                        : after.without(slot);
        Assessment it = assessor.assess(kept);
        for (Rule rule : Rules.ALL) {
            if (rule.forbids(rule.check(it))) {
                String text = rule.check(it).text();
                String was =
                        before.has(slot) ? "with " + before.part(slot).name() : "with it empty";
                return Optional.of(
                        "%s: %s (%s)"
                                .formatted(
                                        was,
                                        text.isEmpty() ? "not so: " + title(rule) : text,
                                        rule.info().id()));
            }
        }
        return Optional.empty();
    }

    private static String title(Rule rule) {
        String title = rule.info().title();
        return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }

    /** What the change is worth against leaving the slot as it was. */
    private String freeChoice(Slot slot, Assessment it) {
        Build before = situation.build();
        Build kept =
                before.has(slot)
                        ? it.build().with(slot, before.part(slot), before.pieces(slot))
                        : it.build().without(slot);
        Assessment other = assessor.assess(kept);
        long saved = other.cost().totalMinor() - it.cost().totalMinor();
        String money =
                saved == 0
                        ? ""
                        : Money.ofMinor(Math.abs(saved), situation.brief().currency())
                                + (saved > 0 ? " cheaper" : " dearer");
        String goal = goal(it, other);
        return "a free choice: "
                + (money.isEmpty() || goal.isEmpty() ? money + goal : money + ", " + goal);
    }

    private String goal(Assessment it, Assessment other) {
        String most = "";
        long mostPoints = 0;
        for (Goal goal : Goals.ALL) {
            int weight = situation.brief().wishes().weight(goal.info().id());
            if (weight > 0 && !goal.info().id().equals("value")) {
                int now = goal.utility(it);
                int then = goal.utility(other);
                long points = Math.abs((long) weight * (now - then));
                if (points > mostPoints) {
                    mostPoints = points;
                    most =
                            String.format(
                                    Locale.ROOT,
                                    "%s %.2f instead of %.2f",
                                    goal.info().id(),
                                    now / (double) Goal.FULL,
                                    then / (double) Goal.FULL);
                }
            }
        }
        return most;
    }
}
