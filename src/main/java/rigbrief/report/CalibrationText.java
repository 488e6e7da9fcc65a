package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.calibrate.Calibration;
import rigbrief.measurement.calibrate.Calibration.ChannelFit;
import rigbrief.measurement.calibrate.Calibration.DemandFit;
import rigbrief.measurement.calibrate.Calibration.Dominant;
import rigbrief.measurement.calibrate.Calibration.MisSet;
import rigbrief.measurement.calibrate.Calibration.Outlier;
import rigbrief.measurement.calibrate.Calibration.RateFit;
import rigbrief.measurement.calibrate.Channel;
import rigbrief.measurement.calibrate.Errors;
import rigbrief.measurement.calibrate.Estimate;
import rigbrief.measurement.calibrate.ShapeFit;
import rigbrief.measurement.calibrate.Standing;
import rigbrief.wording.Counted;

/** A calibration in plain text. */
public final class CalibrationText implements Report<CalibrationAnswer> {
    private static final ReportInfo INFO =
            ReportInfo.text("calibration-text", "what measurements say of a catalogue, for people");
    private static final int NAME_COLUMNS = 30;
    private static final int FILE_COLUMNS = 20;

    /** Lists of measurements to look at end here; JSON has them all. */
    private static final int MOST_LISTED = 12;

    private static final double PERCENT = 100;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(CalibrationAnswer answer, Style style) {
        Calibration it = answer.calibration();
        TextPage page = new TextPage(style);
        page.chapter(
                "Calibration",
                Counted.of(it.measurements(), "measurement")
                        + " of "
                        + Counted.of(it.machines(), "machine"));
        page.paragraph(0, "Against the catalogue \"%s\".".formatted(it.catalogue().name()));
        page.section("How far measured lies from predicted").table(errors(it));
        page.section("Workloads").table(workloads(it));
        page.hanging(
                "  ",
                "Half of a workload's measurements lie within this of the catalogue's figures, of"
                        + " the fitted ones, and of a fit without their machine. Spread: one"
                        + " standard deviation on a machine not measured; ranges are made of it.");
        page.section("Demands, as factors on the catalogue's").table(demands(it));
        page.section("Rates of parts, as factors on the catalogue's").table(rates(it));
        shapes(page, it);
        standings(page, it);
        machines(page, it);
        boolean oneFile = answer.files().size() == 1;
        outliers(page, it, oneFile);
        dominant(page, it, oneFile);
        impossible(page, it);
        assumed(page, it);
        if (!answer.written().isEmpty()) {
            page.section("Written");
            answer.written().forEach(file -> page.line("  " + file));
        }
        return page.blank().toString();
    }

    private static String percent(double share) {
        return Rounded.print(share < 0.1 ? 1 : 0, share * PERCENT, " %");
    }

    private static TextTable errors(Calibration it) {
        TextTable table =
                new TextTable().left("predicted", 44).right("half within").right("9 of 10 within");
        error(table, "with the catalogue's figures", it.errors().before());
        error(table, "with the fitted figures", it.errors().after());
        error(table, "each measurement by a fit without it", it.errors().leftOut());
        error(table, "each by a fit without its machine", it.errors().newMachine());
        return table;
    }

    private static void error(TextTable table, String predicted, Errors errors) {
        table.row(predicted, percent(errors.medianShare()), percent(errors.ninetiethShare()));
    }

    private static TextTable workloads(Calibration it) {
        TextTable table =
                new TextTable()
                        .left("workload", NAME_COLUMNS)
                        .right("measured")
                        .right("before")
                        .right("after")
                        .right("new machine")
                        .right("spread");
        for (DemandFit demand : it.demands()) {
            table.row(
                    demand.workload(),
                    Integer.toString(demand.measurements()),
                    percent(demand.errors().before().medianShare()),
                    percent(demand.errors().after().medianShare()),
                    percent(demand.errors().newMachine().medianShare()),
                    percent(demand.sigma()));
        }
        return table;
    }

    private static TextTable demands(Calibration it) {
        TextTable table =
                new TextTable()
                        .left("workload", NAME_COLUMNS)
                        .left("of", NAME_COLUMNS)
                        .right("factor")
                        .right("95 % interval");
        for (DemandFit demand : it.demands()) {
            String name = demand.workload();
            for (ChannelFit channel : demand.channels()) {
                table.row(name, channel.channel().word(), factor(channel), interval(channel));
                name = "";
            }
        }
        return table;
    }

