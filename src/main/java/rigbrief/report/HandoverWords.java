package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigbrief.assembly.Bench;
import rigbrief.assembly.handover.PartPassport;
import rigbrief.assembly.handover.Upgrade;
import rigbrief.assembly.handover.UpgradePath;
import rigbrief.part.Slot;
import rigbrief.report.page.DocumentSubject;

/** The sentences of a handover sheet. */
final class HandoverWords {
    /** What stands under the list of parts. */
    static final String GUARANTEE =
            "Makers' guarantees as stated in the catalogue; the law of the country may give more. Keep the"
                    + " invoices: without one there is no guarantee. A date is the last day, counted from"
                    + " the day the part came.";

    /** What to keep together. */
    static final List<String> KEEP =
            List.of(
                    "this sheet, the invoices, the licence and the passwords, away from the machine",
                    "the leads that were left over from the supply: only they fit it, and no other"
                            + " supply's lead may be plugged in",
                    "the bag of screws and brackets, and the boxes while the guarantee runs");

    private HandoverWords() {}

    static String name(PartPassport part) {
        return (part.quantity() > 1 ? part.quantity() + " x " : "") + part.part().name();
    }

    static String guarantee(PartPassport part, DocumentSubject subject) {
        if (part.own()) {
            return "the client's own";
        }
        if (part.years().isEmpty() || part.years().getAsInt() == 0) {
            return "as the law gives" + from(part, subject);
        }
        return part.until()
                .map(day -> "until " + day + from(part, subject))
                .orElseGet(
                        () ->
                                AssessmentText.counted(part.years().getAsInt(), "year")
                                        + " from purchase"
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

    static String asked(NeedLine need) {
        return (need.must() ? "must " : "wish ")
                + (need.atMost() ? "<= " : ">= ")
                + need.required().toPlainString()
                + " "
                + need.unit();
    }

    static String promised(NeedLine need) {
        return need.promised().map(number -> number.toPlainString()).orElse("not at all")
                + (need.met() ? "" : " *");
    }

    static String range(NeedLine need) {
        if (need.low().isEmpty() || need.high().isEmpty() || need.low().equals(need.high())) {
            return "-";
        }
        return need.low().get().toPlainString() + ".." + need.high().get().toPlainString();
    }

    static String range(DocumentSubject subject) {
        return "Range: where a measurement falls in %d of 100 machines like this one. A star: a wish that is not met with that confidence. Measured: filled in by the builder."
                .formatted(subject.brief().confidencePercent());
    }

    /** What the machine is like in use. */
    static List<String> figures(Bench bench) {
        List<String> lines = new ArrayList<>();
        var it = bench.it();
        lines.add(
                "Noise where you sit: %s at rest, %s under your heaviest work. A quiet room by night has about 20 to 25 dB(A), talk about 60."
                        .formatted(
                                Rounded.print(0, it.idle().levelDba(), " dB(A)"),
                                Rounded.print(0, it.load().levelDba(), " dB(A)")));
        lines.add(
                "From the wall: %s at rest, %s under load, about %s a year at %s hours a day."
                        .formatted(
                                Rounded.print(0, it.power().wallIdleW(), " W"),
                                Rounded.print(0, it.power().wallW(), " W"),
                                Rounded.print(0, it.power().kwhPerYear(), " kWh"),
                                Rounded.asAsked(it.brief().place().hoursPerDay()).toPlainString()));
        lines.add(
                "Temperatures under load in a room of %s: processor about %s%s. They may be higher on a hot day; nothing is wrong until the machine slows down or stops."
                        .formatted(
                                Rounded.print(0, it.brief().place().roomC(), " °C"),
                                Rounded.print(0, it.load().processorC(), " °C"),
                                bench.build().has(Slot.GRAPHICS)
                                        ? ", graphics card about "
                                                + Rounded.print(0, it.load().graphicsC(), " °C")
                                        : ""));
        lines.add(
                "Room around it: a hand's breadth behind and above, nothing in front of the grilles, not on a thick carpet.");
        return lines;
    }

    static String path(UpgradePath path, DocumentSubject subject) {
        return "Each step was worked out anew with the parts of this machine kept and today's offers of %s: the least money, delivery included, for %d %% more speed where a part holds your work back, for twice the memory or storage, or for %d dB less noise. Fitting is not in the price."
                .formatted(
                        subject.catalogue().asOf(),
                        UpgradePath.FASTER_PERCENT,
                        UpgradePath.QUIETER_DB);
    }

    static String nothing(UpgradePath path) {
        return path.nothing().isEmpty()
                ? ""
                : "Not to be had for up to %s in this machine, or of no use for what was asked: %s."
                        .formatted(path.budget(), String.join(", ", path.nothing()));
    }

    static String head(Upgrade upgrade) {
        return capital(upgrade.title())
                + ", "
                + upgrade.cost()
                + (upgrade.proven() ? "" : " (not proven to be the least)");
    }

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
