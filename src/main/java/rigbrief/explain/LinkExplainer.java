package rigbrief.explain;

import java.math.BigDecimal;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.model.link.CvtTiming;
import rigbrief.model.link.DisplayLink;
import rigbrief.model.link.DisplayTiming;
import rigbrief.model.link.LinkResult;
import rigbrief.model.link.LinkStandard;
import rigbrief.part.Slot;
import rigbrief.rule.fit.DisplayLinkRule;
import rigbrief.rule.fit.ScreenLink;

/** Explains the display link: pixel clock, needed rate, available rate. */
final class LinkExplainer implements Explainer {
    private static final String SOURCE =
            "VESA CVT 1.2, DisplayPort 1.4 and 2.1, HDMI 2.1: timings and payload rates";
    private static final double MEGA = 1e6;

    @Override
    public List<Topic> topics(Assessment it) {
        return new DisplayLinkRule()
                .link(it)
                .map(
                        link ->
                                List.of(
                                        new Topic(
                                                "link.pixel-clock-mhz",
                                                "Pixel clock",
                                                () -> clock(it, link)),
                                        new Topic(
                                                "link.needed-mbit",
                                                "Rate the picture needs",
                                                () -> needed(it, link)),
                                        new Topic(
                                                "link.available-mbit",
                                                "Rate the link carries",
                                                () -> available(it, link))))
                .orElse(List.of());
    }

    private static Explanation clock(Assessment it, ScreenLink link) {
        DisplayTiming timing = timing(link);
        Derivation how =
                new Derivation(
                        "link.pixel-clock-mhz",
                        "Pixel clock",
                        "refresh rate x pixels per line x lines, blanking included, rounded down"
                                + " to the step of the timing rule",
                        SOURCE);
        picture(how, it, link);
        how.given("pixels per line", timing.horizontalTotal(), "", rule(link));
        how.given("lines", timing.verticalTotal(), "", rule(link));
        how.given("clock step", link.result().timing().clockStepHz(), "Hz", rule(link));
        how.remark(CvtTiming.REFRESH_HZ.remark(link.refreshHz()));
        how.remark("the blanking pixels and lines follow from the timing rule's own formula");
        return how.gives(
                timing.pixelClockHz() / MEGA,
                3,
                "MHz",
                "floor({} x {} x {} / {}) x {} / 1000000",
                link.refreshHz(),
                timing.horizontalTotal(),
                timing.verticalTotal(),
                link.result().timing().clockStepHz(),
                link.result().timing().clockStepHz());
    }

    private static Explanation needed(Assessment it, ScreenLink link) {
        boolean compressed = link.result().carried() == LinkResult.Carried.COMPRESSED;
        int plain = 3 * link.bitsPerColour();
        int bits = compressed ? Math.min(DisplayLink.COMPRESSED_BITS_PER_PIXEL, plain) : plain;
        Derivation how =
                new Derivation(
                        "link.needed-mbit",
                        "Rate the picture needs",
                        "pixel clock x bits per pixel",
                        SOURCE);
        picture(how, it, link);
        double mhz = timing(link).pixelClockHz() / MEGA;
        how.given("pixel clock", mhz, "MHz", "number link.pixel-clock-mhz");
        how.given(
                "bits per pixel",
                bits,
                "",
                compressed ? "display stream compression, usual target" : "3 colours");
        return how.gives(
                link.result().requiredBitsPerSecond() / (long) MEGA,
                0,
                "Mbit/s",
                "floor({} x {})",
                BigDecimal.valueOf(timing(link).pixelClockHz(), 6),
                bits);
    }

    private static Explanation available(Assessment it, ScreenLink link) {
        Derivation how =
                new Derivation(
                        "link.available-mbit",
                        "Rate the link carries",
                        "lanes x line rate x coding of the lesser standard of output and input"
                                + "; with compression on 8b/10b links, error correction off it",
                        SOURCE);
        picture(how, it, link);
        if (link.result().standard().isEmpty()) {
            how.remark("output and input have no standard in common");
            return how.gives(0, 0, "Mbit/s", "0");
        }
        LinkStandard standard = link.result().standard().get();
        how.fact("payload of " + standard.id(), standard.payloadBitsPerSecond(), "bit/s", SOURCE);
        boolean compressed = link.result().carried() == LinkResult.Carried.COMPRESSED;
        long bits = link.result().availableBitsPerSecond();
        if (compressed && bits != standard.payloadBitsPerSecond()) {
            return how.gives(
                    bits / (long) MEGA,
                    0,
                    "Mbit/s",
                    "floor({} / 1.024016 / 1000000)",
                    standard.payloadBitsPerSecond());
        }
        return how.gives(bits / (long) MEGA, 0, "Mbit/s", "floor({} / 1000000)", bits);
    }

    private static void picture(Derivation how, Assessment it, ScreenLink link) {
        String from =
                it.build().has(Slot.DISPLAY)
                        ? it.build().display().id() + ", at most the brief's"
                        : "brief, display";
        how.fact("picture", link.resolution().toString(), "", from);
        how.given("refresh rate", link.refreshHz(), "Hz", from);
        how.given("bits per colour", link.bitsPerColour(), "", from);
    }

    private static String rule(ScreenLink link) {
        return "timing rule " + link.result().timing().label();
    }

    private static DisplayTiming timing(ScreenLink link) {
        return CvtTiming.of(
                link.resolution().widthPx(),
                link.resolution().heightPx(),
                Math.min(link.refreshHz(), 2_000),
                link.result().timing());
    }
}
