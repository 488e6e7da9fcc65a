package rigbrief.rule.fit;

import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Fact;
import rigbrief.part.Part;
import rigbrief.part.PcCase;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.part.SupplyForm;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/** The case lists the supply's body; no adapter frames. */
public final class SupplyFormRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "supply-form",
                    "Supply's body fits the case",
                    Unit.CONDITION,
                    Source.makersSheet("case, supply bodies"));
    private static final Set<Slot> READS = Reads.of(Slot.SUPPLY, Slot.CASE);

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
        return slot == Slot.SUPPLY ? ((Supply) part).form() : ((PcCase) part).supplies();
    }

    @Override
    public Finding check(Assessment it) {
        PcCase pcCase = it.build().pcCase();
        Supply supply = it.build().supply();
        if (!(pcCase.supplies() instanceof Fact.Stated<List<SupplyForm>> stated)) {
            return Finding.unknown(pcCase.supplies());
        }
        return Finding.require(
                stated.value().contains(supply.form()),
                () ->
                        Phrase.of(
                                "finding.supply-form",
                                pcCase.name(),
                                Phrase.of("standard." + supply.form().word()),
                                supply.name()));
    }
}
