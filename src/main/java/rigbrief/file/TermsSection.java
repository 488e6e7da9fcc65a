package rigbrief.file;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.brief.Brief.Avoid;
import rigbrief.brief.Brief.Buying;
import rigbrief.brief.Brief.Fees;
import rigbrief.brief.Brief.Headroom;
import rigbrief.brief.Brief.Place;
import rigbrief.brief.Brief.Strength;
import rigbrief.brief.Brief.SystemNeed;
import rigbrief.brief.Brief.Wireless;
import rigbrief.brief.MainsByCountry;
import rigbrief.brief.Wishes;
import rigbrief.file.tree.Keys;
import rigbrief.part.Cells;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.part.WirelessStandard;
import rigbrief.quantity.Money;

/** Reads under which terms a brief's machine is bought and used. */
final class TermsSection {
    /** The soft goals with their weights where a brief has no wishes at all. */
    static final Map<String, Integer> USUAL_WEIGHTS = usualWeights();

    private static final String WORKLOADS = "workloads";
    private static final String SIMPLE_ORDER = "simple-order";
    private static final String FEW_SUPPLIERS = "few-suppliers";
    private static final int WORKLOADS_WEIGHT = 4;
    private static final BigDecimal USUAL_TARIFF = new BigDecimal("0.30");

    private TermsSection() {}

    private static Map<String, Integer> usualWeights() {
        Map<String, Integer> weights = new LinkedHashMap<>();
        weights.put(WORKLOADS, WORKLOADS_WEIGHT);
        weights.put("value", 2);
        weights.put("quiet", 2);
        weights.put("upgrade-room", 1);
        weights.put("look", 1);
        weights.put("energy", 1);
        weights.put("lifetime", 1);
        weights.put(SIMPLE_ORDER, 1);
        return weights;
    }

    static Wireless wireless(Keys root) {
        Optional<Keys> keys = inner(root, "wireless");
        Strength strength = strength(root, keys, "wireless");
        Optional<WirelessStandard> atLeast =
                keys.flatMap(it -> it.maybe("at-least", Forms.word(WirelessStandard.class)));
        keys.ifPresent(Keys::finish);
        WirelessStandard oldest =
                strength == Strength.NONE ? WirelessStandard.NONE : WirelessStandard.WIFI5;
        return new Wireless(strength, atLeast.orElse(oldest));
    }

    static SystemNeed system(Keys root, Names names) {
        Optional<Keys> keys = inner(root, "system");
        Strength strength = strength(root, keys, "system");
        Optional<String> part =
                keys.flatMap(it -> it.text("part"))
                        .flatMap(text -> names.part(text, Slot.SYSTEM))
                        .map(Part::id);
        keys.ifPresent(Keys::finish);
        return new SystemNeed(strength, part);
    }

    private static Optional<Keys> inner(Keys root, String key) {
        return root.hasKeys(key) ? root.keys(key) : Optional.empty();
    }

    /** A need is one word, or keys of which one is {@code need}. */
    private static Strength strength(Keys root, Optional<Keys> keys, String key) {
        Optional<Strength> strength =
                keys.isPresent()
                        ? keys.get().one("need", TermsSection::strength)
                        : root.maybe(key, TermsSection::strength);
        return strength.orElse(Strength.NONE);
    }

    private static Strength strength(String entry) throws Cells.Malformed {
        for (Strength strength : Strength.values()) {
            if (LimitsSection.word(strength).equals(entry)) {
                return strength;
            }
        }
        throw new Cells.Malformed("one of must, wish, none", "use one of these words");
    }

    static Avoid avoid(Keys root, Names names) {
        Optional<Keys> keys = root.keys("avoid");
        Avoid avoid =
                keys.map(it -> new Avoid(names.makers(it, "makers"), names.avoided(it, "parts")))
                        .orElse(new Avoid(List.of(), List.of()));
        keys.ifPresent(Keys::finish);
        return avoid;
    }

    static Buying buying(Keys root, Names names) {
        Optional<Keys> found = root.keys("buying");
        if (found.isEmpty()) {
            return new Buying(List.of(), OptionalInt.empty(), OptionalInt.empty());
        }
        Keys keys = found.get();
        Buying buying =
                new Buying(
                        names.suppliers(keys, "suppliers"),
                        keys.cells().maybeWhole("at-most-suppliers", 1, 100),
                        keys.cells().maybeWhole("within-days", 0, 365),
                        keys.cells().yes("variants"));
        keys.finish();
        return buying;
    }

