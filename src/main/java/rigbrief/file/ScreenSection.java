package rigbrief.file;

import java.util.List;
import java.util.Optional;
import rigbrief.brief.Screen;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.Text;
import rigbrief.part.Part;
import rigbrief.part.Port;
import rigbrief.part.Resolution;
import rigbrief.part.Slot;

/** Reads what a brief says about the picture. */
final class ScreenSection {
    private ScreenSection() {}

    static Optional<Screen> read(Keys root, Names names) {
        return root.keys("display").flatMap(keys -> screen(keys, names));
    }

    private static Optional<Screen> screen(Keys keys, Names names) {
        Optional<Resolution> resolution = keys.one("resolution", Resolution::read);
        int refreshHz = keys.cells().whole("refresh", 24, 1_000);
        int bits = keys.cells().wholeOr("bits", 6, 12, 8);
        List<Port> inputs = keys.list("inputs", Port::read);
        int count = keys.cells().wholeOr("count", 1, 4, 1);
        boolean buy = keys.cells().yes("buy");
        Optional<String> part = part(keys, names, buy);
        if (buy && !inputs.isEmpty()) {
            keys.fault(
                    "inputs",
                    "no inputs for a display that is bought with the machine",
                    "take inputs out, or write buy: no");
        }
        keys.finish();
        return resolution.map(size -> new Screen(size, refreshHz, bits, inputs, count, buy, part));
    }

    private static Optional<String> part(Keys keys, Names names, boolean buy) {
        Optional<Text> text = keys.text("part");
        if (text.isPresent() && !buy) {
            keys.fault("part", "a part only beside buy: yes", "write buy: yes, or take part out");
        }
        return text.flatMap(it -> names.part(it, Slot.DISPLAY)).map(Part::id);
    }
}
