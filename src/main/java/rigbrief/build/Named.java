package rigbrief.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rigbrief.part.Slot;

/**
 * The part that a request names: a line of the build, or one that was set aside.
 *
 * @param slot its slot
 * @param part its id
 * @param name maker and model
 * @param supplier planned supplier
 * @param kept whether it is the client's own
 * @param units its units
 * @param aside place among those set aside; -1 for a line of the build
 */
record Named(
        Slot slot,
        String part,
        String name,
        Optional<String> supplier,
        boolean kept,
        List<Units> units,
        int aside) {
    private static final int IN_THE_BUILD = -1;

    static Named of(BuildRecord record, MoveRequest request) throws MoveRefused {
        List<Named> lines = new ArrayList<>();
        for (BuildLine line : record.lines()) {
            if (meant(request.part(), line.slot(), line.part().id())) {
                lines.add(of(line, record.machines()));
            }
        }
        List<Named> found =
                request.aside() || lines.isEmpty() ? aside(record, request.part()) : lines;
        if (found.isEmpty()) {
            throw new MoveRefused(unknown(record, request));
        }
        if (found.size() > 1 && found.get(0).aside() == IN_THE_BUILD) {
            throw new MoveRefused(twice(request.part(), found));
        }
        return found.get(0);
    }

    private static boolean meant(String word, Slot slot, String part) {
        return word.equals(part) || word.equals(slot.word());
    }

    private static Named of(BuildLine line, int machines) {
        return new Named(
                line.slot(),
                line.part().id(),
                line.part().name(),
                line.supplier(),
                line.kept(),
                line.units(machines),
                IN_THE_BUILD);
    }

    /** Those set aside under a name, with what is still to be done first. */
    private static List<Named> aside(BuildRecord record, String word) {
        List<Named> open = new ArrayList<>();
        List<Named> done = new ArrayList<>();
        for (int i = 0; i < record.aside().size(); i++) {
            SetAside it = record.aside().get(i);
            if (meant(word, it.slot(), it.part())) {
                boolean over = Units.leastAdvanced(it.units()) == PartState.RETURNED;
                (over ? done : open).add(of(it, i));
            }
        }
        open.addAll(done);
        return open;
    }

    private static Named of(SetAside it, int place) {
        return new Named(
                it.slot(), it.part(), it.name(), it.supplier(), it.kept(), it.units(), place);
    }

    private static String unknown(BuildRecord record, MoveRequest request) {
        List<String> names = new ArrayList<>();
        if (!request.aside()) {
            record.lines().forEach(line -> names.add(line.part().id()));
        }
        record.aside().forEach(it -> names.add(it.part()));
        return "found %s, expected a part of the build%s: %s; name one of them, or its slot"
                .formatted(
                        request.part(),
                        request.aside() ? " that was set aside" : "",
                        names.isEmpty() ? "there is none" : String.join(", ", names));
    }

    private static String twice(String word, List<Named> found) {
        return "found %s in the slots %s, expected one of them; name the slot instead of the part"
                .formatted(
                        word,
                        found.stream()
                                .map(named -> named.slot().word())
                                .collect(Collectors.joining(" and ")));
    }

    boolean inTheBuild() {
        return aside == IN_THE_BUILD;
    }

    /** The build's lines, this one with other units. */
    List<BuildLine> lines(BuildRecord record, List<Units> others) {
        return record.lines().stream()
                .map(line -> inTheBuild() && line.slot() == slot ? line.with(others) : line)
                .toList();
    }

    /** The parts set aside, this one with other units. */
    List<SetAside> aside(BuildRecord record, List<Units> others) {
        List<SetAside> all = new ArrayList<>(record.aside());
        if (!inTheBuild()) {
            all.set(aside, all.get(aside).with(others));
        }
        return all;
    }
}
