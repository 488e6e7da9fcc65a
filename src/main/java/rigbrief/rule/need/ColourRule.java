package rigbrief.rule.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief.Looks;
import rigbrief.brief.Brief.Strength;
import rigbrief.build.Build;
import rigbrief.part.Colour;
import rigbrief.part.SidePanel;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * What shows is of the brief's colour, when the colour is a must.
 *
 * <p>What shows: the case; behind a side panel that isn't solid also board, memory, card, cooler,
 * fans and cables. The supply sits under its cover (common practice). A part with no stated colour
 * passes. The excess counts parts.
 */
public final class ColourRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "colour",
                    "What shows has the colour asked for",
                    Unit.PIECE,
                    Source.brief("looks, colour"));
    private static final Set<Slot> READS =
            Reads.of(
                    Slot.BOARD,
                    Slot.MEMORY,
                    Slot.GRAPHICS,
                    Slot.COOLER,
                    Slot.CASE,
                    Slot.FANS,
                    Slot.CABLES);

    private static final Slot[] INSIDE = {
        Slot.BOARD, Slot.MEMORY, Slot.GRAPHICS, Slot.COOLER, Slot.FANS, Slot.CABLES
    };

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    @Override
    public boolean decidesEarly() {
        return true;
    }

    @Override
    public Finding check(Assessment it) {
        Looks looks = it.brief().looks();
        if (looks.colourStrength() != Strength.MUST || looks.colour().isEmpty()) {
            return Finding.MET;
        }
        Colour colour = looks.colour().get();
        Build build = it.build();
        int others = other(build, Slot.CASE, colour) ? 1 : 0;
        if (insideShows(build)) {
            for (Slot slot : INSIDE) {
                others += other(build, slot, colour) ? 1 : 0;
            }
        }
        return Finding.unlessZero(others, () -> words(build, colour));
    }

    private static boolean insideShows(Build build) {
        return build.has(Slot.CASE) && build.pcCase().side() != SidePanel.SOLID;
    }

    private static boolean other(Build build, Slot slot, Colour colour) {
        return build.has(slot)
                && build.part(slot).listing().colour().isPresent()
                && build.part(slot).listing().colour().get() != colour;
    }

    private static Phrase words(Build build, Colour colour) {
        List<Object> words = new ArrayList<>();
        if (other(build, Slot.CASE, colour)) {
            words.add(build.pcCase().name());
        }
        for (Slot slot : INSIDE) {
            if (insideShows(build) && other(build, slot, colour)) {
                words.add(build.part(slot).name());
            }
        }
        return Phrase.of(
                "finding.colour", Phrase.of("colour." + colour.word()), Phrase.joined(", ", words));
    }
}
