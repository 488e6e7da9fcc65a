package rigbrief.measurement.calibrate;

import java.util.List;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.PartRates;
import rigbrief.catalogue.Workload;
import rigbrief.measurement.Measurement;
import rigbrief.part.Kind;

/**
 * What a fit to measurements found.
 *
 * @param catalogue the catalogue whose figures were the prior
 * @param terms how much they were believed
 * @param measurements number of measurements fitted
 * @param machines number of machines they are from
 * @param spread spread of single measurements around the fit, standard deviation of the logarithm
 * @param effectiveParameters how many figures the measurements decide
 * @param errors of all measurements
 * @param demands demands of the workloads measured, in the catalogue's order
 * @param rates rates of the parts measured, by kind, in the catalogue's order
 * @param shapes how titles hang on memory and how their frames spread, in the catalogue's order
 * @param lows what 1 % lows were measured over what is predicted; empty of meaning for none
 * @param misSet machines that run unlike their parts
 * @param outliers measurements that disagree with all others, furthest first
 * @param dominant measurements that decide a figure nearly alone, weightiest first
 * @param impossible measurements of what the machine can't do by the catalogue
 * @param lonely parts that were measured in one machine alone
 * @param workloads the workloads with fitted demands, to stand in place of the catalogue's
 * @param partRates rates to stand in place of the catalogue's
 */
public record Calibration(
        Catalogue catalogue,
        Terms terms,
        int measurements,
        int machines,
        double spread,
        double effectiveParameters,
        ErrorTable errors,
        List<DemandFit> demands,
        List<RateFit> rates,
        List<ShapeFit> shapes,
        Lows lows,
        List<MisSet> misSet,
        List<Outlier> outliers,
        List<Dominant> dominant,
        List<Measurement> impossible,
        List<String> lonely,
        List<Workload> workloads,
        List<PartRates> partRates) {
    public Calibration {
        demands = List.copyOf(demands);
        rates = List.copyOf(rates);
        shapes = List.copyOf(shapes);
        misSet = List.copyOf(misSet);
        outliers = List.copyOf(outliers);
        dominant = List.copyOf(dominant);
        impossible = List.copyOf(impossible);
        lonely = List.copyOf(lonely);
        workloads = List.copyOf(workloads);
        partRates = List.copyOf(partRates);
    }

    /**
     * The demand of a workload.
     *
     * @param workload its id
     * @param measurements how many measurements of it there are
     * @param errors of those
     * @param sigma spread to expect on a machine not measured, standard deviation of the logarithm
     * @param channels what was found of each channel it works
     */
    public record DemandFit(
            String workload,
            int measurements,
            ErrorTable errors,
            double sigma,
            List<ChannelFit> channels) {
        public DemandFit {
            channels = List.copyOf(channels);
        }
    }

    /**
     * The rate of a part.
     *
     * @param part its id
     * @param kind its kind
     * @param machines in how many machines it was measured
     * @param channels what was found of each channel
     */
    public record RateFit(String part, Kind kind, int machines, List<ChannelFit> channels) {
        public RateFit {
            channels = List.copyOf(channels);
        }
    }

    /**
     * A figure of one channel.
     *
     * @param channel the channel
     * @param standing what became of it
     * @param estimate factor on the catalogue's figure, as the measurements have it
     */
    public record ChannelFit(Channel channel, Standing standing, Estimate estimate) {
        /** The factor to go on with: 1 unless it was fitted. */
        public double applied() {
            return standing == Standing.FITTED ? estimate.factor() : 1;
        }
    }

    /**
     * How 1 % lows came out; where there is an average only the spread is fitted to them.
     *
     * @param count how many were measured
     * @param medianRatio median of measured over predicted, after the fit
     */
    public record Lows(int count, double medianRatio) {}

    /**
     * A machine that runs unlike its parts.
     *
     * @param machine its name
     * @param channel which side of it
     * @param estimate rate of its piece over that of the model
     */
    public record MisSet(String machine, Channel channel, Estimate estimate) {}

    /**
     * A measurement that disagrees.
     *
     * @param measured the measurement
     * @param found what was measured, 1/s or s
     * @param expected what the fit has there, same unit
     */
    public record Outlier(Measurement measured, double found, double expected) {}

    /**
     * A measurement that decides nearly alone.
     *
     * @param measured the measurement
     * @param leverage share of its own prediction that it decides
     * @param distance Cook's distance: how far all predictions would move without it
     */
    public record Dominant(Measurement measured, double leverage, double distance) {}
}
