package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Board;
import rigbrief.part.Fact;
import rigbrief.part.FanConnector;
import rigbrief.part.Slot;
import rigbrief.quantity.Current;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The board feeds every case fan: one header each, or two on one header where its current allows.
 *
 * <p>Fans that come with the case are taken to plug into the board (common practice); radiator fans
 * hang on the cooler's own header, 4-pin peripheral fans on the supply. Sharing is a note where the
 * added fans' current is known to allow it, a caution where it isn't known, a breach where it is
 * too much.
 */
public final class FanHeadersRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "fan-headers",
                    "Board feeds every case fan",
                    Unit.PIECE,
                    Source.makersSheet("board, fan headers and their current; fan, current"));
    private static final Set<Slot> READS = Reads.of(Slot.BOARD, Slot.COOLER, Slot.CASE, Slot.FANS);

    private static final int FANS_PER_HEADER = 2;

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
        Board board = it.build().board();
        if (!(board.fanHeaders() instanceof Fact.Stated<Integer> headers)) {
            return Finding.unknown(board.fanHeaders());
        }
        int added = fed(it.build());
        int fans = included(it) + added;
        int beyond = fans - FANS_PER_HEADER * headers.value();
        if (beyond > 0) {
            return Finding.breach(
                    beyond, () -> Phrase.of("finding.fan-headers.many", fans, headers.value()));
        }
        int pairs = fans - headers.value();
        return pairs <= 0 ? Finding.MET : shared(it.build(), pairs, added);
    }

    /** Added fans that plug into the board. */
    private static int fed(Build build) {
        return build.has(Slot.FANS) && build.fan().connector() != FanConnector.PERIPHERAL4
                ? build.fanCount()
                : 0;
    }

    private static int included(Assessment it) {
        int count = 0;
        for (int i = 0; i < it.layout().includedFans().size(); i++) {
            count += it.layout().includedFans().get(i).count();
        }
        return count;
    }

    private static Finding shared(Build build, int pairs, int added) {
        Fact<Current> header = build.board().fanHeaderCurrent();
        if (!header.stated()) {
            return Finding.unknown(header);
        }
        if (FANS_PER_HEADER * pairs > added) {
            return Finding.caution(() -> Phrase.of("finding.fan-headers.unstated", pairs));
        }
        Fact<Current> fan = build.fan().current();
        return fan.stated() ? judged(pairs, fan, header) : Finding.unknown(fan);
    }

    private static Finding judged(int pairs, Fact<Current> fan, Fact<Current> header) {
        int eachMa = fan.or(Current.ma(0)).milliamperes();
        int headerMa = header.or(Current.ma(0)).milliamperes();
        if (FANS_PER_HEADER * eachMa > headerMa) {
            return Finding.breach(
                    pairs, () -> Phrase.of("finding.fan-headers.current", pairs, eachMa, headerMa));
        }
        return Finding.note(() -> Phrase.of("finding.fan-headers.split", pairs));
    }
}
