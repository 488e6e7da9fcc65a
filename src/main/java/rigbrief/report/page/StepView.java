package rigbrief.report.page;

import java.util.List;

/**
 * A step of the slider; all of it text.
 *
 * @param number which step, from 1
 * @param total what it costs
 * @param more against the step before; empty for the first
 * @param than the same in a sentence
 * @param shown head of the build at this step
 * @param value the same as the slider says it
 * @param tier name of the proposal that this is; empty for a step between
 * @param needs what it promises
 * @param parts its parts
 * @param figures noise, power, heat
 * @param buys what it is better at than the step before
 * @param gives what it is worse at
 * @param changes which parts differ
 * @param x where it stands on the chart
 * @param y likewise
 */
public record StepView(
        int number,
        String total,
        String more,
        String than,
        String shown,
        String value,
        String tier,
        List<NeedView> needs,
        List<PartLine> parts,
        List<Figure> figures,
        List<String> buys,
        List<String> gives,
        List<String> changes,
        String x,
        String y) {}
