package rigbrief.report;

import java.util.Locale;
import rigbrief.build.OrderStatus.Action;

/** How what is to be done is spelt in JSON. */
final class ActionWord {
    private ActionWord() {}

    static String of(Action action) {
        return action.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
