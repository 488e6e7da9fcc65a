package rigbrief.rule.need;

import java.util.Set;
import java.util.StringJoiner;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief.Strength;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Owned;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.rule.fit.BraceRule;

/**
 * Nothing is bought that does nothing for this brief; the excess counts such parts.
 *
 * <p>Idle: a wireless card that no need asks for, or beside a board that meets the need itself; a
 * licence nobody wants; a brace without a card, beside the case's own bracket, or for a card known
 * to carry itself. The client's own parts pass.
 */
public final class IdlePartRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "idle-part",
                    "Nothing is bought that does nothing",
                    Unit.PIECE,
                    Source.commonPractice("a part without a use is money and trouble"));
    private static final Set<Slot> READS =
            Reads.of(Slot.BOARD, Slot.GRAPHICS, Slot.CASE, Slot.WIRELESS, Slot.BRACE, Slot.SYSTEM);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    @Override
    public Finding check(Assessment it) {
        boolean wireless = bought(it, Slot.WIRELESS) && idleWireless(it);
        boolean brace = bought(it, Slot.BRACE) && idleBrace(it.build());
        boolean licence =
                bought(it, Slot.SYSTEM) && it.brief().system().strength() == Strength.NONE;
        int idle = (wireless ? 1 : 0) + (brace ? 1 : 0) + (licence ? 1 : 0);
        return Finding.unlessZero(idle, () -> words(it, wireless, brace, licence));
    }

    private static boolean bought(Assessment it, Slot slot) {
        return it.build().has(slot) && !Owned.in(it, slot);
    }

    private static boolean idleWireless(Assessment it) {
        return it.brief().wireless().strength() == Strength.NONE
                || it.build().board().wireless().ordinal()
                        >= WirelessRule.least(it.brief()).ordinal();
    }

    private static boolean idleBrace(Build build) {
        return !build.has(Slot.GRAPHICS)
                || build.pcCase().cardBracket()
                || BraceRule.carriesItself(build.graphics());
    }

    private static String words(Assessment it, boolean wireless, boolean brace, boolean licence) {
        StringJoiner words = new StringJoiner(", ", "without a use: ", "");
        add(words, it, Slot.WIRELESS, wireless);
        add(words, it, Slot.BRACE, brace);
        add(words, it, Slot.SYSTEM, licence);
        return words.toString();
    }

    private static void add(StringJoiner words, Assessment it, Slot slot, boolean idle) {
        if (idle) {
            words.add(it.build().part(slot).name());
        }
    }
}
