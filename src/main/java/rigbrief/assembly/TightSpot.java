package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.audit.Audit;
import rigbrief.audit.MarginLine;
import rigbrief.quantity.Unit;
import rigbrief.rule.Margin;

/**
 * A length with little to spare: to be measured before the parts are unpacked for good.
 *
 * @param rule id of the rule that measured it
 * @param title the rule's title
 * @param haveMm room there is, in mm
 * @param needMm room that is needed, in mm
 */
public record TightSpot(String rule, String title, long haveMm, long needMm) {
    /**
     * A length with less than this to spare is tight, in mm. Common practice: data sheets round,
     * and cases, boards and coolers add their tolerances up to a few millimetres.
     */
    public static final int UNDER_MM = 10;

    /** The tight spots of a build, in the order of the rules; a broken length is among them. */
    public static List<TightSpot> of(Audit audit) {
        List<TightSpot> spots = new ArrayList<>();
        for (MarginLine line : audit.margins()) {
            Margin margin = line.margin();
            if (margin.unit() == Unit.MILLIMETRE && margin.spare() < UNDER_MM) {
                spots.add(new TightSpot(line.rule(), line.title(), margin.have(), margin.need()));
            }
        }
        return List.copyOf(spots);
    }

    /** What is left, in mm; negative when it does not fit. */
    public long spareMm() {
        return haveMm - needMm;
    }
}
