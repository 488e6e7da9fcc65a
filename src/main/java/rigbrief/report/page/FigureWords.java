package rigbrief.report.page;

import java.util.List;
import rigbrief.assess.Climate;
import rigbrief.assess.Power;
import rigbrief.audit.Audit;
import rigbrief.audit.Audit.Figures;
import rigbrief.brief.Brief;
import rigbrief.part.Slot;

/** Noise, power and heat: in words that a client understands, and in numbers. */
final class FigureWords {
    /** Levels in dB(A) from which the next comparison holds; common practice in noise tables. */
    private static final List<Integer> LOUD_DBA = List.of(50, 45, 40, 35, 30, 25, 20);

    /** An electric kettle, in W; common practice. */
    private static final double KETTLE_W = 2_000;

    /** Heat that a person sitting still gives off, in W; common practice. */
    private static final double PERSON_W = 100;

    private static final String NO_BREAK = "\u00a0";

    private final Brief brief;
    private final Words words;

    FigureWords(Brief brief, Words words) {
        this.brief = brief;
        this.words = words;
    }

    /** The three figures of a finished build; none of an unfinished one. */
    List<Figure> of(Audit audit) {
        return audit.figures()
                .map(
                        figures ->
                                List.of(
                                        noise(figures),
                                        power(figures.power()),
                                        heat(figures, audit.build().has(Slot.GRAPHICS))))
                .orElse(List.of());
    }

    private Figure noise(Figures figures) {
        return new Figure(
                words.text("figure.noise"),
                words.text(
                        "noise.words",
                        loud(figures.load().levelDba()),
                        loud(figures.idle().levelDba())),
                words.text(
                        "noise.numbers",
                        level(figures.idle()),
                        level(figures.load()),
                        level(figures.full()),
                        words.quantity(1, brief.noise().seatDistanceM(), "m")));
    }

    private String loud(double levelDba) {
        for (int least : LOUD_DBA) {
            if (Math.round(levelDba * 10) >= least * 10L) {
                return words.text("loud." + least);
            }
        }
        return words.text("loud.0");
    }

    private String level(Climate climate) {
        return words.quantity(1, climate.levelDba(), "dB(A)");
    }

    private Figure power(Power power) {
        double hundredths = brief.place().tariffPerKwhMinor();
        long yearMinor = Math.round(power.kwhPerYear() * hundredths / 100);
        return new Figure(
                words.text("figure.power"),
                words.text(
                        "power.words",
                        words.roundMoney(yearMinor, brief.currency()),
                        words.money(Math.round(hundredths / 100), brief.currency()),
                        percent(power.wallW() / KETTLE_W)),
                words.text(
                        "power.numbers",
                        watts(power.wallW()),
                        watts(power.wallIdleW()),
                        words.quantity(0, brief.place().mainsV(), "V"),
                        watts(power.sustainedW()),
                        watts(power.peakW()),
                        percent(power.supplyShare()),
                        words.quantity(0, power.kwhPerYear(), "kWh")));
    }

    private Figure heat(Figures figures, boolean card) {
        boolean tight = figures.full().excessDecikelvin() > 0;
        return new Figure(
                words.text("figure.heat"),
                words.text(
                        tight ? "heat.words.tight" : "heat.words",
                        Math.max(1, Math.round(figures.power().wallW() / PERSON_W)),
                        words.quantity(0, figures.load().caseRiseK(), "°C")),
                words.text(
                        "heat.numbers",
                        celsius(figures.load().processorC()),
                        card(figures.load(), card),
                        kelvin(figures.load()),
                        celsius(figures.full().processorC()),
                        card(figures.full(), card),
                        kelvin(figures.full())));
    }

    private String card(Climate climate, boolean card) {
        return card ? words.text("heat.card", celsius(climate.graphicsC())) : "";
    }

    private String kelvin(Climate climate) {
        return words.quantity(1, climate.caseRiseK(), "K");
    }

    private String celsius(double temperatureC) {
        return words.quantity(0, temperatureC, "°C");
    }

    private String watts(double powerW) {
        return words.quantity(0, powerW, "W");
    }

    private String percent(double share) {
        return words.number(0, 100 * share) + NO_BREAK + "%";
    }
}
