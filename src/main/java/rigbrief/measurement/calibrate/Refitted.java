package rigbrief.measurement.calibrate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.FrameWork;
import rigbrief.catalogue.FrameRate.PerPixel;
import rigbrief.catalogue.FrameRate.Shape;
import rigbrief.catalogue.PartRates;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.catalogue.Workload.Fitted;
import rigbrief.measurement.calibrate.Calibration.ChannelFit;
import rigbrief.measurement.calibrate.Calibration.DemandFit;
import rigbrief.measurement.calibrate.Calibration.RateFit;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Part;
import rigbrief.part.Processor;

/** The catalogue's figures with the factors that a fit found for them. */
final class Refitted {
    private Refitted() {}

    static List<Workload> workloads(
            Catalogue catalogue, List<DemandFit> demands, List<ShapeFit> shapes) {
        List<Workload> workloads = new ArrayList<>();
        for (DemandFit demand : demands) {
            Workload listed = catalogue.workload(demand.workload()).orElseThrow();
            workloads.add(
                    listed instanceof FrameRate title
                            ? title(title, demand, shapes)
                            : task((TaskTime) listed, demand));
        }
        return workloads;
    }

    private static Fitted fitted(DemandFit demand) {
        return new Fitted(demand.measurements(), demand.sigma());
    }

    private static double factor(List<ChannelFit> channels, Channel channel) {
        Optional<ChannelFit> found =
                channels.stream().filter(it -> it.channel() == channel).findFirst();
        return found.map(ChannelFit::applied).orElse(1.0);
    }

    private static double figure(
            FrameRate listed, List<ShapeFit> shapes, ShapeFigure figure, double otherwise) {
        return shapes.stream()
                .filter(it -> it.workload().equals(listed.id()) && it.figure() == figure)
                .mapToDouble(ShapeFit::applied)
                .findFirst()
                .orElse(otherwise);
    }

    private static FrameRate title(FrameRate listed, DemandFit demand, List<ShapeFit> shapes) {
        double graphics = factor(demand.channels(), Channel.GRAPHICS);
        double rays = factor(demand.channels(), Channel.RAYS);
        double processor = factor(demand.channels(), Channel.PROCESSOR);
        FrameWork work = listed.work();
        return new FrameRate(
                listed.id(),
                listed.title(),
                listed.memoryGb(),
                listed.vram(),
                listed.diskGb(),
                fitted(demand),
                listed.engineCapFps(),
                new FrameWork(
                        work.fixedMs(),
                        scaled(work.gflop(), graphics),
                        scaled(work.gbyte(), graphics),
                        scaled(work.rays(), rays),
                        work.serial() * processor,
                        work.parallel() * processor,
                        figure(listed, shapes, ShapeFigure.MEMORY_EXPONENT, work.memoryExponent())),
                listed.referencePreset(),
                listed.presets(),
                listed.rays(),
                listed.upscaling(),
                listed.scenes(),
                listed.settings(),
                new Shape(
                        listed.shape().overlap(),
                        figure(listed, shapes, ShapeFigure.SPREAD, listed.shape().spread()),
                        listed.shape().overflowPenalty()));
    }

    private static PerPixel scaled(PerPixel amount, double factor) {
        return new PerPixel(amount.fixed() * factor, amount.perMegapixel() * factor);
    }

    private static TaskTime task(TaskTime listed, DemandFit demand) {
        double processor = factor(demand.channels(), Channel.PROCESSOR);
        double drive = factor(demand.channels(), Channel.DRIVE);
        return new TaskTime(
                listed.id(),
                listed.title(),
                listed.job(),
                listed.memoryGb(),
                listed.vramGb(),
                listed.diskGb(),
                fitted(demand),
                listed.serial() * processor,
                listed.parallel() * processor,
                listed.gflop() * factor(demand.channels(), Channel.GRAPHICS),
                listed.readGb() * drive,
                listed.writeGb() * drive);
    }

    static List<PartRates> rates(Catalogue catalogue, List<RateFit> fits) {
        List<PartRates> rates = new ArrayList<>();
        for (RateFit fit : fits) {
            if (fit.channels().stream().anyMatch(it -> it.standing() == Standing.FITTED)) {
                rates.add(rates(catalogue, fit));
            }
        }
        return rates;
    }

    private static PartRates rates(Catalogue catalogue, RateFit fit) {
        Part part = catalogue.part(fit.part()).orElseThrow();
        if (part instanceof Graphics card) {
            double graphics = factor(fit.channels(), Channel.GRAPHICS);
            return PartRates.ofCard(
                    fit.part(),
                    changed(card.tflops(), graphics),
                    changed(card.bandwidthGbs(), graphics),
                    changed(card.rayRate(), factor(fit.channels(), Channel.RAYS)));
        }
        if (part instanceof Drive drive) {
            double factor = factor(fit.channels(), Channel.DRIVE);
            return PartRates.ofDrive(
                    fit.part(),
                    changed(drive.readMbs(), factor),
                    changed(drive.writeMbs(), factor));
        }
        Processor processor = (Processor) part;
        double factor = factor(fit.channels(), Channel.PROCESSOR);
        return PartRates.ofProcessor(
                fit.part(),
                changed(processor.rateSingle(), factor),
                changed(processor.rateAll(), factor));
    }

    private static OptionalDouble changed(double listed, double factor) {
        return factor == 1 ? OptionalDouble.empty() : OptionalDouble.of(listed * factor);
    }
}
