package rigbrief.file;

import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.brief.Brief.Looks;
import rigbrief.brief.Brief.MemoryNeed;
import rigbrief.brief.Brief.Noise;
import rigbrief.brief.Brief.SizeNeed;
import rigbrief.brief.Brief.StorageNeed;
import rigbrief.brief.Brief.Strength;
import rigbrief.file.tree.Keys;
import rigbrief.part.Cells;
import rigbrief.part.Cells.Form;
import rigbrief.part.Colour;
import rigbrief.part.Fact;
import rigbrief.part.SidePanel;
import rigbrief.part.Word;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;

/** Reads how a brief limits the machine: looks, noise, memory, storage, size. */
final class LimitsSection {
    private static final String ANY = "any";

    private LimitsSection() {}

    static Looks looks(Keys root) {
        Optional<Keys> found = root.keys("looks");
        if (found.isEmpty()) {
            return new Looks(LightingNeed.ANY, Optional.empty(), Strength.NONE, Optional.empty());
        }
        Keys keys = found.get();
        LightingNeed lighting =
                keys.maybe("lighting", LimitsSection::lighting).orElse(LightingNeed.ANY);
        Optional<Colour> colour = unlessAny(keys, "colour", Forms.word(Colour.class));
        boolean must = keys.cells().yes("colour-must");
        if (must && colour.isEmpty() && !keys.has("colour")) {
            keys.fault("colour-must", "a colour beside it", "name the colour, or take it out");
        }
        Optional<SidePanel> side = unlessAny(keys, "side", Forms.word(SidePanel.class));
        keys.finish();
        Strength strength = must ? Strength.MUST : Strength.WISH;
        return new Looks(lighting, colour, colour.isPresent() ? strength : Strength.NONE, side);
    }

    private static <E extends Enum<E> & Word> Optional<E> unlessAny(
            Keys keys, String key, Form<E> form) {
        boolean any = keys.text(key).filter(text -> text.text().equals(ANY)).isPresent();
        return any || keys.text(key).isEmpty() ? Optional.empty() : keys.maybe(key, form);
    }

    private static LightingNeed lighting(String entry) throws Cells.Malformed {
        for (LightingNeed need : LightingNeed.values()) {
            if (word(need).equals(entry)) {
                return need;
            }
        }
        throw new Cells.Malformed("one of none, switchable, any", "use one of these words");
    }

    /** How a brief spells what may be lit. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(java.util.Locale.ROOT);
    }

    static Noise noise(Keys root) {
        Optional<Keys> found = root.keys("noise");
        if (found.isEmpty()) {
            return new Noise(OptionalInt.empty(), OptionalInt.empty(), 0.8);
        }
        Keys keys = found.get();
        OptionalInt must = keys.cells().maybeWhole("must", 10, 80);
        OptionalInt wish = keys.cells().maybeWhole("wish", 10, 80);
        double distance = keys.cells().numberOr("distance", 0.2, 10, 0.8);
        keys.finish();
        return new Noise(must, wish, distance);
    }

    static MemoryNeed memory(Keys root) {
        return root.keys("memory").map(LimitsSection::memoryNeed).orElse(new MemoryNeed(0, false));
    }

    private static MemoryNeed memoryNeed(Keys keys) {
        MemoryNeed need =
                new MemoryNeed(
                        keys.cells().wholeOr("at-least", 0, 8_192, 0), keys.cells().yes("ecc"));
        keys.finish();
        return need;
    }

    static StorageNeed storage(Keys root, Names names) {
        return root.keys("storage")
                .map(keys -> storageNeed(keys, names))
                .orElse(new StorageNeed(0, java.util.List.of(), 3));
    }

    private static StorageNeed storageNeed(Keys keys, Names names) {
        StorageNeed need =
                new StorageNeed(
                        keys.cells().wholeOr("at-least", 0, 200_000, 0),
                        names.workloads(keys, "room-for"),
                        keys.cells().wholeOr("years", 0, 20, 3));
        keys.finish();
        return need;
    }

    static SizeNeed size(Keys root) {
        Optional<Keys> found = root.keys("size");
        if (found.isEmpty()) {
            return new SizeNeed(
                    OptionalInt.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }
        Keys keys = found.get();
        SizeNeed need =
                new SizeNeed(
                        litres(keys),
                        length(keys, "height-mm"),
                        length(keys, "width-mm"),
                        length(keys, "depth-mm"),
                        keys.maybe("at-most-kg", Forms.scaled("kilograms", 3, 1, 100))
                                .map(Mass::g));
        keys.finish();
        return need;
    }

    private static OptionalInt litres(Keys keys) {
        return keys.maybe("at-most-litres", Forms.scaled("litres", 1, 1, 500)).stream()
                .mapToInt(tenths -> tenths)
                .findFirst();
    }

    private static Optional<Length> length(Keys keys, String key) {
        return keys.cells().length(key, 60, 1_000) instanceof Fact.Stated<Length> stated
                ? Optional.of(stated.value())
                : Optional.empty();
    }
}
