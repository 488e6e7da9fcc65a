package rigbrief.measurement.calibrate;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import rigbrief.assess.FrameLoad;
import rigbrief.assess.FrameModel;
import rigbrief.assess.MachineRates;
import rigbrief.assess.MachineRates.Picture;
import rigbrief.assess.TaskModel;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.FrameWork;
import rigbrief.catalogue.FrameRate.PerPixel;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.CatalogueReader;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.Rig;
import rigbrief.measurement.calibrate.Unknown.Sort;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Kind;
import rigbrief.part.Memory;
import rigbrief.part.Processor;
import rigbrief.part.Resolution;

/**
 * Machines and measurements made up from parameters that nobody sees but the test: thirty machines
 * run twelve workloads, a tenth of the measurements are spoilt by something that ran beside them,
 * and two machines are set up wrongly.
 *
 * <p>Truths are drawn from the very priors a calibration has, as the usual terms say.
 */
final class InventedWorld {
    static final int MACHINES = 30;
    static final String SLOW_CARD = "bench-05";
    static final String SLOW_PROCESSOR = "bench-19";

    private static final int CARDS = 10;
    private static final int PROCESSORS = 10;
    private static final int DRIVES = 4;
    private static final double SLOW_CARD_PACE = 0.72;
    private static final double SLOW_PROCESSOR_PACE = 0.75;
    private static final double NOISE = 0.04;
    private static final double SMALL_TFLOPS = 10;
    private static final List<String> WORKLOADS =
            List.of(
                    "harbour-of-glass",
                    "tallow-and-thorn",
                    "nine-bells-arena",
                    "skirl",
                    "commonwealth-of-mud",
                    "granary-and-guild",
                    "copperline-rally",
                    "hollow-stars",
                    "saltmarsh-chronicle",
                    "ternlight-darkroom",
                    "reel-loom",
                    "quarry-render");
    private static final List<Resolution> PICTURES =
            List.of(
                    new Resolution(1920, 1080),
                    new Resolution(2560, 1440),
                    new Resolution(3440, 1440),
                    new Resolution(3840, 2160));

    private static Catalogue sample;

    private final Catalogue catalogue;
    private final Random random;
    private final double spoiltShare;
    private final Map<Unknown, Double> truth = new LinkedHashMap<>();
    private final Map<String, Double> spreads = new LinkedHashMap<>();
    private final List<Row> rows = new ArrayList<>();

    /** A machine, a measurement, and what the file of measurements says of the machine. */
    private record Row(Measurement measurement, Memory memory) {}

    /** The sample catalogue, read once. */
    static synchronized Catalogue catalogue() {
        try {
            sample = sample == null ? CatalogueReader.read(Path.of("catalog-sample")) : sample;
            return sample;
        } catch (BadInput bad) {
            throw new IllegalStateException(bad);
        }
    }

    /**
     * A world.
     *
     * @param seed which
     * @param spoiltShare share of measurements that something spoilt
     * @param settings how many settings each workload is measured at on each machine
     */
    InventedWorld(long seed, double spoiltShare, int settings) {
        this(seed, spoiltShare, settings, MACHINES);
    }

    InventedWorld(long seed, double spoiltShare, int settings, int machines) {
        this.catalogue = catalogue();
        this.random = new Random(seed);
        this.spoiltShare = spoiltShare;
        List<Graphics> cards = pick(Kind.GRAPHICS, CARDS, Graphics.class);
        List<Drive> drives = pick(Kind.DRIVE, DRIVES, Drive.class);
        List<Processor> processors = pick(Kind.PROCESSOR, PROCESSORS, Processor.class);
        for (int m = 0; m < machines; m++) {
            Processor processor = processors.get(m % PROCESSORS);
            Graphics card = cards.get((m * 3 + m / PROCESSORS) % CARDS);
            Drive drive = drives.get(m / 2 % DRIVES);
            machine("bench-%02d".formatted(m + 1), processor, card, drive, settings);
        }
    }

    /** Parts from all along the catalogue's list, which runs from small to large. */
    private <P> List<P> pick(Kind kind, int count, Class<P> type) {
        List<P> picked = new ArrayList<>();
        int size = catalogue.parts(kind).size();
        for (int i = 0; i < count; i++) {
            picked.add(type.cast(catalogue.parts(kind).get((2 * i + 1) * size / (2 * count))));
        }
        return picked;
    }

