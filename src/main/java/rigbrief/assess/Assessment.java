package rigbrief.assess;

import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.model.memory.EffectiveRate;

/**
 * Everything computed about one build under one brief; each figure on first use, then kept.
 *
 * <p>Figures that need a part from every required slot throw {@link IllegalStateException} when one
 * is missing. Confined to the thread of its {@link Assessor}.
 */
public final class Assessment {
    private final Assessor assessor;
    private final Build build;
    private Layout layout;
    private Cost cost;
    private List<Prediction> predictions;
    private Power power;
    private Climate idle;
    private Climate load;
    private Climate full;

    Assessment(Assessor assessor, Build build) {
        this.assessor = assessor;
        this.build = build;
    }

    /** The build. */
    public Build build() {
        return build;
    }

    /** The brief it is judged under. */
    public Brief brief() {
        return assessor.brief();
    }

    /** The brief that its goals go by, which is the same unless two briefs are compared. */
    public Brief valued() {
        return assessor.valued();
    }

    /** The catalogue it is judged with. */
    public Catalogue catalogue() {
        return assessor.catalogue();
    }

    /** What the workloads of the brief need, whatever the build. */
    public Demand demand() {
        return assessor.demand();
    }

    /** Offers that the brief's terms allow. */
    public Offers offers() {
        return assessor.offers();
    }

    /** Where the parts go; needs board and case. */
    public Layout layout() {
        if (layout == null) {
            layout = LayoutFinder.find(build);
        }
        return layout;
    }

    /** What it costs; works for an unfinished build. */
    public Cost cost() {
        if (cost == null) {
            cost = assessor.pricing().cost(build);
        }
        return cost;
    }

    /**
     * The rate the memory really runs at, in MT/s; 0 where board or processor take no such memory.
     */
    public int memoryMts() {
        int board = build.board().memoryMts(build.memoryModules());
        int processor = build.processor().memoryMts(build.memory().type());
        return Math.min(board, processor) < 1
                ? 0
                : EffectiveRate.mts(build.memory().mts(), board, processor);
    }

    /** How each workload of the brief runs, in the brief's order. */
    public List<Prediction> predictions() {
        if (predictions == null) {
            predictions = assessor.speed().predictions(this);
        }
        return predictions;
    }

    /**
     * All parts at their sustained figures, in W on the supply's output side. Of an unfinished
     * build with a processor: what is decided so far, which only grows.
     */
    public double sustainedW() {
        return PowerModel.sustainedW(build);
    }

    /** The same with the card at its 1 ms peak, in W. */
    public double peakW() {
        return sustainedW() + PowerModel.cardPeakExtraW(build);
    }

    /** Electrical load. */
    public Power power() {
        if (power == null) {
            power = PowerModel.of(this);
        }
        return power;
    }

    /** Heat and noise at idle. */
    public Climate idle() {
        if (idle == null) {
            idle = ClimateModel.idle(this);
        }
        return idle;
    }

    /** Heat and noise under the brief's heaviest workload. */
    public Climate load() {
        if (load == null) {
            load = ClimateModel.load(this);
        }
        return load;
    }

    /** Heat and noise with every part at its sustained power. */
    public Climate full() {
        if (full == null) {
            full = ClimateModel.full(this);
        }
        return full;
    }
}
