package rigbrief.rule.fit;

import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Port;
import rigbrief.part.Slot;

/** The outputs a screen is plugged into. */
final class ScreenOutputs {
    private ScreenOutputs() {}

    /** Outputs of the card; without one, the board's where the processor draws; else none. */
    static List<Port> of(Build build) {
        if (build.has(Slot.GRAPHICS)) {
            return build.graphics().outputs();
        }
        return build.processor().integratedGraphics() ? build.board().outputs() : List.of();
    }

    /** How many outputs these are. */
    static int count(List<Port> ports) {
        int count = 0;
        for (int i = 0; i < ports.size(); i++) {
            count += ports.get(i).count();
        }
        return count;
    }

    /** Screens to be driven: those on the order, else those of the brief, else one. */
    static int screens(Assessment it) {
        if (it.build().has(Slot.DISPLAY)) {
            return it.build().pieces(Slot.DISPLAY);
        }
        return it.brief().screen().isPresent() ? it.brief().screen().get().count() : 1;
    }
}