    private void machine(
            String name, Processor processor, Graphics card, Drive drive, int settings) {
        Memory memory = memory(processor);
        Rig rig =
                new Rig(
                        processor,
                        Optional.of(card),
                        Math.min(memory.mts(), processor.memoryMts(memory.type())),
                        memory.kitGb(),
                        Optional.of(drive));
        pace(name, Channel.GRAPHICS, name.equals(SLOW_CARD) ? Math.log(SLOW_CARD_PACE) : 0);
        pace(
                name,
                Channel.PROCESSOR,
                name.equals(SLOW_PROCESSOR) ? Math.log(SLOW_PROCESSOR_PACE) : 0);
        for (String id : WORKLOADS) {
            Workload workload = catalogue.workload(id).orElseThrow();
            for (int i = 0; i < settings; i++) {
                rows.add(new Row(measurement(name, rig, workload), memory));
            }
        }
    }

    private Memory memory(Processor processor) {
        return catalogue.parts(Kind.MEMORY).stream()
                .map(Memory.class::cast)
                .filter(kit -> kit.modules() == 2 && kit.kitGb() >= 32 && !kit.ecc())
                .filter(kit -> processor.memoryMts(kit.type()) > 0)
                .findFirst()
                .orElseThrow();
    }

    private void pace(String machine, Channel channel, double fault) {
        double own = Terms.usual().pieceSigma() * random.nextGaussian();
        truth.put(new Unknown(Sort.PIECE, channel, machine), own + fault);
    }

    /** The true value, drawn when it is first asked for. */
    private double truth(Sort sort, Channel channel, String id) {
        Unknown unknown = new Unknown(sort, channel, id);
        return truth.computeIfAbsent(
                unknown, any -> Terms.usual().prior(any).sigma() * random.nextGaussian());
    }

    private Measurement measurement(String machine, Rig rig, Workload workload) {
        return workload instanceof FrameRate title
                ? frames(machine, rig, title)
                : task(machine, rig, (TaskTime) workload);
    }

    private Measurement frames(String machine, Rig rig, FrameRate title) {
        // Nobody tries the largest picture on the smallest card.
        Resolution picture = PICTURES.get(random.nextInt(small(rig) ? 2 : PICTURES.size()));
        Settings settings = settings(title, rig);
        MachineRates rates = rates(machine, rig);
        FrameLoad load =
                FrameLoad.of(title, settings, picture.megapixels(), rates.picture().upscales());
        var clean =
                FrameModel.rates(
                        FrameModel.scenes(truly(title), load, rates),
                        title.engineCapFps().orElse(Double.POSITIVE_INFINITY),
                        spread(title));
        double disturbed = Math.exp(disturbance());
        return new Measurement(
                "world",
                rows.size() + 2,
                machine,
                Optional.of(rig),
                title.id(),
                settings,
                Optional.of(picture),
                OptionalDouble.of(clean.averagePerS() * disturbed),
                OptionalDouble.of(
                        Math.min(clean.averagePerS(), clean.lowPerS() * noise()) * disturbed),
                OptionalDouble.empty());
    }

    private static boolean small(Rig rig) {
        return rig.graphics().orElseThrow().tflops() < SMALL_TFLOPS;
    }

    private double noise() {
        return Math.exp(NOISE * random.nextGaussian());
    }

    /** Noise; and now and then something that ran beside it and took up to half of the speed. */
    private double disturbance() {
        double noise = NOISE * random.nextGaussian();
        boolean spoilt = random.nextDouble() < spoiltShare;
        return spoilt ? noise - 0.25 - 0.45 * random.nextDouble() : noise;
    }

    private Settings settings(FrameRate title, Rig rig) {
        List<String> presets = List.copyOf(title.presets().keySet());
        List<String> rays = List.copyOf(title.rays().keySet());
        boolean traced = rig.graphics().orElseThrow().rayRate() > 0 && random.nextBoolean();
        boolean upscaled = !title.upscaling().isEmpty() && random.nextInt(3) == 0;
        return new Settings(
                Optional.of(presets.get(random.nextInt(small(rig) ? 2 : presets.size()))),
                traced ? Optional.of(rays.get(rays.size() - 1)) : Optional.empty(),
                upscaled
                        ? Optional.of(title.upscaling().keySet().iterator().next())
                        : Optional.empty());
    }

    private Measurement task(String machine, Rig rig, TaskTime task) {
        double clean = TaskModel.stages(truly(task), rates(machine, rig)).seconds();
        return new Measurement(
                "world",
                rows.size() + 2,
                machine,
                Optional.of(rig),
                task.id(),
                new Settings(Optional.empty(), Optional.empty(), Optional.empty()),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(clean * Math.exp(-disturbance())));
    }

    private double demand(Workload workload, Channel channel) {
        return Math.exp(truth(Sort.DEMAND, channel, workload.id()));
    }

