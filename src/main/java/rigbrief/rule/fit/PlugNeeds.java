package rigbrief.rule.fit;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;
import rigbrief.part.Drive;
import rigbrief.part.FanConnector;
import rigbrief.part.Graphics;
import rigbrief.part.Plug;
import rigbrief.part.Slot;
import rigbrief.part.Tally;
import rigbrief.wording.Phrase;

/**
 * How many plugs of each sort a build lacks.
 *
 * <p>Common practice: an EPS8 plug parts into two EPS4 ones and feeds an EPS4 socket; an 8-pin plug
 * for cards leaves two pins off and feeds a 6-pin socket. No splitters and no adapters: one cable
 * per socket.
 *
 * @param mains main board plugs lacking
 * @param processor plugs lacking beside the socket
 * @param card 8-pin and 6-pin plugs lacking
 * @param card16 12V-2x6 plugs lacking
 * @param sata SATA power plugs lacking
 * @param peripheral 4-pin plugs lacking
 */
record PlugNeeds(int mains, int processor, int card, int card16, int sata, int peripheral) {
    /**
     * What a supply with these plugs lacks for a build; a socket count that is not stated counts
     * none.
     */
    static PlugNeeds of(Build build, Tally<Plug> have) {
        Tally<Plug> board = build.board().processorPlugs().or(Tally.none());
        Tally<Plug> card =
                build.has(Slot.GRAPHICS) ? build.graphics().plugs().or(Tally.none()) : Tally.none();
        return new PlugNeeds(
                lacking(1, have.of(Plug.ATX24)),
                lacking(board, have, Plug.EPS8, Plug.EPS4),
                lacking(card, have, Plug.PCIE8, Plug.PCIE6),
                lacking(card.of(Plug.PCIE16), have.of(Plug.PCIE16)),
                lacking(sataDrives(build), have.of(Plug.SATA)),
                lacking(peripherals(build), have.of(Plug.PERIPHERAL4)));
    }

    /** Plugs lacking for a card alone. */
    static int cardLacks(Graphics card, Tally<Plug> have) {
        Tally<Plug> needed = card.plugs().or(Tally.none());
        return lacking(needed, have, Plug.PCIE8, Plug.PCIE6)
                + lacking(needed.of(Plug.PCIE16), have.of(Plug.PCIE16));
    }

    /** All plugs lacking. */
    int sum() {
        return mains + processor + card + card16 + sata + peripheral;
    }

    /** The plugs lacking by name. */
    Phrase words() {
        List<Phrase> words = new ArrayList<>();
        add(words, mains, "board");
        add(words, processor, "processor");
        add(words, card, "card");
        add(words, card16, "card16");
        add(words, sata, "sata");
        add(words, peripheral, "peripheral");
        return Phrase.of("finding.supply-connectors", Phrase.joined(", ", words));
    }

    private static void add(List<Phrase> words, int count, String name) {
        if (count > 0) {
            words.add(Phrase.of("finding.pieces", count, Phrase.of("finding.plug." + name)));
        }
    }

    private static int lacking(int need, int have) {
        return Math.max(0, need - have);
    }

    private static int lacking(Tally<Plug> need, Tally<Plug> have, Plug large, Plug small) {
        int largeLacking = lacking(need.of(large), have.of(large));
        int largeSpare = lacking(have.of(large), need.of(large));
        return largeLacking + lacking(need.of(small), have.of(small) + largeSpare);
    }

    private static int sataDrives(Build build) {
        return inBay(build, Slot.DRIVE) + inBay(build, Slot.SECOND_DRIVE);
    }

    private static int inBay(Build build, Slot slot) {
        return build.has(slot) && !((Drive) build.part(slot)).form().m2() ? 1 : 0;
    }

    private static int peripherals(Build build) {
        return build.has(Slot.FANS) && build.fan().connector() == FanConnector.PERIPHERAL4
                ? build.fanCount()
                : 0;
    }
}
