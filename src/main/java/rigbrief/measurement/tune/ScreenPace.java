package rigbrief.measurement.tune;

import java.util.OptionalInt;
import rigbrief.brief.Brief;
import rigbrief.brief.Screen;
import rigbrief.build.Build;
import rigbrief.part.Display;
import rigbrief.part.Slot;

/**
 * How the client's screen follows a frame rate.
 *
 * @param refreshHz its refresh rate in Hz; empty when nobody said
 * @param variableFromHz where its variable refresh begins, in Hz; 0 for a screen without; empty
 *     when nobody said
 */
public record ScreenPace(OptionalInt refreshHz, OptionalInt variableFromHz) {
    /** The screen of a build, or of the brief where the build has none. */
    static ScreenPace of(Brief brief, Build build, OptionalInt variableFromHz) {
        if (build.has(Slot.DISPLAY)) {
            Display display = (Display) build.part(Slot.DISPLAY);
            OptionalInt from =
                    variableFromHz.isPresent()
                            ? variableFromHz
                            : OptionalInt.of(display.vrrLowHz());
            return new ScreenPace(OptionalInt.of(display.refreshHz()), from);
        }
        OptionalInt refreshHz =
                brief.screen()
                        .map(Screen::refreshHz)
                        .map(OptionalInt::of)
                        .orElse(OptionalInt.empty());
        return new ScreenPace(refreshHz, variableFromHz);
    }

    /** Whether it is known to have no variable refresh. */
    public boolean fixed() {
        return variableFromHz.isPresent() && variableFromHz.getAsInt() == 0;
    }

    /** Whether it is known to have variable refresh. */
    public boolean variable() {
        return variableFromHz.isPresent() && variableFromHz.getAsInt() > 0;
    }
}
