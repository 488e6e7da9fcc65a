package rigbrief.model.power;

import rigbrief.model.Expect;

/**
 * What an unplugged supply's bulk capacitor still holds: the arithmetic behind "never open a
 * supply".
 *
 * <p>Formula: energy = C V² / 2; time to fall from V0 to V through a resistor = R C ln(V0 / V).
 *
 * <p>Source: elementary circuit theory; that a supply's capacitor stands near 390 V is common
 * practice. A result is a warning, never leave to touch anything.
 */
public final class StoredCharge {
    private StoredCharge() {}

    /**
     * Gives the stored energy.
     *
     * @param capacitanceF capacitance, F
     * @param chargedV voltage, V
     * @return J
     * @throws IllegalArgumentException for a negative value
     */
    public static double energyJ(double capacitanceF, double chargedV) {
        Expect.notNegative(capacitanceF, "capacitanceF");
        Expect.notNegative(chargedV, "chargedV");
        return capacitanceF * chargedV * chargedV / 2;
    }

    /**
     * Gives the time in which a resistor brings the voltage down.
     *
     * @param capacitanceF capacitance, F
     * @param resistanceOhm resistor across it, ohm
     * @param fromV voltage at first, V
     * @param toV voltage in the end, V, above 0 and not above {@code fromV}
     * @return s
     * @throws IllegalArgumentException for values that are not above 0 or a rising voltage
     */
    public static double dischargeS(
            double capacitanceF, double resistanceOhm, double fromV, double toV) {
        Expect.positive(capacitanceF, "capacitanceF");
        Expect.positive(resistanceOhm, "resistanceOhm");
        if (Expect.positive(toV, "toV") > Expect.positive(fromV, "fromV")) {
            throw new IllegalArgumentException(
                    "toV: found %s, expected at most %s; swap the two voltages"
                            .formatted(toV, fromV));
        }
        return resistanceOhm * capacitanceF * Math.log(fromV / toV);
    }
}
