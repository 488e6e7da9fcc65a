package rigbrief.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.build.SetAside;
import rigbrief.build.Units;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.YamlText;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/** Reads and writes the parts that were replaced after they had been ordered. */
final class AsideSection {
    private static final String KEY = "aside";

    private final UnitsSection units;
    private final MoneyForm money;

    AsideSection(UnitsSection units, MoneyForm money) {
        this.units = units;
        this.money = money;
    }

    /** The parts, in file order. */
    List<SetAside> read(Keys root) {
        List<SetAside> all = new ArrayList<>();
        for (Keys keys : root.listOfKeys(KEY)) {
            one(keys).ifPresent(all::add);
            keys.finish();
        }
        return all;
    }

    private Optional<SetAside> one(Keys keys) {
        Optional<Slot> slot = keys.one("slot", Forms.word(Slot.class));
        Optional<String> part = keys.one("part", Forms::id);
        String name = keys.cells().text("name");
        Optional<String> supplier = keys.maybe("supplier", Forms::id);
        Optional<Money> price = keys.one("unit-price", money);
        boolean kept = keys.cells().yes("kept");
        int before = keys.faultCount();
        List<Units> parted = units.read(keys);
        if (parted.isEmpty() && keys.faultCount() == before) {
            keys.fault("units", "at least one group of units", "take the part out of aside");
        }
        if (slot.isEmpty() || part.isEmpty() || price.isEmpty() || parted.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new SetAside(slot.get(), part.get(), name, supplier, price.get(), kept, parted));
    }

    /** Writes the parts, if there are any. */
    static void write(List<SetAside> all, YamlText yaml) {
        if (all.isEmpty()) {
            return;
        }
        yaml.begin(KEY);
        for (SetAside aside : all) {
            yaml.item()
                    .plain("slot", aside.slot().word())
                    .text("part", aside.part())
                    .text("name", aside.name());
            aside.supplier().ifPresent(supplier -> yaml.text("supplier", supplier));
            yaml.text("unit-price", aside.unitPrice().plain()).yes("kept", aside.kept());
            UnitsSection.write(aside.units(), yaml);
            yaml.end();
        }
        yaml.end();
    }
}
