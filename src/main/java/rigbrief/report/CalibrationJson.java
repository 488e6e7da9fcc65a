package rigbrief.report;

import rigbrief.measurement.Measurement;
import rigbrief.measurement.calibrate.Calibration;
import rigbrief.measurement.calibrate.Calibration.ChannelFit;
import rigbrief.measurement.calibrate.Calibration.DemandFit;
import rigbrief.measurement.calibrate.Calibration.Dominant;
import rigbrief.measurement.calibrate.Calibration.MisSet;
import rigbrief.measurement.calibrate.Calibration.Outlier;
import rigbrief.measurement.calibrate.Calibration.RateFit;
import rigbrief.measurement.calibrate.ErrorTable;
import rigbrief.measurement.calibrate.Errors;
import rigbrief.measurement.calibrate.Estimate;
import rigbrief.measurement.calibrate.ShapeFit;

/** A calibration in JSON, after the contract {@code rigbrief/calibration/1}. */
public final class CalibrationJson implements Report<CalibrationAnswer> {
    private static final String SCHEMA = "rigbrief/calibration/1";
    private static final ReportInfo INFO =
            ReportInfo.json("calibration-json", "a calibration for other programs", SCHEMA);
    private static final int DIGITS = 4;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(CalibrationAnswer answer, Style style) {
        return JsonPage.object(json -> document(json, answer));
    }

    private static void document(JsonPage json, CalibrationAnswer answer) {
        Calibration it = answer.calibration();
        json.field("schema", SCHEMA);
        CatalogueJson.write(json, it.catalogue());
        json.texts("measured", answer.files())
                .field("measurements", it.measurements())
                .field("machines", it.machines());
        json.object("prior", of -> prior(of, it));
        json.field("spread", Rounded.to(DIGITS, it.spread()))
                .field("effective-parameters", Rounded.to(1, it.effectiveParameters()));
        json.object("errors", of -> errors(of, it.errors()));
        json.list("workloads", it.demands(), demand -> demand(json, demand))
                .list("parts", it.rates(), rate -> rate(json, rate))
                .list("shapes", it.shapes(), shape -> shape(json, shape));
        json.object(
                "lows",
                of ->
                        of.field("measured", it.lows().count())
                                .field(
                                        "median-over-predicted",
                                        Rounded.to(DIGITS, it.lows().medianRatio())));
        json.list("mis-set", it.misSet(), machine -> misSet(json, machine))
                .list("outliers", it.outliers(), each -> outlier(json, each))
                .list("dominant", it.dominant(), each -> dominant(json, each))
                .list("impossible", it.impossible(), each -> place(json, each))
                .texts("in-one-machine-only", it.lonely())
                .texts("written", answer.written());
    }

    private static void prior(JsonPage json, Calibration it) {
        json.field("demand-sigma", Rounded.to(DIGITS, it.terms().demandSigma()))
                .field("rate-sigma", Rounded.to(DIGITS, it.terms().rateSigma()))
                .field("piece-sigma", Rounded.to(DIGITS, it.terms().pieceSigma()));
    }

    private static void errors(JsonPage json, ErrorTable table) {
        json.object("before", of -> errors(of, table.before()))
                .object("after", of -> errors(of, table.after()))
                .object("left-out", of -> errors(of, table.leftOut()))
                .object("new-machine", of -> errors(of, table.newMachine()));
    }

    private static void errors(JsonPage json, Errors errors) {
        json.field("median", Rounded.to(DIGITS, errors.medianShare()))
                .field("ninetieth", Rounded.to(DIGITS, errors.ninetiethShare()));
    }

    private static void demand(JsonPage json, DemandFit demand) {
        json.field("workload", demand.workload())
                .field("measurements", demand.measurements())
                .field("sigma", Rounded.to(DIGITS, demand.sigma()));
        json.object("errors", of -> errors(of, demand.errors()));
        json.list("demands", demand.channels(), channel -> channel(json, channel));
    }

    private static void rate(JsonPage json, RateFit rate) {
        json.field("part", rate.part())
                .field("kind", rate.kind().word())
                .field("machines", rate.machines())
                .list("rates", rate.channels(), channel -> channel(json, channel));
    }

    private static void shape(JsonPage json, ShapeFit shape) {
        json.field("workload", shape.workload())
                .field("of", shape.figure().word())
                .field("standing", shape.standing().word())
                .field("measurements", shape.measurements())
                .field("listed", Rounded.to(DIGITS, shape.listed()))
                .field("value", Rounded.to(DIGITS, shape.value()))
                .field("low", Rounded.to(DIGITS, shape.low()))
                .field("high", Rounded.to(DIGITS, shape.high()));
    }

    private static void channel(JsonPage json, ChannelFit channel) {
        json.field("of", channel.channel().word()).field("standing", channel.standing().word());
        estimate(json, channel.estimate());
    }

    private static void estimate(JsonPage json, Estimate estimate) {
        json.field("factor", Rounded.to(DIGITS, estimate.factor()))
                .field("low", Rounded.to(DIGITS, estimate.low()))
                .field("high", Rounded.to(DIGITS, estimate.high()));
    }

    private static void misSet(JsonPage json, MisSet machine) {
        json.field("machine", machine.machine()).field("of", machine.channel().word());
        estimate(json, machine.estimate());
    }

    private static void place(JsonPage json, Measurement measured) {
        json.field("file", measured.file())
                .field("line", measured.line())
                .field("machine", measured.machine())
                .field("workload", measured.workload());
    }

    private static void outlier(JsonPage json, Outlier each) {
        place(json, each.measured());
        json.field("unit", each.measured().seconds().isPresent() ? "s" : "fps")
                .field("measured", Rounded.to(DIGITS, each.found()))
                .field("expected", Rounded.to(DIGITS, each.expected()));
    }

    private static void dominant(JsonPage json, Dominant each) {
        place(json, each.measured());
        json.field("leverage", Rounded.to(DIGITS, each.leverage()))
                .field("cook-distance", Rounded.to(DIGITS, each.distance()));
    }
}
