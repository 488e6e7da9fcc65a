package rigbrief.measurement.calibrate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.FrameWork;
import rigbrief.catalogue.FrameRate.PerPixel;
import rigbrief.catalogue.PartRates;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.catalogue.Workload.Fitted;
import rigbrief.measurement.calibrate.Calibration.ChannelFit;
import rigbrief.measurement.calibrate.Calibration.DemandFit;
import rigbrief.measurement.calibrate.Calibration.RateFit;
import rigbrief.part.Graphics;
import rigbrief.part.Processor;

/** The catalogue's figures with the factors that a fit found for them. */
final class Refitted {
    private Refitted() {}

    static List<Workload> workloads(Catalogue catalogue, List<DemandFit> demands) {
        List<Workload> workloads = new ArrayList<>();
        for (DemandFit demand : demands) {
            Workload listed = catalogue.workload(demand.workload()).orElseThrow();
            workloads.add(
                    listed instanceof FrameRate title
                            ? title(title, demand)
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

    private static FrameRate title(FrameRate listed, DemandFit demand) {
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
                        work.memoryExponent()),
                listed.referencePreset(),
                listed.presets(),
                listed.rays(),
                listed.upscaling(),
                listed.scenes(),
                listed.settings());
    }

    private static PerPixel scaled(PerPixel amount, double factor) {
        return new PerPixel(amount.fixed() * factor, amount.perMegapixel() * factor);
    }

    private static TaskTime task(TaskTime listed, DemandFit demand) {
        double processor = factor(demand.channels(), Channel.PROCESSOR);
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
                listed.readGb(),
                listed.writeGb());
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
        if (catalogue.part(fit.part()).orElseThrow() instanceof Graphics card) {
            double graphics = factor(fit.channels(), Channel.GRAPHICS);
            double rays = factor(fit.channels(), Channel.RAYS);
            return new PartRates(
                    fit.part(),
                    changed(card.tflops(), graphics),
                    changed(card.bandwidthGbs(), graphics),
                    changed(card.rayRate(), rays),
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
        }
        Processor processor = (Processor) catalogue.part(fit.part()).orElseThrow();
        double factor = factor(fit.channels(), Channel.PROCESSOR);
        return new PartRates(
                fit.part(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                changed(processor.rateSingle(), factor),
                changed(processor.rateAll(), factor));
    }

    private static OptionalDouble changed(double listed, double factor) {
        return factor == 1 ? OptionalDouble.empty() : OptionalDouble.of(listed * factor);
    }
}