    private static TextTable rates(Calibration it) {
        TextTable table =
                new TextTable()
                        .left("part", NAME_COLUMNS)
                        .right("machines")
                        .left("of", NAME_COLUMNS)
                        .right("factor")
                        .right("95 % interval");
        for (RateFit rate : it.rates()) {
            String name = rate.part();
            String machines = Integer.toString(rate.machines());
            for (ChannelFit channel : rate.channels()) {
                table.row(
                        name,
                        machines,
                        channel.channel().word(),
                        factor(channel),
                        interval(channel));
                name = "";
                machines = "";
            }
        }
        return table;
    }

    private static void shapes(TextPage page, Calibration it) {
        if (it.shapes().isEmpty()) {
            return;
        }
        TextTable table =
                new TextTable()
                        .left("workload", NAME_COLUMNS)
                        .left("of", NAME_COLUMNS)
                        .right("catalogue")
                        .right("fitted")
                        .right("95 % interval");
        String before = "";
        for (ShapeFit shape : it.shapes()) {
            boolean fitted = shape.standing() == Standing.FITTED;
            table.row(
                    shape.workload().equals(before) ? "" : shape.workload(),
                    shape.figure().word(),
                    Rounded.print(3, shape.listed(), ""),
                    fitted ? Rounded.print(3, shape.value(), "") : shape.standing().word(),
                    fitted
                            ? Rounded.print(3, shape.low(), "")
                                    + " to "
                                    + Rounded.print(3, shape.high(), "")
                            : "-");
            before = shape.workload();
        }
        page.section("How titles hang on memory, and how their frames spread").table(table);
    }

    private static String factor(ChannelFit channel) {
        return channel.standing() == Standing.FITTED
                ? Rounded.print(2, channel.estimate().factor(), "")
                : channel.standing().word();
    }

    private static String interval(ChannelFit channel) {
        return channel.standing() == Standing.FITTED
                ? Rounded.print(2, channel.estimate().low(), "")
                        + " to "
                        + Rounded.print(2, channel.estimate().high(), "")
                : "-";
    }

    private static void standings(TextPage page, Calibration it) {
        List<String> kept = new ArrayList<>();
        List<String> held = new ArrayList<>();
        for (DemandFit demand : it.demands()) {
            demand.channels().forEach(channel -> sort(demand.workload(), channel, kept, held));
        }
        for (RateFit rate : it.rates()) {
            rate.channels().forEach(channel -> sort(rate.part(), channel, kept, held));
        }
        List<String> oneRate = new ArrayList<>();
        List<String> vague = new ArrayList<>();
        for (ShapeFit shape : it.shapes()) {
            String name = shape.workload() + " (" + shape.figure().word() + ")";
            if (shape.standing() == Standing.HELD) {
                oneRate.add(name);
            } else if (shape.standing() == Standing.KEPT) {
                vague.add(name);
            }
        }
        if (held.isEmpty()
                && kept.isEmpty()
                && oneRate.isEmpty()
                && vague.isEmpty()
                && it.lonely().isEmpty()) {
            return;
        }
        page.section("What these measurements can't say");
        listed(
                page,
                held,
                "Held: no other part ran the workloads that these ran, so a slow part and a"
                        + " demanding workload look alike. The rate stays as the catalogue has it,"
                        + " and the workload takes the difference. To tell them apart, measure one"
                        + " of its workloads on another part.");
        listed(
                page,
                kept,
                "Kept: the speed hardly hangs on these anywhere. Measure where they decide: a"
                        + " larger picture for graphics, a smaller one for the processor,"
                        + " more data for the drive.");
        listed(
                page,
                oneRate,
                "Held: where the processor decides, these ran at about one memory rate. Measure"
                        + " one machine again with its memory at another rate.");
        listed(
                page,
                vague,
                "Kept: too little hangs on these figures. For memory, measure the same processor"
                        + " at two memory rates in a small picture; for the spread, add 1 % lows"
                        + " that no cap holds.");
        listed(
                page,
                it.lonely(),
                "Measured in one machine alone: a fault of that machine would look like a slow"
                        + " part.");
    }

    private static void sort(
            String name, ChannelFit channel, List<String> kept, List<String> held) {
        String figure = name + " (" + channel.channel().word() + ")";
        if (channel.standing() == Standing.KEPT) {
            kept.add(figure);
        } else if (channel.standing() == Standing.HELD) {
            held.add(figure);
        }
    }

    private static void listed(TextPage page, List<String> names, String why) {
        if (!names.isEmpty()) {
            page.hanging("  ", why);
            page.hanging("    ", String.join(", ", names) + ".");
        }
    }

    private static void machines(TextPage page, Calibration it) {
        if (it.misSet().isEmpty()) {
            return;
        }
        page.section("Machines that run unlike their parts");
        for (MisSet machine : it.misSet()) {
            page.hanging("  ", misSet(machine));
        }
    }

