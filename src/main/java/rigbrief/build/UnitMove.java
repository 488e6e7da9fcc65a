package rigbrief.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** One move of some of a part's units, checked. */
final class UnitMove {
    private static final Comparator<Units> OLDEST_FIRST =
            Comparator.comparing(units -> units.since().orElse(LocalDate.MIN));
    private static final Comparator<Units> IN_ORDER =
            Comparator.comparing(Units::state).thenComparing(OLDEST_FIRST);

    private final Named named;
    private final MoveRequest request;
    private final PartState from;
    private final int count;

    UnitMove(Named named, MoveRequest request) throws MoveRefused {
        this.named = named;
        this.request = request;
        this.from = from();
        MoveFacts.check(named, request, from);
        this.count = count();
        refuseEarlier();
    }

    private PartState from() throws MoveRefused {
        List<PartState> possible = new ArrayList<>(LegalMoves.from(request.to()));
        if (request.tells()) {
            possible.add(request.to());
        }
        if (request.from().isPresent()) {
            return asked(request.from().get(), possible);
        }
        Optional<PartState> usual = LegalMoves.usual(request.to());
        if (usual.isPresent() && there(usual.get()) > 0) {
            return usual.get();
        }
        List<PartState> there = possible.stream().filter(state -> there(state) > 0).toList();
        if (there.isEmpty()) {
            throw new MoveRefused(impossible());
        }
        if (there.size() > 1) {
            throw new MoveRefused(
                    "found units of %s that are %s, expected one of these; add --from %s"
                            .formatted(named.part(), words(there, " and "), words(there, " or ")));
        }
        return there.get(0);
    }

    private PartState asked(PartState state, List<PartState> possible) throws MoveRefused {
        if (!possible.contains(state) || there(state) == 0) {
            throw new MoveRefused(impossible());
        }
        return state;
    }

    private int there(PartState state) {
        return named.units().stream()
                .filter(units -> units.state() == state)
                .mapToInt(Units::count)
                .sum();
    }

    /** What there is, and where it may go. */
    private String impossible() {
        List<String> now = new ArrayList<>();
        List<PartState> next = new ArrayList<>();
        for (PartState state : PartState.values()) {
            if (there(state) > 0) {
                now.add(there(state) + " " + state.word());
                LegalMoves.to(state).stream().filter(to -> !next.contains(to)).forEach(next::add);
            }
        }
        next.sort(Comparator.naturalOrder());
        List<PartState> sources = LegalMoves.from(request.to());
        return "found %s of %s, expected some that are %s, from where they come to %s; %s"
                .formatted(
                        String.join(", ", now),
                        named.part(),
                        words(sources, " or "),
                        request.to().word(),
                        next.isEmpty()
                                ? "nothing more can be done with them"
                                : "possible now: " + words(next, ", "));
    }

    private static String words(List<PartState> states, String between) {
        return states.stream().map(PartState::word).collect(Collectors.joining(between));
    }

    private int count() throws MoveRefused {
        int there = there(from);
        boolean singles = request.to() == PartState.FAULTY && from != PartState.FAULTY;
        if (request.count().isEmpty() && singles && there > 1) {
            throw new MoveRefused(
                    "found %d units of %s that are %s, expected to hear how many are faulty; add --units 1"
                            .formatted(there, named.part(), from.word()));
        }
        int wanted = request.count().orElse(there);
        if (wanted < 1 || wanted > there) {
            throw new MoveRefused(
                    "--units: found %d, expected a number from 1 to %d, as many as %s %s of %s; correct it"
                            .formatted(
                                    wanted,
                                    there,
                                    there == 1 ? "is" : "are",
                                    from.word(),
                                    named.part()));
        }
        return wanted;
    }

    private void refuseEarlier() throws MoveRefused {
        for (Units units : taken()) {
            LocalDate since = units.since().orElse(LocalDate.MIN);
            if (request.date().isBefore(since)) {
                throw new MoveRefused(
                        "--date: found %s, expected %s or later, the day from which %s was %s; correct it"
                                .formatted(
                                        request.date(), since, named.part(), units.state().word()));
            }
        }
    }

    /** The units that are moved, those first that have been longest in their state. */
    private List<Units> taken() {
        List<Units> taken = new ArrayList<>();
        int left = count;
        for (Units units : candidates()) {
            if (left > 0) {
                taken.add(units.counting(Math.min(left, units.count())));
                left -= Math.min(left, units.count());
            }
        }
        return taken;
    }

    private List<Units> candidates() {
        return named.units().stream()
                .filter(units -> units.state() == from)
                .sorted(OLDEST_FIRST)
                .toList();
    }

    /** All units after the move. */
    List<Units> units() {
        List<Units> after = new ArrayList<>(rest());
        taken().forEach(units -> after.add(Mover.changed(units, named, request)));
        boolean another = request.to() == PartState.RETURNED && from != PartState.RETURNED;
        if (another && named.inTheBuild()) {
            after.add(Units.of(count, PartState.WANTED));
        }
        after.sort(IN_ORDER);
        return merged(after);
    }

    private List<Units> rest() {
        List<Units> rest = new ArrayList<>();
        named.units().stream().filter(units -> units.state() != from).forEach(rest::add);
        int skip = count;
        for (Units units : candidates()) {
            int gone = Math.min(skip, units.count());
            skip -= gone;
            if (units.count() > gone) {
                rest.add(units.counting(units.count() - gone));
            }
        }
        return rest;
    }

    private static List<Units> merged(List<Units> sorted) {
        List<Units> merged = new ArrayList<>();
        for (Units units : sorted) {
            int last = merged.size() - 1;
            if (last >= 0 && merged.get(last).like(units)) {
                merged.set(last, units.counting(merged.get(last).count() + units.count()));
            } else {
                merged.add(units);
            }
        }
        return merged;
    }

    HistoryEntry entry(Named of) {
        return new HistoryEntry.Move(
                request.date(),
                request.by(),
                of.slot(),
                of.part(),
                count,
                from,
                request.to(),
                request.supplier(),
                request.paid(),
                request.refunded(),
                request.note());
    }
}
