package rigbrief.rule.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Board;
import rigbrief.part.Fact;
import rigbrief.part.FrontPort;
import rigbrief.part.Part;
import rigbrief.part.PcCase;
import rigbrief.part.Slot;
import rigbrief.part.Tally;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The ports on the case front that the brief asks for are there and have a board header.
 *
 * <p>A port of the case without a header is a caution; one that the brief needs is a breach. The
 * excess counts the wanted ports that lack.
 */
public final class FrontPortsRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "front-ports",
                    "Front ports work",
                    Unit.PIECE,
                    Source.makersSheet("case, front ports; board, headers for them"));
    private static final Set<Slot> READS = Reads.of(Slot.BOARD, Slot.CASE);

    private static final FrontPort[] PORTS = FrontPort.values();

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
        return slot == Slot.BOARD ? ((Board) part).frontPorts() : ((PcCase) part).frontPorts();
    }

    @Override
    public Finding check(Assessment it) {
        Fact<Tally<FrontPort>> ports = it.build().pcCase().frontPorts();
        Fact<Tally<FrontPort>> headers = it.build().board().frontPorts();
        if (!ports.stated() || !headers.stated()) {
            return Finding.unknown(ports.stated() ? headers : ports);
        }
        return judged(it, ports.or(Tally.none()), headers.or(Tally.none()));
    }

    private static Finding judged(Assessment it, Tally<FrontPort> ports, Tally<FrontPort> headers) {
        int lacking = 0;
        boolean dead = false;
        for (FrontPort port : PORTS) {
            int working = Math.min(ports.of(port), headers.of(port));
            lacking += Math.max(0, wanted(it, port) - working);
            dead |= working < ports.of(port);
        }
        if (lacking > 0) {
            return Finding.breach(lacking, () -> words(it, ports, headers));
        }
        return dead ? Finding.caution(() -> words(it, ports, headers)) : Finding.MET;
    }

    private static int wanted(Assessment it, FrontPort port) {
        List<FrontPort> wanted = it.brief().frontPorts();
        int count = 0;
        for (int i = 0; i < wanted.size(); i++) {
            count += wanted.get(i) == port ? 1 : 0;
        }
        return count;
    }

    private static Phrase words(Assessment it, Tally<FrontPort> ports, Tally<FrontPort> headers) {
        List<Phrase> words = new ArrayList<>();
        for (FrontPort port : PORTS) {
            if (headers.of(port) < ports.of(port) || wanted(it, port) > ports.of(port)) {
                words.add(words(it, port, ports.of(port), headers.of(port)));
            }
        }
        return Phrase.joined("; ", words);
    }

    /** Nobody asked for a port that stays dead. */
    private static Phrase words(Assessment it, FrontPort port, int onCase, int fed) {
        Phrase name = Phrase.of("port.name." + port.word());
        int wanted = wanted(it, port);
        return wanted == 0
                ? Phrase.of("finding.front-ports.dead", name, onCase, fed)
                : Phrase.of("finding.front-ports", name, wanted, onCase, fed);
    }
}
