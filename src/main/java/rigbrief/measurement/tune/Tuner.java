package rigbrief.measurement.tune;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.assess.Demand.Use;
import rigbrief.assess.MachineRates;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;

/** Tunes every frame-rate workload of a brief for a build. */
public final class Tuner {
    private Tuner() {}

    /**
     * Tunes a build.
     *
     * @param build the build; processor, board, memory and drive are filled
     * @param terms what the builder says beside the brief
     */
    public static Tuning tune(Brief brief, Catalogue catalogue, Build build, TuneTerms terms) {
        return tune(new Assessor(brief, catalogue).assess(build), terms);
    }

    private static Tuning tune(Assessment it, TuneTerms terms) {
        ScreenPace screen = ScreenPace.of(it.brief(), it.build(), terms.variableFromHz());
        MachineRates machine = MachineRates.of(it);
        List<TunedTitle> titles = new ArrayList<>();
        for (Use use : it.demand().uses()) {
            if (use.workload() instanceof FrameRate title) {
                titles.add(
                        new TitleTuner(it.brief(), use.need(), title, terms, screen).tune(machine));
            }
        }
        return new Tuning(it.brief(), terms, screen, titles);
    }
}
