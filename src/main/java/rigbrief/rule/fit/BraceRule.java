package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Fact;
import rigbrief.part.Graphics;
import rigbrief.part.Slot;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * A heavy or long graphics card is carried by a brace or by the case's own bracket; else a caution.
 *
 * <p>Heavy: over {@value #HEAVY_G} g. Long: over {@value #LONG_MM} mm.
 */
public final class BraceRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "brace",
                    "A heavy card is carried",
                    Unit.GRAM,
                    Source.commonPractice(
                            "beyond 1.5 kg or 320 mm a card pulls visibly at its slot, in transport most of all"));
    private static final Set<Slot> READS = Reads.of(Slot.GRAPHICS, Slot.CASE, Slot.BRACE);

    /** Cards over this mass in g want carrying. */
    public static final int HEAVY_G = 1_500;

    /** Cards over this length in mm want carrying. */
    public static final int LONG_MM = 320;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** Whether a card is known to be light and short enough to carry itself. */
    public static boolean carriesItself(Graphics card) {
        return card.listing().mass().stated() && card.length().stated() && !wantsCarrying(card);
    }

    private static boolean wantsCarrying(Graphics card) {
        return card.listing().mass() instanceof Fact.Stated<Mass> mass
                        && mass.value().grams() > HEAVY_G
                || card.length() instanceof Fact.Stated<Length> length
                        && length.value().millimetres() > LONG_MM;
    }

    @Override
    public Finding check(Assessment it) {
        Build build = it.build();
        if (!build.has(Slot.GRAPHICS) || build.pcCase().cardBracket()) {
            return Finding.MET;
        }
        if (build.has(Slot.BRACE)) {
            return braced(build);
        }
        Graphics card = build.graphics();
        if (wantsCarrying(card)) {
            return Finding.caution(() -> Phrase.of("finding.brace.add", words(card)));
        }
        if (!card.listing().mass().stated()) {
            return Finding.unknown(card.listing().mass());
        }
        return card.length().stated() ? Finding.MET : Finding.unknown(card.length());
    }

    private static Finding braced(Build build) {
        Fact<Mass> mass = build.graphics().listing().mass();
        Fact<Mass> most = build.brace().maxMass();
        if (!mass.stated() || !most.stated()) {
            return Finding.unknown(mass.stated() ? most : mass);
        }
        return mass.or(Mass.g(0)).grams() <= most.or(Mass.g(0)).grams()
                ? Finding.MET
                : Finding.caution(
                        () ->
                                Phrase.of(
                                        "finding.brace.carries",
                                        build.brace().name(),
                                        most.or(Mass.g(0)),
                                        mass.or(Mass.g(0))));
    }

    private static Phrase words(Graphics card) {
        return Phrase.of(
                "finding.brace.heavy",
                card.listing().mass().<Object>map(each -> each).or(Phrase.of("finding.brace.mass")),
                card.length().<Object>map(each -> each).or(Phrase.of("finding.brace.length")));
    }
}
