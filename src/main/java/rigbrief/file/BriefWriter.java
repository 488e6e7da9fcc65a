package rigbrief.file;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rigbrief.brief.Brief;
import rigbrief.brief.Kept;
import rigbrief.brief.Screen;
import rigbrief.brief.WorkloadNeed;
import rigbrief.file.cell.Figures;
import rigbrief.file.cell.Ids;
import rigbrief.file.cell.PartCells;
import rigbrief.file.tree.YamlText;
import rigbrief.part.Colour;
import rigbrief.part.FrontPort;
import rigbrief.part.Part;
import rigbrief.part.Port;
import rigbrief.part.SidePanel;

/** Writes a brief as YAML that reads back as an equal brief; its name is its file's name. */
public final class BriefWriter {
    private final Brief brief;
    private final YamlText yaml;

    private BriefWriter(Brief brief, YamlText yaml) {
        this.brief = brief;
        this.yaml = yaml;
    }

    /** The brief as a YAML text. */
    public static String write(Brief brief) {
        YamlText yaml = new YamlText();
        write(brief, yaml);
        return yaml.toString();
    }

    /** Writes the keys of a brief. */
    static void write(Brief brief, YamlText yaml) {
        BriefWriter writer = new BriefWriter(brief, yaml);
        writer.order();
        brief.screen().ifPresent(writer::screen);
        writer.workloads();
        writer.looks();
        writer.noise();
        writer.needs();
        writer.size();
        writer.keep();
        writer.buying();
        writer.use();
    }

    private void order() {
        yaml.text("client", brief.client())
                .plain("currency", brief.currency())
                .plain("quantity", brief.quantity())
                .plain("ceiling", brief.ceiling().plain())
                .plain("overrun", percent(brief.overrunBasisPoints()))
                .plain("confidence", brief.confidencePercent() + "%");
        if (!brief.locale().equals(Brief.USUAL_LOCALE)) {
            yaml.plain("locale", brief.locale().toLanguageTag());
        }
    }

    private void screen(Screen screen) {
        yaml.begin("display")
                .plain("resolution", screen.resolution())
                .plain("refresh", screen.refreshHz())
                .plain("bits", screen.bitsPerColour())
                .list("inputs", screen.inputs().stream().map(BriefWriter::port).toList())
                .plain("count", screen.count())
                .yes("buy", screen.buy());
        text("part", screen.part());
        yaml.end();
    }

    private static String port(Port port) {
        return port.count() == 1 ? port.standard() : port.standard() + ":" + port.count();
    }

    private void workloads() {
        if (!brief.workloads().isEmpty()) {
            yaml.begin("workloads");
            brief.workloads().forEach(this::workload);
            yaml.end();
        }
        yaml.list("at-once", brief.atOnce());
    }

    private void workload(WorkloadNeed need) {
        yaml.item().text("use", need.use());
        need.must().ifPresent(target -> target("must", target));
        need.wish().ifPresent(target -> target("wish", target));
        yaml.plain("weight", need.weight());
        WorkloadNeed.Settings settings = need.settings();
        if (settings.preset().or(settings::rays).or(settings::upscaling).isPresent()) {
            yaml.begin("with");
            text("preset", settings.preset());
            text("rays", settings.rays());
            text("upscaling", settings.upscaling());
            yaml.end();
        }
        yaml.end();
    }

    private void target(String key, WorkloadNeed.Target target) {
        yaml.begin(key);
        number("average", target.averageFps(), "");
        number("low", target.lowFps(), "");
        number("finish-within", target.finishWithinS(), "s");
        yaml.end();
    }

    private void looks() {
        Brief.Looks looks = brief.looks();
        yaml.begin("looks").plain("lighting", LimitsSection.word(looks.lighting()));
        text("colour", looks.colour().map(Colour::word));
        yaml.yes("colour-must", looks.colourStrength() == Brief.Strength.MUST);
        text("side", looks.side().map(SidePanel::word));
        yaml.end();
    }

    private void noise() {
        yaml.begin("noise");
        whole("must", brief.noise().mustDba());
        whole("wish", brief.noise().wishDba());
        yaml.plain("distance", Figures.plain(brief.noise().seatDistanceM())).end();
    }

    private void needs() {
        yaml.begin("wireless")
                .plain("need", LimitsSection.word(brief.wireless().strength()))
                .plain("at-least", brief.wireless().atLeast().word())
                .end();
        yaml.begin("memory")
                .plain("at-least", brief.memory().atLeastGb())
                .yes("ecc", brief.memory().ecc())
                .end();
        yaml.begin("storage")
                .plain("at-least", brief.storage().atLeastGb())
                .list("room-for", brief.storage().roomFor())
                .plain("years", brief.storage().years())
                .end();
        yaml.list("front-ports", brief.frontPorts().stream().map(FrontPort::word).toList());
    }

