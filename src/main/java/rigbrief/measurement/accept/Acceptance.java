package rigbrief.measurement.accept;

import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.measurement.accept.JudgedLine.Verdict;

/**
 * What an acceptance test came to.
 *
 * @param brief the brief the machine was promised for
 * @param lines all lines of the sheet, judged
 * @param causes what may be the matter, likeliest first; none where nothing is
 */
public record Acceptance(Brief brief, List<JudgedLine> lines, List<RankedCause> causes) {
    public Acceptance {
        lines = List.copyOf(lines);
        causes = List.copyOf(causes);
    }

    /** How many lines came to a verdict. */
    public long count(Verdict verdict) {
        return lines.stream().filter(line -> line.verdict() == verdict).count();
    }

    /** Whether no promise is broken. */
    public boolean kept() {
        return count(Verdict.FAIL) == 0;
    }
}