    private FrameRate truly(FrameRate title) {
        double graphics = demand(title, Channel.GRAPHICS);
        double rays = demand(title, Channel.RAYS);
        double processor = demand(title, Channel.PROCESSOR);
        FrameWork work = title.work();
        return new FrameRate(
                title.id(),
                title.title(),
                title.memoryGb(),
                title.vram(),
                title.diskGb(),
                title.fitted(),
                title.engineCapFps(),
                new FrameWork(
                        work.fixedMs(),
                        times(work.gflop(), graphics),
                        times(work.gbyte(), graphics),
                        times(work.rays(), rays),
                        work.serial() * processor,
                        work.parallel() * processor,
                        exponent(title)),
                title.referencePreset(),
                title.presets(),
                title.rays(),
                title.upscaling(),
                title.scenes(),
                title.settings(),
                title.shape());
    }

    private static PerPixel times(PerPixel amount, double factor) {
        return new PerPixel(amount.fixed() * factor, amount.perMegapixel() * factor);
    }

    private TaskTime truly(TaskTime task) {
        double processor = demand(task, Channel.PROCESSOR);
        return new TaskTime(
                task.id(),
                task.title(),
                task.job(),
                task.memoryGb(),
                task.vramGb(),
                task.diskGb(),
                task.fitted(),
                task.serial() * processor,
                task.parallel() * processor,
                task.gflop() * demand(task, Channel.GRAPHICS),
                task.readGb() * demand(task, Channel.DRIVE),
                task.writeGb() * demand(task, Channel.DRIVE));
    }

    private MachineRates rates(String machine, Rig rig) {
        Graphics card = rig.graphics().orElseThrow();
        double cardPace = truth.get(new Unknown(Sort.PIECE, Channel.GRAPHICS, machine));
        double graphics = Math.exp(cardPace + truth(Sort.RATE, Channel.GRAPHICS, card.id()));
        double rays = Math.exp(cardPace + truth(Sort.RATE, Channel.RAYS, card.id()));
        double processor =
                Math.exp(
                        truth.get(new Unknown(Sort.PIECE, Channel.PROCESSOR, machine))
                                + truth(Sort.RATE, Channel.PROCESSOR, rig.processor().id()));
        String driveId = rig.drive().orElseThrow().id();
        double drive = Math.exp(truth(Sort.RATE, Channel.DRIVE, driveId));
        return new MachineRates(
                new Picture(
                        card.tflops() * graphics,
                        card.bandwidthGbs() * graphics,
                        card.rayRate() * rays,
                        card.vramGb(),
                        card.upscaling().isPresent(),
                        0,
                        1),
                rig.processor().rateSingle() * processor,
                rig.processor().rateAll() * processor,
                rig.memoryMts(),
                rig.memoryGb(),
                rig.drive().orElseThrow().readMbs() * drive,
                rig.drive().orElseThrow().writeMbs() * drive);
    }

    /** All measurements. */
    List<Measurement> measurements() {
        return rows.stream().map(Row::measurement).toList();
    }

    /** The true memory exponent of a title. */
    double exponent(FrameRate title) {
        double change = truth(Sort.MEMORY, Channel.PROCESSOR, title.id());
        return Math.max(0, title.work().memoryExponent() + change);
    }

    /** The true spread of a title's frame times. */
    double spread(FrameRate title) {
        double factor =
                spreads.computeIfAbsent(
                        title.id(), any -> 1 + Terms.SPREAD_SHARE * random.nextGaussian());
        return title.shape().spread() * Math.max(0, factor);
    }

    /** The true factor on a figure of the catalogue. */
    double factor(Sort sort, Channel channel, String id) {
        return Math.exp(truth.get(new Unknown(sort, channel, id)));
    }

    /** The measurements as a file. */
    String csv() {
        StringBuilder csv =
                new StringBuilder(
                        "machine,processor,graphics,memory,drive,workload,resolution,preset,rays,"
                                + "upscaling,average_fps,low_fps,seconds\n");
        for (Row row : rows) {
            Measurement it = row.measurement();
            Rig rig = it.rig().orElseThrow();
            csv.append(
                    String.join(
                            ",",
                            it.machine(),
                            rig.processor().id(),
                            rig.graphics().orElseThrow().id(),
                            row.memory().id(),
                            rig.drive().orElseThrow().id(),
                            it.workload(),
                            it.resolution().map(Resolution::toString).orElse(""),
                            it.settings().preset().orElse(""),
                            it.settings().rays().orElse(""),
                            it.settings().upscaling().orElse(""),
                            cell(it.averageFps()),
                            cell(it.lowFps()),
                            cell(it.seconds())));
            csv.append('\n');
        }
        return csv.toString();
    }

    private static String cell(OptionalDouble amount) {
        return amount.isPresent() ? String.format(Locale.ROOT, "%.1f", amount.getAsDouble()) : "";
    }
}
