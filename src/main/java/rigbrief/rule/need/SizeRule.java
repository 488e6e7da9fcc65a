package rigbrief.rule.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief.SizeNeed;
import rigbrief.part.PcCase;
import rigbrief.part.Slot;
import rigbrief.quantity.Length;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Margin;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Measured;
import rigbrief.wording.Phrase;

/**
 * The case is no larger than the brief allows: volume, height, width and depth.
 *
 * <p>The excess adds tenths of a litre and millimetres that are too many; equality allowed. The
 * margin is that of the volume.
 */
public final class SizeRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo("size", "Case is small enough", Unit.DECILITRE, Source.brief("size"));
    private static final Set<Slot> READS = Reads.of(Slot.CASE);

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
        SizeNeed size = it.brief().size();
        PcCase pcCase = it.build().pcCase();
        long volume = pcCase.volumeDecilitres();
        OptionalInt allowed = size.atMostDecilitres();
        long excess = allowed.isEmpty() ? 0 : Math.max(0, volume - allowed.getAsInt());
        excess += overMm(pcCase.heightMm(), size.height());
        excess += overMm(pcCase.widthMm(), size.width());
        excess += overMm(pcCase.depthMm(), size.depth());
        Optional<Margin> margin =
                allowed.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new Margin(allowed.getAsInt(), volume, Unit.DECILITRE));
        return excess == 0
                ? new Finding.Met(margin)
                : new Finding.Breach(excess, () -> words(pcCase, size), margin);
    }

    private static int overMm(int mm, Optional<Length> allowed) {
        return allowed.isEmpty() ? 0 : Math.max(0, mm - allowed.get().millimetres());
    }

    private static Phrase words(PcCase pcCase, SizeNeed size) {
        List<Phrase> words = new ArrayList<>();
        size.atMostDecilitres()
                .ifPresent(
                        most ->
                                words.add(
                                        Phrase.of(
                                                "finding.size.volume",
                                                Measured.of(
                                                        pcCase.volumeDecilitres(), Unit.DECILITRE),
                                                Measured.of(most, Unit.DECILITRE))));
        add(words, "height", pcCase.heightMm(), size.height());
        add(words, "width", pcCase.widthMm(), size.width());
        add(words, "depth", pcCase.depthMm(), size.depth());
        return Phrase.joined(", ", words);
    }

    private static void add(List<Phrase> words, String name, int mm, Optional<Length> allowed) {
        allowed.ifPresent(
                most ->
                        words.add(
                                Phrase.of(
                                        "finding.size.length",
                                        Phrase.of("finding.size." + name),
                                        mm,
                                        most)));
    }
}
