package rigbrief.measurement.tune;

import java.util.List;
import rigbrief.brief.Brief;

/**
 * The settings of every title of a brief on one machine.
 *
 * @param brief the brief
 * @param terms what the builder said beside it
 * @param screen how the client's screen follows a frame rate
 * @param titles the titles, in the brief's order; none when it names none that draws frames
 */
public record Tuning(Brief brief, TuneTerms terms, ScreenPace screen, List<TunedTitle> titles) {
    public Tuning {
        titles = List.copyOf(titles);
    }
}