    private void size() {
        Brief.SizeNeed size = brief.size();
        Optional<String> litres =
                size.atMostDecilitres().stream().mapToObj(tenths -> scaled(tenths, 1)).findFirst();
        if (litres.or(() -> firstSide(size)).isEmpty() && size.mass().isEmpty()) {
            return;
        }
        yaml.begin("size");
        litres.ifPresent(it -> yaml.plain("at-most-litres", it));
        size.height().ifPresent(it -> yaml.plain("height-mm", it.millimetres()));
        size.width().ifPresent(it -> yaml.plain("width-mm", it.millimetres()));
        size.depth().ifPresent(it -> yaml.plain("depth-mm", it.millimetres()));
        size.mass().ifPresent(it -> yaml.plain("at-most-kg", scaled(it.grams(), 3)));
        yaml.end();
    }

    private static Optional<String> firstSide(Brief.SizeNeed size) {
        return size.height().or(size::width).or(size::depth).map(Object::toString);
    }

    private void keep() {
        if (brief.keep().isEmpty()) {
            return;
        }
        yaml.begin("keep");
        for (Kept kept : brief.keep()) {
            yaml.item().plain("slot", kept.slot().word()).text("part", kept.part().id());
            yaml.plain("pieces", kept.pieces());
            spec(kept.part(), yaml);
            yaml.end();
        }
        yaml.end();
    }

    /** Describes a part that stands in no catalogue. */
    static void spec(Part part, YamlText yaml) {
        if (Ids.owned(part.id())) {
            yaml.begin("spec");
            PartCells.of(part).forEach(yaml::text);
            yaml.end();
        }
    }

    private void buying() {
        yaml.begin("avoid")
                .list("makers", brief.avoid().makers())
                .list("parts", brief.avoid().parts())
                .end();
        yaml.begin("buying").list("suppliers", brief.buying().suppliers());
        whole("at-most-suppliers", brief.buying().atMostSuppliers());
        whole("within-days", brief.buying().withinDays());
        yaml.yes("variants", brief.buying().variants()).end();
        yaml.begin("system").plain("need", LimitsSection.word(brief.system().strength()));
        text("part", brief.system().part());
        yaml.end();
    }

    private void use() {
        place(brief.place());
        Brief.Headroom headroom = brief.headroom();
        yaml.begin("headroom")
                .plain("supply-share", headroom.supplySharePercent() + "%")
                .plain("supply-sizes-up", headroom.supplySizesUp())
                .plain("thermal-margin-k", headroom.thermalMarginK())
                .end();
        yaml.begin("wishes");
        // Workloads are named even where they weigh nothing: they weigh 4 where they are not named.
        yaml.plain("workloads", brief.wishes().weight("workloads"));
        TermsSection.USUAL_WEIGHTS.keySet().stream()
                .filter(goal -> !goal.equals("workloads") && brief.wishes().weight(goal) > 0)
                .forEach(goal -> yaml.plain(goal, brief.wishes().weight(goal)));
        yaml.end();
        yaml.begin("fees")
                .plain("assembly", brief.fees().assembly().plain())
                .plain("tax", percent(brief.fees().taxBasisPoints()))
                .end();
    }

    private void place(Brief.Place place) {
        int decimals = brief.currency().getDefaultFractionDigits() + 2;
        BigDecimal tariff = BigDecimal.valueOf(place.tariffPerKwhMinor(), decimals);
        yaml.begin("place")
                .plain("room-c", Figures.plain(place.roomC()))
                .plain("altitude-m", Figures.plain(place.altitudeM()))
                .plain("mains-v", place.mainsV())
                .plain("hours-per-day", Figures.plain(place.hoursPerDay()))
                .plain("load-share", Figures.plain(place.loadShare()))
                .plain("tariff", Figures.plain(tariff))
                .yes("helper-processor", place.helperProcessor())
                .end();
    }

    private void text(String key, Optional<String> value) {
        value.ifPresent(it -> yaml.text(key, it));
    }

    private void whole(String key, OptionalInt value) {
        value.ifPresent(it -> yaml.plain(key, it));
    }

    private void number(String key, OptionalDouble value, String unit) {
        value.ifPresent(it -> yaml.plain(key, Figures.plain(it) + unit));
    }

    private static String percent(int basisPoints) {
        return scaled(basisPoints, 2) + "%";
    }

    private static String scaled(int amount, int decimals) {
        return Figures.plain(BigDecimal.valueOf(amount, decimals));
    }
}
