package rigbrief.assembly;

import java.util.List;
import rigbrief.assembly.FanPlan.Direction;
import rigbrief.assembly.FanPlan.Origin;
import rigbrief.assembly.FanPlan.PlacedFan;
import rigbrief.wording.Texts;

/**
 * What the case fans blow in against what they draw out, under load.
 *
 * <p>The sums of the fans' own shares of the case's flow, each way: what the fans would do, not
 * what passes, since in the end as much leaves a case as enters it.
 *
 * @param inM3h blown in, m³/h
 * @param outM3h drawn out, m³/h
 * @param lean which way the case leans
 * @param radiatorFans radiator fans left out of both sums, since their flow isn't stated
 * @param radiatorDirection which way these blow; of no meaning without any
 */
public record AirBalance(
        double inM3h, double outM3h, Lean lean, int radiatorFans, Direction radiatorDirection) {
    /** Within this share of the larger flow the two count as even, in percent. Common practice. */
    private static final int EVEN_PERCENT = 10;

    private static final int FIXED_POINT = 10;
    private static final int WHOLE = 100;

    /** Which way a case leans. */
    public enum Lean {
        /** More in than out: the rest leaves through the gaps, and dust stays at the filters. */
        IN,
        EVEN,
        /** More out than in: the rest is drawn in through the gaps, with its dust. */
        OUT,
        /** No case fan turns. */
        STILL
    }

    static AirBalance of(List<PlacedFan> fans) {
        double inM3h = sum(fans, Direction.IN);
        double outM3h = sum(fans, Direction.OUT);
        int radiatorFans = 0;
        Direction direction = Direction.OUT;
        for (PlacedFan fan : fans) {
            if (fan.origin() == Origin.RADIATOR) {
                radiatorFans += fan.count();
                direction = fan.direction();
            }
        }
        return new AirBalance(inM3h, outM3h, lean(inM3h, outM3h), radiatorFans, direction);
    }

    private static double sum(List<PlacedFan> fans, Direction direction) {
        double sum = 0;
        for (PlacedFan fan : fans) {
            sum += fan.direction() == direction ? fan.flowM3h() : 0;
        }
        return sum;
    }

    private static Lean lean(double inM3h, double outM3h) {
        long in = Math.round(inM3h * FIXED_POINT);
        long out = Math.round(outM3h * FIXED_POINT);
        long larger = Math.max(in, out);
        if (larger == 0) {
            return Lean.STILL;
        }
        if (Math.abs(in - out) * WHOLE <= larger * EVEN_PERCENT) {
            return Lean.EVEN;
        }
        return in > out ? Lean.IN : Lean.OUT;
    }

    /** In words for a builder, in a language. */
    public String words(Texts texts) {
        String words =
                switch (lean) {
                    case IN -> texts.text("air.in");
                    case EVEN -> texts.text("air.even");
                    case OUT -> texts.text("air.out");
                    case STILL -> texts.text("air.still");
                };
        return radiatorFans == 0 ? words : words + "; " + radiator(texts);
    }

    private String radiator(Texts texts) {
        return texts.text(
                radiatorDirection == Direction.IN ? "air.radiator.in" : "air.radiator.out",
                radiatorFans);
    }
}
