package rigbrief.measurement.accept;

import java.util.Map;
import rigbrief.assess.MachineRates;

/**
 * One cause at one strength: what the machine would then be, and what else would show.
 *
 * @param cause the cause
 * @param strength how strong, in words
 * @param machine the rates of a machine that suffers from it
 * @param lowFactor by what the 1 % low suffers beyond the model, 1 for not at all
 * @param shows figures by line id that differ from the plan, speed left aside
 */
record Hypothesis(
        Cause cause,
        String strength,
        MachineRates machine,
        double lowFactor,
        Map<String, Double> shows) {}
