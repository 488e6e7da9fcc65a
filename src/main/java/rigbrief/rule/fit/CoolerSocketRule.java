package rigbrief.rule.fit;

import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Cooler;
import rigbrief.part.Fact;
import rigbrief.part.Part;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/** The cooler has a bracket for the processor's socket. */
public final class CoolerSocketRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "cooler-socket",
                    "Cooler has a bracket for the socket",
                    Unit.CONDITION,
                    Source.makersSheet("cooler, sockets"));
    private static final Set<Slot> READS = Reads.of(Slot.PROCESSOR, Slot.COOLER);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    @Override
    public Object asks(Slot slot, Part part) {
        return slot == Slot.PROCESSOR ? ((Processor) part).socket() : ((Cooler) part).sockets();
    }

    @Override
    public Finding check(Assessment it) {
        if (!it.build().has(Slot.COOLER)) {
            return Finding.MET;
        }
        Cooler cooler = it.build().cooler();
        String socket = it.build().processor().socket();
        if (!(cooler.sockets() instanceof Fact.Stated<List<String>> stated)) {
            return Finding.unknown(cooler.sockets());
        }
        return Finding.require(
                stated.value().contains(socket),
                () -> Phrase.of("finding.cooler-socket", cooler.name(), socket));
    }
}
