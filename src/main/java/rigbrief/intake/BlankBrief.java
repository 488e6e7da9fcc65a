package rigbrief.intake;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.brief.Brief.Strength;
import rigbrief.brief.Wishes;
import rigbrief.part.WirelessStandard;
import rigbrief.quantity.Money;

/** The brief before the first answer: nothing asked, every figure the usual one. */
final class BlankBrief {
    private static final BigDecimal USUAL_TARIFF = new BigDecimal("0.30");

    private BlankBrief() {}

    static Brief named(String name, Currency currency) {
        return new Brief(
                name,
                "somebody",
                currency,
                1,
                Money.ofMinor(1, currency),
                0,
                80,
                Optional.empty(),
                List.of(),
                List.of(),
                new Brief.Looks(
                        LightingNeed.ANY, Optional.empty(), Strength.NONE, Optional.empty()),
                new Brief.Noise(OptionalInt.empty(), OptionalInt.empty(), 0.8),
                new Brief.Wireless(Strength.NONE, WirelessStandard.NONE),
                new Brief.MemoryNeed(0, false),
                new Brief.StorageNeed(0, List.of(), 3),
                new Brief.SizeNeed(
                        OptionalInt.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                List.of(),
                List.of(),
                new Brief.Avoid(List.of(), List.of()),
                new Brief.Buying(List.of(), OptionalInt.empty(), OptionalInt.empty()),
                new Brief.SystemNeed(Strength.NONE, Optional.empty()),
                new Brief.Place(22, 0, 230, 4, 0.3, tariff(currency), false),
                new Brief.Headroom(80, 1, 5),
                usualWishes(),
                new Brief.Fees(Money.zero(currency), 0));
    }

    /** 0.30 a kWh in hundredths of the minor unit, as the reader of briefs takes it. */
    private static long tariff(Currency currency) {
        return USUAL_TARIFF
                .movePointRight(currency.getDefaultFractionDigits() + 2)
                .longValueExact();
    }

    private static Wishes usualWishes() {
        Map<String, Integer> weights = new LinkedHashMap<>();
        weights.put("workloads", 4);
        weights.put("value", 2);
        weights.put("quiet", 2);
        for (String goal : List.of("upgrade-room", "look", "energy", "lifetime", "simple-order")) {
            weights.put(goal, 1);
        }
        return new Wishes(weights);
    }
}
