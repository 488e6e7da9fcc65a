package rigbrief.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.YamlText;
import rigbrief.quantity.Money;

/**
 * Reads and writes the units of a line. Their suppliers may have left the catalogue since, so they
 * are not looked up.
 */
final class UnitsSection {
    /** More machines than that make no order of one builder. */
    static final int MOST_UNITS = 160_000;

    private static final String KEY = "units";
    private static final String COUNT = "count";
    private static final String STATE = "state";

    private final MoneyForm money;

    UnitsSection(MoneyForm money) {
        this.money = money;
    }

    /** The units under a line; none where it has no such key. */
    List<Units> read(Keys line) {
        if (line.has(KEY) && line.has(STATE)) {
            line.fault(STATE, "no state beside units, which have each their own", "take it out");
        }
        List<Units> all = new ArrayList<>();
        for (Keys keys : line.listOfKeys(KEY)) {
            all.add(one(keys));
            keys.finish();
        }
        return all;
    }

    private Units one(Keys keys) {
        int count = keys.cells().whole(COUNT, 1, MOST_UNITS);
        PartState state = keys.cells().choice(STATE, PartState.class);
        Optional<LocalDate> since = keys.maybe("since", Forms::date);
        Optional<String> supplier = keys.maybe("supplier", Forms::id);
        Optional<Money> paid = keys.maybe("paid", money);
        Optional<Money> refunded = keys.maybe("refunded", money);
        return new Units(count, state, since, supplier, paid, refunded);
    }

    /** Writes the units of a line, if there are any. */
    static void write(List<Units> all, YamlText yaml) {
        if (all.isEmpty()) {
            return;
        }
        yaml.begin(KEY);
        for (Units units : all) {
            yaml.item().plain(COUNT, units.count()).plain(STATE, units.state().word());
            units.since().ifPresent(since -> yaml.plain("since", since));
            units.supplier().ifPresent(supplier -> yaml.text("supplier", supplier));
            units.paid().ifPresent(paid -> yaml.text("paid", paid.plain()));
            units.refunded().ifPresent(refunded -> yaml.text("refunded", refunded.plain()));
            yaml.end();
        }
        yaml.end();
    }
}
