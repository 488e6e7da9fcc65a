package rigbrief.explain;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Workings;
import rigbrief.assess.Workings.State;
import rigbrief.model.air.AirRise;
import rigbrief.model.heat.CardCooling;
import rigbrief.model.heat.CoolerResistance;
import rigbrief.model.heat.CoolingCase;
import rigbrief.model.heat.Speeds;
import rigbrief.model.noise.SoundSum;

/**
 * How the fan speeds of one state were chosen: every speed of the case fans in steps of a
 * twentieth, what cooler and card then need, and how loud the three together are.
 */
final class FanExplanation {
    private static final int STEPS = 20;
    private static final int LEAST_STEP = 4;
    private static final double FIFTH_POWER = 5;

    private final CoolingCase cooling;
    private final State state;
    private final Speeds chosen;

    /** Which fans. */
    enum Fans {
        CASE("case-share"),
        COOLER("cooler-share"),
        CARD("card-ratio");

        private final String word;

        Fans(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    FanExplanation(Assessment it, State state) {
        this.state = state;
        this.cooling = Workings.coolingCase(it, state);
        this.chosen = Workings.speeds(cooling);
    }

    Explanation of(Fans fans, String number, String title) {
        Derivation how =
                new Derivation(
                        number,
                        title,
                        "of case fan speeds from 0.2 to 1 in steps of 0.05, with the slowest"
                                + " cooler and card fans that keep both parts at their limits less"
                                + " the margin, the set with the least sound",
                        "common practice: the grid and the least speeds; laws of fans, air and"
                                + " resistances as in the numbers of heat and noise");
        given(how);
        if (chosen.excessK() > 0) {
            how.remark("no set of fan speeds keeps every part cool enough: all run at full speed");
            double most = fans == Fans.CARD ? chosen.cardRatio() : 1;
            return how.gives(most, 4, "", "{}", most);
        }
        return switch (fans) {
            case CASE -> caseFans(how);
            case COOLER -> {
                double inletC = inletC(how, chosen.caseShare(), true);
                yield how.gives(chosen.coolerShare(), 4, "", COOLER, coolerValues(inletC));
            }
            case CARD -> {
                double inletC = inletC(how, chosen.caseShare(), true);
                yield how.gives(chosen.cardRatio(), 4, "", COOLER, cardValues(inletC));
            }
        };
    }

    private static final String COOLER = "max({}, ({} x {} / ({} - {} - {}))^2)";

    private Object[] coolerValues(double inletC) {
        CoolingCase.Processor it = cooling.processor();
        return new Object[] {
            CoolerResistance.LEAST_SPEED_SHARE,
            it.coolerFullKw(),
            it.powerW(),
            it.limitC(),
            cooling.marginK(),
            inletC
        };
    }

    private double leastCardRatio() {
        return CardCooling.leastRatio(cooling.card().loadDba(), cooling.card().idleDba());
    }

    private Object[] cardValues(double inletC) {
        CoolingCase.Card it = cooling.card();
        return new Object[] {
            leastCardRatio(), it.referenceKw(), it.powerW(), it.limitC(), cooling.marginK(), inletC
        };
    }

    private void given(Derivation how) {
        String lead = state == State.FULL ? "number heat.full-" : "number heat.";
        CoolingCase.Air air = cooling.air();
        how.given("room", air.roomC(), "°C", "brief, place, room");
        String heat = state == State.IDLE ? "all parts at rest" : lead + "case-rise-k";
        how.given("heat in the case", air.heatW(), "W", heat);
        how.given("density of the air", air.densityKgM3(), "kg/m³", "number heat.case-rise-k");
        how.given(
                "flow with the case fans at full speed",
                air.fullFlowM3h(),
                "m³/h",
                "number heat.case-rise-k");
        how.given("margin", cooling.marginK(), "K", "brief, headroom");
        CoolingCase.Processor processor = cooling.processor();
        how.given("processor's heat", processor.powerW(), "W", "as in number heat.processor-c");
        how.given(
                "limit at the processor's lid",
                processor.limitC(),
                "°C",
                "the processor's limit_c less 0.10 K/W inside");
        how.given(
                "cooler at full speed",
                processor.coolerFullKw(),
                "K/W",
                "the cooler's sheet, as in number heat.processor-c");
        how.given("slowest cooler fans", CoolerResistance.LEAST_SPEED_SHARE, "", "common practice");
        if (hasCard()) {
            CoolingCase.Card card = cooling.card();
            how.given("card's heat", card.powerW(), "W", "as in number heat.graphics-c");
            how.given("limit of the card", card.limitC(), "°C", "catalogue, reference conditions");
            how.given(
                    "card at the reference",
                    card.referenceKw(),
                    "K/W",
                    "as in number heat.graphics-c");
            how.given(
                    "slowest card fans",
                    leastCardRatio(),
                    "",
                    "the card's idle_dba by 50 dB per tenfold speed, at least 0.2");
        }
    }

    private boolean hasCard() {
        return Double.isFinite(cooling.card().loadDba());
    }

    private double inletC(Derivation how, double share, boolean named) {
        CoolingCase.Air air = cooling.air();
        double inletC =
                air.roomC()
                        + AirRise.kelvin(air.heatW(), share * air.fullFlowM3h(), air.densityKgM3());
        String at = named ? "" : " with case fans at " + Derivation.print(share);
        return how.step(
                "case air" + at,
                inletC,
                "°C",
                "{} + {} x 3600 / ({} x 1005 x max({}, {} x {}))",
                air.roomC(),
                air.heatW(),
                air.densityKgM3(),
                AirRise.NATURAL_FLOW_M3H,
                share,
                air.fullFlowM3h());
    }

    private Explanation caseFans(Derivation how) {
        List<Object> levels = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (int step = LEAST_STEP; step <= STEPS; step++) {
            double share = (double) step / STEPS;
            double level = levelDba(how, share);
            if (Double.isFinite(level)) {
                levels.add(level);
                least = Math.min(least, level);
            }
        }
        if (levels.isEmpty()) {
            how.remark("none of these fans makes a sound, so the slowest that cools is taken");
        } else {
            String all = String.join(", ", levels.stream().map(any -> "{}").toList());
            how.step("least level", least, "dB(A)", "min(" + all + ")", levels.toArray());
        }
        return how.gives(chosen.caseShare(), 4, "", "{}", chosen.caseShare());
    }

    /** Level of all three at 1 m; infinite where they do not cool enough. */
    private double levelDba(Derivation how, double share) {
        String at = " with case fans at " + Derivation.print(share);
        double inletC = inletC(how, share, false);
        double spareK = cooling.processor().limitC() - cooling.marginK() - inletC;
        double cardSpareK = cooling.card().limitC() - cooling.marginK() - inletC;
        if (spareK <= 0 || cardSpareK <= 0) {
            how.remark("the air alone is too warm" + at);
            return Double.POSITIVE_INFINITY;
        }
        double cooler =
                how.step(
                        "cooler" + at,
                        slowest(
                                CoolerResistance.LEAST_SPEED_SHARE,
                                cooling.processor().coolerFullKw(),
                                spareK / cooling.processor().powerW()),
                        "",
                        COOLER,
                        coolerValues(inletC));
        double card = leastCardRatio();
        if (hasCard()) {
            card =
                    how.step(
                            "card" + at,
                            slowest(
                                    card,
                                    cooling.card().referenceKw(),
                                    cardSpareK / cooling.card().powerW()),
                            "",
                            COOLER,
                            cardValues(inletC));
        }
        if (cooler > 1 || card > CardCooling.MOST_RATIO) {
            how.remark("cooler above 1 or card above 1.4, not cool enough" + at);
            return Double.POSITIVE_INFINITY;
        }
        return sum(how, at, share, cooler, card);
    }

    private static double slowest(double least, double fullKw, double requiredKw) {
        return Math.max(least, CoolerResistance.speedFor(fullKw, requiredKw));
    }

    private double sum(Derivation how, String at, double share, double cooler, double card) {
        List<String> terms = new ArrayList<>();
        List<Object> values = new ArrayList<>();
        double energy = 0;
        double[] full = {
            cooling.air().fansFullDba(),
            cooling.processor().coolerFullDba(),
            cooling.card().loadDba()
        };
        double[] speeds = {share, cooler, card};
        for (int i = 0; i < full.length; i++) {
            if (Double.isFinite(full[i])) {
                terms.add("10^({}/10) x {}^5");
                values.add(full[i]);
                values.add(speeds[i]);
                energy += SoundSum.energy(full[i]) * Math.pow(speeds[i], FIFTH_POWER);
            }
        }
        if (terms.isEmpty()) {
            return Double.NEGATIVE_INFINITY;
        }
        return how.step(
                "level" + at,
                SoundSum.levelDba(energy),
                "dB(A)",
                "10 x log10(" + String.join(" + ", terms) + ")",
                values.toArray());
    }
}
