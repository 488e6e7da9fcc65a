package rigbrief.measurement.accept;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.measurement.Measurement;

/** Takes a machine over: makes its sheet, and judges what was measured. */
public final class Acceptor {
    private final Assessment it;
    private final Sheet sheet;

    /**
     * An acceptor for a whole build under a brief.
     *
     * @throws IllegalStateException when a required part is missing
     */
    public Acceptor(Brief brief, Catalogue catalogue, Build build) {
        this.it = new Assessor(brief, catalogue).assess(build);
        this.sheet = SheetMaker.of(it);
    }

    /** The sheet to fill in. */
    public Sheet sheet() {
        return sheet;
    }

    /**
     * Judges what was measured.
     *
     * @param readings figures by line, each line of the sheet at most once
     * @param measurements speeds measured at settings of their own; those of the brief fill the
     *     sheet's lines, others add lines without a promise
     */
    public Acceptance judge(List<Reading> readings, List<Measurement> measurements) {
        Map<String, Double> measured = new LinkedHashMap<>();
        SpeedLines speed = SpeedLines.of(it);
        List<SheetLine> lines = new ArrayList<>(sheet.lines());
        new OwnMeasurements(it, speed, lines, measured).add(measurements);
        readings.forEach(reading -> measured.put(reading.line(), reading.figure()));
        List<JudgedLine> judged = Judge.judge(lines, measured);
        return new Acceptance(it.brief(), judged, causes(judged, speed));
    }

    private List<RankedCause> causes(List<JudgedLine> judged, SpeedLines speed) {
        Clues clues = new Clues(judged, List.copyOf(speed.trials().values()));
        return judged.stream().anyMatch(line -> line.worse() && Clues.speaks(line.line()))
                ? new Diagnosis(clues).rank(Hypotheses.of(it, Judge.warmerK(judged)))
                : List.of();
    }
}
