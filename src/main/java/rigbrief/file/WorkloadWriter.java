package rigbrief.file;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import rigbrief.catalogue.Capacity;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Factors;
import rigbrief.catalogue.FrameRate.FrameWork;
import rigbrief.catalogue.FrameRate.PerPixel;
import rigbrief.catalogue.FrameRate.RayStep;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.catalogue.FrameRate.Setting;
import rigbrief.catalogue.FrameRate.Shape;
import rigbrief.catalogue.FrameRate.Step;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.catalogue.Workload.Fitted;
import rigbrief.file.cell.Figures;
import rigbrief.file.tree.YamlText;

/**
 * Writes workloads as {@link CatalogueReader} reads them; figures have five digits, which is more
 * than any measurement gives.
 */
final class WorkloadWriter {
    private static final MathContext DIGITS = new MathContext(5);

    private final YamlText yaml;

    private WorkloadWriter(YamlText yaml) {
        this.yaml = yaml;
    }

    /**
     * The workloads as a YAML text.
     *
     * @param remarks what is said above them, line by line
     */
    static String write(List<Workload> workloads, List<String> remarks) {
        YamlText yaml = new YamlText();
        remarks.forEach(yaml::remark);
        yaml.begin("workloads");
        WorkloadWriter writer = new WorkloadWriter(yaml);
        workloads.forEach(writer::workload);
        return yaml.end().toString();
    }

    /** The figure with five digits. */
    static String figure(double figure) {
        return Figures.plain(new BigDecimal(figure, DIGITS));
    }

    private void workload(Workload workload) {
        yaml.item().text("id", workload.id()).text("title", workload.title());
        if (workload instanceof FrameRate title) {
            frames(title);
        } else if (workload instanceof TaskTime task) {
            task(task);
        } else {
            capacity((Capacity) workload);
        }
        yaml.end();
    }

    private YamlText number(String key, double figure) {
        return yaml.plain(key, figure(figure));
    }

    private void fitted(Fitted fitted) {
        yaml.begin("fitted").plain("n", fitted.n());
        number("sigma", fitted.sigma()).end();
    }

    private void perPixel(String key, PerPixel amount) {
        yaml.begin(key);
        number("fixed", amount.fixed());
        number("per-megapixel", amount.perMegapixel()).end();
    }

    private void frames(FrameRate title) {
        yaml.plain("kind", "frame-rate");
        number("memory-gb", title.memoryGb());
        perPixel("vram-gb", title.vram());
        number("disk-gb", title.diskGb());
        fitted(title.fitted());
        title.engineCapFps().ifPresent(cap -> number("engine-cap", cap));
        work(title.work());
        shape(title.shape());
        yaml.text("reference-preset", title.referencePreset()).begin("presets");
        title.presets().forEach(this::preset);
        yaml.end().begin("rays");
        title.rays().forEach(this::rays);
        yaml.end();
        if (!title.upscaling().isEmpty()) {
            yaml.begin("upscaling");
            title.upscaling().forEach(this::number);
            yaml.end();
        }
        yaml.begin("scenes");
        title.scenes().forEach(this::scene);
        yaml.end();
        if (!title.settings().isEmpty()) {
            yaml.begin("settings");
            title.settings().forEach(this::setting);
            yaml.end();
        }
    }

    private void work(FrameWork work) {
        yaml.begin("work");
        number("fixed-ms", work.fixedMs());
        perPixel("gflop", work.gflop());
        perPixel("gbyte", work.gbyte());
        perPixel("rays", work.rays());
        number("serial", work.serial());
        number("parallel", work.parallel());
        number("memory-exponent", work.memoryExponent()).end();
    }

    private void shape(Shape shape) {
        if (shape.equals(Shape.USUAL)) {
            return;
        }
        yaml.begin("shape");
        number("overlap", shape.overlap());
        number("spread", shape.spread());
        number("overflow-penalty", shape.overflowPenalty()).end();
    }

    private void preset(String name, Factors factors) {
        yaml.begin(name);
        number("graphics", factors.graphics());
        number("processor", factors.processor());
        number("vram", factors.vram()).end();
    }

    private void rays(String name, RayStep step) {
        yaml.begin(name);
        number("rays", step.rays());
        number("graphics", step.graphics());
        number("processor", step.processor()).end();
    }

    private void scene(Scene scene) {
        yaml.item().text("name", scene.name());
        // Shares must make 1, which rounding to five digits each would not keep.
        yaml.plain("share", Figures.plain(scene.share()));
        number("graphics", scene.graphics());
        number("processor", scene.processor()).end();
    }

    private void setting(Setting setting) {
        yaml.item().text("name", setting.name()).plain("visible", setting.visible());
        if (setting.standsInForRays()) {
            yaml.yes("stands-in-for-rays", true);
        }
        yaml.begin("steps");
        setting.steps().forEach(this::step);
        yaml.end().end();
    }

    private void step(Step step) {
        yaml.item().text("name", step.name());
        number("graphics", step.graphics());
        number("processor", step.processor()).end();
    }

    private void task(TaskTime task) {
        yaml.plain("kind", "task-time").text("job", task.job());
        number("memory-gb", task.memoryGb());
        number("vram-gb", task.vramGb());
        number("disk-gb", task.diskGb());
        fitted(task.fitted());
        yaml.begin("work");
        number("serial", task.serial());
        number("parallel", task.parallel());
        number("gflop", task.gflop());
        number("read-gb", task.readGb());
        number("write-gb", task.writeGb()).end();
    }

    private void capacity(Capacity capacity) {
        yaml.plain("kind", "capacity");
        number("memory-gb", capacity.memoryGb());
        number("vram-gb", capacity.vramGb());
        number("disk-gb", capacity.diskGb());
        number("growth-gb-per-year", capacity.growthGbPerYear());
        fitted(capacity.fitted());
    }
}
