package rigbrief.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.audit.Audit;
import rigbrief.brief.Brief;
import rigbrief.part.Drive;
import rigbrief.wording.Phrase;

/**
 * A need of the brief that is measured, with what a build promises.
 *
 * @param need the need as the brief spells it
 * @param phrase the same for people
 * @param must whether it is a must; else a wish
 * @param promised what the build gives; empty when it can't do the job at all
 * @param low lower end of the range of a prediction; empty where no range is known
 * @param high upper end
 * @param required what was asked
 * @param unit unit of all of these
 * @param atMost whether less is better
 * @param chance chance that a measurement meets what was asked; empty where none is known
 * @param met whether it is met, with the brief's confidence where there is a chance
 */
public record NeedLine(
        String need,
        Phrase phrase,
        boolean must,
        Optional<BigDecimal> promised,
        Optional<BigDecimal> low,
        Optional<BigDecimal> high,
        BigDecimal required,
        String unit,
        boolean atMost,
        OptionalDouble chance,
        boolean met) {
    /** Its title in English. */
    public String title() {
        return phrase.toString();
    }

    /** All measured needs of a finished build: workloads, noise, memory, storage. */
    public static List<NeedLine> of(Brief brief, Audit audit) {
        List<NeedLine> needs = new ArrayList<>();
        for (Prediction prediction : audit.predictions()) {
            for (Promise promise : prediction.promises()) {
                needs.add(promised(prediction, promise));
            }
        }
        audit.figures()
                .ifPresent(
                        figures -> {
                            double dba = figures.load().levelDba();
                            addNoise(needs, brief.noise().mustDba(), true, dba);
                            addNoise(needs, brief.noise().wishDba(), false, dba);
                        });
        addCapacity(needs, "memory", brief.memory().atLeastGb(), audit.build().memoryGb());
        addCapacity(needs, "storage", brief.storage().atLeastGb(), storageGb(audit));
        return needs;
    }

    private static NeedLine promised(Prediction prediction, Promise promise) {
        String measure = promise.measure().word();
        return new NeedLine(
                promise.use() + ": " + measure,
                Phrase.joined(
                        ", ",
                        List.of(
                                prediction.workload().title(),
                                Phrase.of(
                                        "measure.word."
                                                + promise.measure()
                                                        .name()
                                                        .toLowerCase(Locale.ROOT)))),
                promise.must(),
                Rounded.to(1, promise.promised()),
                Rounded.to(1, promise.low()),
                Rounded.to(1, promise.high()),
                Rounded.asAsked(promise.required()),
                promise.measure().unit().symbol(),
                promise.measure() == Promise.Measure.FINISH,
                OptionalDouble.of(promise.chance()),
                promise.met());
    }

    private static void addNoise(
            List<NeedLine> needs, OptionalInt asked, boolean must, double levelDba) {
        if (asked.isPresent()) {
            needs.add(
                    new NeedLine(
                            "noise",
                            Phrase.of("need.title.noise"),
                            must,
                            Rounded.to(1, levelDba),
                            Optional.empty(),
                            Optional.empty(),
                            BigDecimal.valueOf(asked.getAsInt()),
                            "dB(A)",
                            true,
                            OptionalDouble.empty(),
                            Math.round(levelDba * 100) <= asked.getAsInt() * 100L));
        }
    }

    private static void addCapacity(
            List<NeedLine> needs, String need, int atLeastGb, int promisedGb) {
        if (atLeastGb > 0) {
            boolean met = promisedGb >= atLeastGb;
            Optional<BigDecimal> exact = Optional.of(BigDecimal.valueOf(promisedGb));
            needs.add(
                    new NeedLine(
                            need,
                            Phrase.of("need.title." + need),
                            true,
                            exact,
                            exact,
                            exact,
                            BigDecimal.valueOf(atLeastGb),
                            "GB",
                            false,
                            OptionalDouble.of(met ? 1 : 0),
                            met));
        }
    }

    private static int storageGb(Audit audit) {
        int storageGb = 0;
        for (Drive drive : audit.build().drives()) {
            storageGb += drive.capacityGb();
        }
        return storageGb;
    }

    /** "must" or "wish". */
    String kind() {
        return must ? "must" : "wish";
    }
}
