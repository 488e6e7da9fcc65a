package rigbrief.model.heat;

import rigbrief.model.Expect;

/**
 * Everything that the choice of fan speeds needs to know of a build in one state.
 *
 * @param air the room and the case
 * @param processor the processor and its cooler
 * @param card the graphics card, or {@link Card#NONE}
 * @param constantDba sources whose level does not depend on fan speeds (drives, supply, pump),
 *     summed, dB(A) at 1 m; minus infinity for none
 * @param seat where the listener is
 * @param marginK how far below their limits the parts are to stay, K
 */
public record CoolingCase(
        Air air, Processor processor, Card card, double constantDba, Seat seat, double marginK) {

    /** Refuses a negative margin or a level that is no number. */
    public CoolingCase {
        Expect.level(constantDba, "constantDba");
        Expect.notNegative(marginK, "marginK");
    }

    /**
     * The room and the case.
     *
     * @param roomC room temperature, °C
     * @param densityKgM3 density of the air, kg/m³
     * @param heatW heat set free in the case, W
     * @param fullFlowM3h flow at the operating point with all case fans at full speed, m³/h
     * @param fansFullDba case fans together at full speed, dB(A) at 1 m; minus infinity for none
     */
    public record Air(
            double roomC,
            double densityKgM3,
            double heatW,
            double fullFlowM3h,
            double fansFullDba) {

        /** Refuses negative heat or flow, and what is no number. */
        public Air {
            Expect.finite(roomC, "roomC");
            Expect.positive(densityKgM3, "densityKgM3");
            Expect.notNegative(heatW, "heatW");
            Expect.notNegative(fullFlowM3h, "fullFlowM3h");
            Expect.level(fansFullDba, "fansFullDba");
        }
    }

    /**
     * The processor and its cooler.
     *
     * @param powerW heat of the processor, W
     * @param limitC its greatest temperature, °C
     * @param coolerFullKw resistance of the cooler at full speed, K/W
     * @param coolerFullDba level of the cooler at full speed, dB(A) at 1 m; minus infinity for none
     */
    public record Processor(
            double powerW, double limitC, double coolerFullKw, double coolerFullDba) {

        /** Refuses negative power or resistance, and what is no number. */
        public Processor {
            Expect.notNegative(powerW, "powerW");
            Expect.finite(limitC, "limitC");
            Expect.notNegative(coolerFullKw, "coolerFullKw");
            Expect.level(coolerFullDba, "coolerFullDba");
        }
    }

    /**
     * The graphics card.
     *
     * @param powerW heat of the card, W
     * @param limitC its greatest temperature, °C
     * @param referenceKw its resistance at the reference speed, K/W
     * @param loadDba its level at the reference speed, dB(A) at 1 m
     * @param idleDba its level at rest, dB(A) at 1 m; minus infinity when the fans stop
     */
    public record Card(
            double powerW, double limitC, double referenceKw, double loadDba, double idleDba) {

        /** No graphics card: no heat, no sound, no limit that matters. */
        public static final Card NONE =
                new Card(0, 1_000, 0, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

        /** Refuses negative power or resistance, and what is no number. */
        public Card {
            Expect.notNegative(powerW, "powerW");
            Expect.finite(limitC, "limitC");
            Expect.notNegative(referenceKw, "referenceKw");
            Expect.level(loadDba, "loadDba");
            Expect.level(idleDba, "idleDba");
        }
    }

    /**
     * Where the listener is.
     *
     * @param dampingDb what the case takes off every source inside it, dB
     * @param distanceM from the case to the seat, m, above 0
     * @param floorDba level of the room itself, dB(A); minus infinity to leave it out
     */
    public record Seat(double dampingDb, double distanceM, double floorDba) {

        /** Refuses a distance not above 0, and what is no number. */
        public Seat {
            Expect.finite(dampingDb, "dampingDb");
            Expect.positive(distanceM, "distanceM");
            Expect.level(floorDba, "floorDba");
        }
    }
}