    private static String misSet(MisSet it) {
        Estimate pace = it.estimate();
        boolean slow = pace.factor() < 1;
        String side = it.channel() == Channel.PROCESSOR ? "processor" : "card";
        double off = Math.abs(pace.factor() - 1);
        double one = Math.abs(pace.low() - 1);
        double other = Math.abs(pace.high() - 1);
        return "%s: its %s runs %s %s than the same part elsewhere (95 %%: %s to %s). %s"
                .formatted(
                        it.machine(),
                        side,
                        percent(off),
                        slow ? "slower" : "faster",
                        percent(Math.min(one, other)),
                        percent(Math.max(one, other)),
                        slow ? causes(it.channel()) : "Look whether its parts are named rightly.");
    }

    private static String causes(Channel channel) {
        return channel == Channel.PROCESSOR
                ? "Look at the memory rate, power and heat limits, and what runs beside it."
                : "Look at the card's slot, its power plugs and limit, heat and driver.";
    }

    private static void outliers(TextPage page, Calibration it, boolean oneFile) {
        if (it.outliers().isEmpty()) {
            return;
        }
        page.section("Measurements that disagree with the others, and hardly counted");
        TextTable table = places(oneFile).right("measured").right("expected").right("off");
        for (Outlier each : it.outliers().subList(0, shown(it.outliers()))) {
            String unit = each.measured().seconds().isPresent() ? " s" : " fps";
            table.row(
                    place(each.measured(), oneFile),
                    each.measured().machine(),
                    each.measured().workload(),
                    Rounded.print(1, each.found(), unit),
                    Rounded.print(1, each.expected(), unit),
                    signed(each.found() / each.expected() - 1));
        }
        page.table(table);
        more(page, it.outliers());
        page.hanging("  ", "Something may have run beside them: measure these again.");
    }

    private static String signed(double share) {
        return (share > 0 ? "+" : "") + Rounded.print(0, share * PERCENT, " %");
    }

    private static void dominant(TextPage page, Calibration it, boolean oneFile) {
        if (it.dominant().isEmpty()) {
            return;
        }
        page.section("Measurements that decide nearly alone what is predicted of them");
        TextTable table = places(oneFile).right("own share").right("Cook's distance");
        for (Dominant each : it.dominant().subList(0, shown(it.dominant()))) {
            table.row(
                    place(each.measured(), oneFile),
                    each.measured().machine(),
                    each.measured().workload(),
                    percent(each.leverage()),
                    Rounded.print(2, each.distance(), ""));
        }
        page.table(table);
        more(page, it.dominant());
        page.hanging("  ", "A second measurement of the like would guard against a slip.");
    }

    /** Lines of one file need no name. */
    private static TextTable places(boolean oneFile) {
        TextTable table = new TextTable();
        return (oneFile ? table.right("line") : table.left("file and line", FILE_COLUMNS))
                .left("machine", NAME_COLUMNS)
                .left("workload", NAME_COLUMNS);
    }

    private static String place(Measurement measured, boolean oneFile) {
        return oneFile ? Integer.toString(measured.line()) : measured.place();
    }

    private static int shown(List<?> all) {
        return Math.min(MOST_LISTED, all.size());
    }

    private static void more(TextPage page, List<?> all) {
        if (all.size() > MOST_LISTED) {
            page.hanging("  ", "And %d more.".formatted(all.size() - MOST_LISTED));
        }
    }

    private static void impossible(TextPage page, Calibration it) {
        if (it.impossible().isEmpty()) {
            return;
        }
        page.section("Measurements left aside");
        page.hanging("  ", "By the catalogue these machines can't do what was measured:");
        for (Measurement each : it.impossible().subList(0, shown(it.impossible()))) {
            page.hanging(
                    "    ", "%s, %s, %s".formatted(each.place(), each.machine(), each.workload()));
        }
        more(page, it.impossible());
    }

    private static void assumed(TextPage page, Calibration it) {
        page.section("How it was fitted");
        page.hanging(
                "  ",
                "Before measuring, demands were believed within %s, rates within %s, pieces of one part within %s of each other, memory exponents within 0.10, and spreads of frame times within 30 %%. Single measurements scatter by %s around the fit. The further a measurement lies out, the less it counts. Intervals are 95 %%."
                        .formatted(
                                percent(it.terms().demandSigma()),
                                percent(it.terms().rateSigma()),
                                percent(it.terms().pieceSigma()),
                                percent(it.spread())));
        if (it.lows().count() > 0) {
            page.hanging(
                    "  ",
                    "1 %% lows tell the spread of frame times, not how fast a machine is. Of %s, half lie above %s times the prediction. Low: rate at the 99th percentile of frame time, counted in frames."
                            .formatted(
                                    Counted.of(it.lows().count(), "measured low"),
                                    Rounded.print(2, it.lows().medianRatio(), "")));
        }
    }
}
