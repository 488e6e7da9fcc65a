package rigbrief.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigbrief.assembly.Bench;
import rigbrief.assembly.handover.PartPassport;
import rigbrief.assembly.handover.Upgrade;
import rigbrief.assembly.handover.UpgradePath;
import rigbrief.assess.Workings;
import rigbrief.part.Slot;
import rigbrief.report.page.DocumentSubject;
import rigbrief.report.page.Words;
import rigbrief.wording.Measured;
import rigbrief.wording.Phrase;

/** The sentences of a handover sheet. */
final class HandoverWords {
    /** What stands under the list of parts. */
    static String guarantee(Words words) {
        return words.text("hand.guarantee");
    }

    /** What to keep together. */
    static List<String> keep(Words words) {
        return List.of(
                words.text("hand.keep.1"), words.text("hand.keep.2"), words.text("hand.keep.3"));
    }

    private HandoverWords() {}

    static String name(PartPassport part) {
        return (part.quantity() > 1 ? part.quantity() + " x " : "") + part.part().name();
    }

    static String guarantee(PartPassport part, DocumentSubject subject, Words words) {
        if (part.own()) {
            return words.text("hand.own");
        }
        if (part.years().isEmpty() || part.years().getAsInt() == 0) {
            return words.text("hand.law") + from(part, subject);
        }
        return part.until()
                .map(day -> words.text("hand.until") + words.date(day) + from(part, subject))
                .orElseGet(
                        () ->
                                words.text("count.year", part.years().getAsInt())
                                        + words.text("hand.purchase")
                                        + from(part, subject));
    }

    private static String from(PartPassport part, DocumentSubject subject) {
        return part.supplier().map(id -> ", " + supplier(id, subject)).orElse("");
    }

    private static String supplier(String id, DocumentSubject subject) {
        return subject.catalogue().suppliers().stream()
                .filter(supplier -> supplier.id().equals(id))
                .map(supplier -> supplier.name())
                .findFirst()
                .orElse(id);
    }

    static String asked(NeedLine need, Words words) {
        String unit = need.unit().equals("fps") ? words.text("unit.fps") : need.unit();
        return words.text(
                (need.must() ? "must." : "wish.") + (need.atMost() ? "at-most" : "at-least"),
                figure(need.required(), words) + "\u00a0" + unit);
    }

    static String promised(NeedLine need, Words words) {
        return need.promised()
                        .map(number -> figure(number, words))
                        .orElse(words.text("hand.not-at-all"))
                + (need.met() ? "" : " *");
    }

    static String range(NeedLine need, Words words) {
        if (need.low().isEmpty() || need.high().isEmpty() || need.low().equals(need.high())) {
            return "\u2013";
        }
        return words.text(
                "need.range", figure(need.low().get(), words), figure(need.high().get(), words));
    }

    private static String figure(BigDecimal number, Words words) {
        return words.texts().figure(new Measured(number, ""));
    }

    /** A need's title. */
    static String title(NeedLine need, Words words) {
        return words.texts().say(need.phrase());
    }

    static String range(DocumentSubject subject, Words words) {
        return words.text("hand.range", subject.brief().confidencePercent());
    }

    /** What the machine is like in use. */
    static List<String> figures(Bench bench, Words words) {
        List<String> lines = new ArrayList<>();
        var it = bench.it();
        lines.add(
                words.text(
                        "hand.noise",
                        Rounded.print(0, it.idle().levelDba(), " dB(A)"),
                        Rounded.print(0, it.load().levelDba(), " dB(A)")));
        lines.add(
                words.text(
                        "hand.wall",
                        Rounded.print(0, it.power().wallIdleW(), " W"),
                        Rounded.print(0, it.power().wallW(), " W"),
                        Rounded.print(0, it.power().kwhPerYear(), " kWh"),
                        figure(Rounded.asAsked(it.brief().place().hoursPerDay()), words),
                        it.brief().place().hoursPerDay()));
        lines.add(words.text("hand.union", Rounded.print(0, Workings.unionKwh(it), " kWh")));
        lines.add(
                words.text(
                        "hand.heat",
                        Rounded.print(0, it.brief().place().roomC(), " °C"),
                        Rounded.print(0, it.load().processorC(), " °C"),
                        bench.build().has(Slot.GRAPHICS)
                                ? words.text(
                                        "hand.heat.card",
                                        Rounded.print(0, it.load().graphicsC(), " °C"))
                                : ""));
        lines.add(words.text("hand.room"));
        return lines;
    }

    static String path(DocumentSubject subject, Words words) {
        return words.text(
                "hand.path",
                words.date(subject.catalogue().asOf()),
                UpgradePath.FASTER_PERCENT,
                UpgradePath.QUIETER_DB);
    }

    static String nothing(UpgradePath path, Words words) {
        return path.nothing().isEmpty()
                ? ""
                : words.text("hand.nothing", path.budget(), String.join(", ", path.nothing()));
    }

    static String head(Upgrade upgrade, Words words) {
        return capital(upgrade.title())
                + ", "
                + words.texts().say(Phrase.joined("", List.of(upgrade.cost())))
                + (upgrade.proven() ? "" : words.text("hand.not-proven"));
    }

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
