package rigbrief.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.model.link.DisplayTiming;
import rigbrief.model.link.LinkResult;
import rigbrief.model.link.LinkStandard;
import rigbrief.model.link.TelevisionTiming;
import rigbrief.model.memory.SataLink;
import rigbrief.model.pcie.AuxiliaryConnector;
import rigbrief.model.pcie.CardPower;
import rigbrief.part.Bus;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Plug;
import rigbrief.part.Slot;
import rigbrief.part.Tally;
import rigbrief.rule.fit.DisplayLinkRule;
import rigbrief.rule.fit.ScreenLink;
import rigbrief.wording.Phrase;

/**
 * Cautions where a data sheet, or a screen's own ways, may not agree with a standard.
 *
 * <p>No rule: a search never asks it, and it breaks nothing.
 */
public final class StandardsCheck {
    /** What these cautions stand under, in the place of a rule's id. */
    public static final String ID = "standards";

    private static final String TITLE = "Data sheets and screens agree with their standards";
    private static final int NEWEST_SATA = 3;
    private static final long MEGA = 1_000_000;
    private static final int COLOURS = 3;

    private final Assessment it;
    private final List<AuditFinding> cautions = new ArrayList<>();

    private StandardsCheck(Assessment it) {
        this.it = it;
    }

    /** The cautions on a finished build, in a fixed order; usually none. */
    public static List<AuditFinding> of(Assessment it) {
        StandardsCheck check = new StandardsCheck(it);
        check.card();
        check.drive(Slot.DRIVE);
        check.drive(Slot.SECOND_DRIVE);
        check.television();
        return List.copyOf(check.cautions);
    }

    /** A card that draws more than its slot and plugs may give has a wrong sheet. */
    private void card() {
        if (!it.build().has(Slot.GRAPHICS) || !it.build().graphics().plugs().stated()) {
            return;
        }
        Graphics card = it.build().graphics();
        Tally<Plug> plugs = card.plugs().or(Tally.none());
        List<AuxiliaryConnector> connectors = new ArrayList<>();
        for (Plug plug : plugs.counts().keySet()) {
            AuxiliaryConnector.find(plug.word())
                    .map(connector -> Collections.nCopies(plugs.of(plug), connector))
                    .ifPresent(connectors::addAll);
        }
        int availableW = CardPower.availableW(CardPower.SLOT_X16_W, connectors);
        if (CardPower.shortfallW(card.boardPowerW(), availableW) > 0) {
            add(
                    Phrase.of("standards.card", card.name(), card.boardPowerW(), availableW),
                    "PCI Express card specification (slot); ATX 3.0 design guide, document 336521,"
                            + " page 26 (plugs)",
                    card.id());
        }
    }

    /** A drive quicker than its link has the sheet of another drive, or reads its cache. */
    private void drive(Slot slot) {
        if (!it.build().has(slot)) {
            return;
        }
        Drive drive = (Drive) it.build().part(slot);
        long mostMbs = SataLink.bytesPerSecond(NEWEST_SATA) / MEGA;
        int fastestMbs = Math.max(drive.readMbs(), drive.writeMbs());
        if (drive.bus() == Bus.SATA && fastestMbs > mostMbs) {
            add(
                    Phrase.of("standards.sata", drive.name(), fastestMbs, mostMbs),
                    "Serial ATA 3, 6 Gbit/s with 8b/10b coding",
                    drive.id());
        }
    }

    /** A picture that fits with reduced blanking alone may not fit as a television times it. */
    private void television() {
        new DisplayLinkRule().link(it).ifPresent(this::television);
    }

    private void television(ScreenLink link) {
        LinkResult result = link.result();
        Optional<DisplayTiming> timing =
                TelevisionTiming.find(
                        link.resolution().widthPx(),
                        link.resolution().heightPx(),
                        link.refreshHz());
        boolean asked =
                result.carried() == LinkResult.Carried.UNCOMPRESSED
                        && result.standard()
                                .filter(it -> it.family() == LinkStandard.Family.HDMI)
                                .isPresent();
        if (!asked || timing.isEmpty()) {
            return;
        }
        long neededBits = timing.get().bitsPerSecond(COLOURS * link.bitsPerColour());
        if (neededBits > result.availableBitsPerSecond()) {
            add(
                    Phrase.of(
                            "standards.television",
                            link.resolution(),
                            link.refreshHz(),
                            neededBits / MEGA,
                            result.availableBitsPerSecond() / MEGA),
                    "CTA-861 (totals from memory)");
        }
    }

    private void add(Phrase phrase, String source, String... parts) {
        cautions.add(AuditFinding.caution(ID, TITLE, phrase, source, List.of(parts)));
    }
}
