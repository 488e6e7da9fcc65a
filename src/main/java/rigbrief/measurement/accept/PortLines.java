package rigbrief.measurement.accept;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief.Strength;
import rigbrief.build.Build;
import rigbrief.measurement.accept.SheetLine.Station;
import rigbrief.part.Display;
import rigbrief.part.Slot;

/** The lines about ports, slots in use, network and sleep. */
final class PortLines {
    private final Assessment it;
    private final Build build;
    private final List<SheetLine> lines = new ArrayList<>();

    private PortLines(Assessment it) {
        this.it = it;
        this.build = it.build();
    }

    static List<SheetLine> of(Assessment it) {
        PortLines made = new PortLines(it);
        made.all();
        return made.lines;
    }

    private void check(String id, Station part, String what, String how) {
        lines.add(SheetLine.check(id, part, what, how));
    }

    private void all() {
        check(
                "ports.front",
                Station.PORTS,
                "Every socket in front",
                "a stick is found in each, a" + " headset is heard");
        check(
                "ports.rear",
                Station.PORTS,
                "Every socket behind",
                "a stick is found in each, sound" + " comes from each jack");
        check(
                "ports.drives",
                Station.PORTS,
                "Every drive and slot in use",
                "each drive shows its full size and no warning; a large file copied and compared");
        picture();
        if (build.board().lanGbps() > 0) {
            check(
                    "ports.network",
                    Station.PORTS,
                    "Wired network",
                    "the link comes up at its full rate");
        }
        if (build.has(Slot.WIRELESS) || it.brief().wireless().strength() != Strength.NONE) {
            check(
                    "ports.wireless",
                    Station.PORTS,
                    "Wireless network",
                    "it joins and holds a copy of a large file, aerials fitted");
        }
        check(
                "ports.sleep",
                Station.PORTS,
                "Sleep, wake, and a cold start",
                "three times to sleep and back; then ten minutes without mains, and start");
    }

    private void picture() {
        int outputs =
                build.has(Slot.GRAPHICS)
                        ? build.graphics().outputCount()
                        : build.board().outputs().size();
        if (outputs > 0) {
            check(
                    "ports.outputs",
                    Station.PORTS,
                    "Every screen output of the %s (%d)"
                            .formatted(build.has(Slot.GRAPHICS) ? "card" : "board", outputs),
                    "each shows a picture");
            check(
                    "ports.picture",
                    Station.PORTS,
                    "The client's screen",
                    "its full picture%s, without a flicker in ten minutes".formatted(refresh()));
        }
    }

    private String refresh() {
        if (build.has(Slot.DISPLAY)) {
            return " at %d Hz".formatted(((Display) build.part(Slot.DISPLAY)).refreshHz());
        }
        return it.brief()
                .screen()
                .map(screen -> " at %d Hz".formatted(screen.refreshHz()))
                .orElse("");
    }
}