    static Place place(Keys root, Currency currency, Locale locale) {
        int usualV = MainsByCountry.volts(locale.getCountry());
        Optional<Keys> found = root.keys("place");
        if (found.isEmpty()) {
            return new Place(22, 0, usualV, 4, 0.3, tariff(USUAL_TARIFF, currency), false);
        }
        Keys keys = found.get();
        Cells cells = keys.cells();
        Place place =
                new Place(
                        cells.numberOr("room-c", 0, 45, 22),
                        cells.numberOr("altitude-m", -450, 5_500, 0),
                        keys.maybe("mains-v", TermsSection::mains).orElse(usualV),
                        cells.numberOr("hours-per-day", 0, 24, 4),
                        cells.numberOr("load-share", 0, 1, 0.3),
                        tariff(keys, currency),
                        cells.yes("helper-processor"));
        keys.finish();
        return place;
    }

    private static int mains(String entry) throws Cells.Malformed {
        if (!entry.equals("115") && !entry.equals("230")) {
            throw new Cells.Malformed("one of 115, 230", "write the nearer of the two");
        }
        return Integer.parseInt(entry);
    }

    private static long tariff(Keys keys, Currency currency) {
        int decimals = currency.getDefaultFractionDigits() + 2;
        return keys.maybe("tariff", Forms.scaled("a price of one kWh", decimals, 0, 1_000))
                .map(Integer::longValue)
                .orElse(tariff(USUAL_TARIFF, currency));
    }

    /** Hundredths of a minor unit. */
    private static long tariff(BigDecimal perKwh, Currency currency) {
        return perKwh.movePointRight(currency.getDefaultFractionDigits() + 2).longValueExact();
    }

    static Headroom headroom(Keys root) {
        Optional<Keys> found = root.keys("headroom");
        if (found.isEmpty()) {
            return new Headroom(80, 1, 5);
        }
        Keys keys = found.get();
        Headroom headroom =
                new Headroom(
                        keys.maybe("supply-share", Forms.percent(20, 100)).orElse(80),
                        keys.cells().wholeOr("supply-sizes-up", 0, 5, 1),
                        keys.cells().wholeOr("thermal-margin-k", 0, 40, 5));
        keys.finish();
        return headroom;
    }

    static Wishes wishes(Keys root) {
        Optional<Keys> found = root.keys("wishes");
        return new Wishes(found.map(TermsSection::weights).orElse(USUAL_WEIGHTS));
    }

    private static Map<String, Integer> weights(Keys keys) {
        Map<String, Integer> weights = new LinkedHashMap<>();
        for (String goal : USUAL_WEIGHTS.keySet()) {
            int unnamed = goal.equals(WORKLOADS) ? WORKLOADS_WEIGHT : 0;
            int weight = keys.cells().wholeOr(goal, 0, 5, unnamed);
            if (weight > 0) {
                weights.put(goal, weight);
            }
        }
        int few = keys.cells().wholeOr(FEW_SUPPLIERS, 0, 5, 0);
        if (keys.has(FEW_SUPPLIERS) && keys.has(SIMPLE_ORDER)) {
            String advice = "take one out: few-suppliers is another name of simple-order";
            keys.fault(FEW_SUPPLIERS, "one of simple-order, few-suppliers", advice);
        } else if (few > 0) {
            weights.put(SIMPLE_ORDER, few);
        }
        keys.finish();
        return weights;
    }

    static Fees fees(Keys root, Currency currency) {
        Money free = Money.zero(currency);
        Optional<Keys> keys = root.keys("fees");
        Fees fees =
                keys.map(
                                it ->
                                        new Fees(
                                                it.maybe("assembly", new MoneyForm(currency, true))
                                                        .orElse(free),
                                                it.maybe("tax", Forms.basisPoints(0, 100))
                                                        .orElse(0)))
                        .orElse(new Fees(free, 0));
        keys.ifPresent(Keys::finish);
        return fees;
    }
}
