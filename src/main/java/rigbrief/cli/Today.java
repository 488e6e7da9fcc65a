package rigbrief.cli;

import java.time.Clock;
import java.time.LocalDate;

/**
 * The day it is, for what is noted with a date. Nothing that is computed depends on it: whoever
 * wants the same file twice names the date.
 */
final class Today {
    private Today() {}

    static LocalDate date() {
        return LocalDate.now(Clock.systemDefaultZone());
    }
}
