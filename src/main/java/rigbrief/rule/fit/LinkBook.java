package rigbrief.rule.fit;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import rigbrief.model.link.DisplayLink;
import rigbrief.model.link.LinkResult;
import rigbrief.model.link.LinkStandard;
import rigbrief.part.Port;
import rigbrief.part.Resolution;

/**
 * Remembers which pair of ports carries which mode, because a search asks the same few questions
 * without end.
 *
 * <p>Safe for several threads; holds one entry per pair of standards and mode, and begins anew when
 * a program has asked for more modes than there are screens.
 */
final class LinkBook {
    /** Far beyond any link, and just within what the timing formulas take. */
    private static final double MOST_MODE_HZ = 2_000;

    private static final int MOST_ANSWERS = 10_000;

    private final Map<Question, LinkResult> answers = new ConcurrentHashMap<>();

    /**
     * A picture to be carried.
     *
     * @param resolution picture size
     * @param refreshHz refresh rate in Hz
     * @param bitsPerColour bits per colour
     */
    record Mode(Resolution resolution, int refreshHz, int bitsPerColour) {}

    private record Question(String output, String input, Mode mode) {}

    /** How the best of the inputs takes the mode from an output. */
    LinkResult best(Port output, List<Port> inputs, Mode mode) {
        LinkResult best = carries(output, inputs.get(0), mode);
        for (int i = 1; i < inputs.size(); i++) {
            LinkResult next = carries(output, inputs.get(i), mode);
            if (rank(next) < rank(best)) {
                best = next;
            }
        }
        return best;
    }

    /** Whole megabits a second that a link lacks, rounded up; 0 when the mode fits. */
    static long lackingMbit(LinkResult result) {
        long bits = result.requiredBitsPerSecond() - result.availableBitsPerSecond();
        return result.fits() ? 0 : Math.max(1, (bits + 999_999) / 1_000_000);
    }

    /** Less is better: uncompressed, compressed, then by what lacks. */
    static long rank(LinkResult result) {
        return result.carried() == LinkResult.Carried.UNCOMPRESSED ? 0 : 1 + lackingMbit(result);
    }

    private LinkResult carries(Port output, Port input, Mode mode) {
        Question question = new Question(output.standard(), input.standard(), mode);
        LinkResult known = answers.get(question);
        if (known != null) {
            return known;
        }
        LinkResult found =
                DisplayLink.carries(
                        LinkStandard.of(output.standard()),
                        LinkStandard.of(input.standard()),
                        mode.resolution().widthPx(),
                        mode.resolution().heightPx(),
                        Math.min(mode.refreshHz(), MOST_MODE_HZ),
                        mode.bitsPerColour());
        if (answers.size() >= MOST_ANSWERS) {
            answers.clear();
        }
        answers.put(question, found);
        return found;
    }
}
