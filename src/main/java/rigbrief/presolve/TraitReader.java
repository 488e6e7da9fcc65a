package rigbrief.presolve;

import java.util.List;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.Strength;
import rigbrief.catalogue.TaskTime;
import rigbrief.part.Board;
import rigbrief.part.Brace;
import rigbrief.part.Cables;
import rigbrief.part.Cooler;
import rigbrief.part.Drive;
import rigbrief.part.Fan;
import rigbrief.part.FrontPort;
import rigbrief.part.Memory;
import rigbrief.part.OperatingSystem;
import rigbrief.part.Part;
import rigbrief.part.PcCase;
import rigbrief.part.Plug;
import rigbrief.part.SidePanel;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.part.Wireless;

/**
 * Says for every kind which column is better in which direction: the one place where that is
 * declared.
 *
 * <p>Processors and cards are never dropped: a faster one makes the other work, and so draw, more.
 */
final class TraitReader {
    private final Brief brief;
    private final boolean tasks;
    private final double storageGb;
    private final double memoryGb;

    TraitReader(Assessor assessor) {
        this.brief = assessor.brief();
        this.tasks =
                assessor.demand().uses().stream()
                        .anyMatch(use -> use.workload() instanceof TaskTime);
        this.storageGb = assessor.demand().storageGb();
        this.memoryGb = Math.max(assessor.demand().memoryGb(), brief.memory().atLeastGb());
    }

    /** The traits of a filled candidate. */
    Traits read(Candidate candidate) {
        Part part = candidate.partOrNull();
        Traits traits = new Traits().alike(candidate.slot());
        traits.less(part.listing().lighting().ordinal());
        traits.alikeForGoals(part.listing().lighting());
        traits.alikeForGoals(part.listing().colour());
        traits.moreForGoals(part.listing().warrantyYears().orElse(0));
        if (colourMust()) {
            traits.alike(part.listing().colour());
        }
        if (brief.size().mass().isPresent()) {
            traits.less(part.listing().mass());
        }
        switch (part.kind()) {
            case PROCESSOR, GRAPHICS, DISPLAY -> traits.alike(part.id());
            case BOARD -> board((Board) part, traits);
            case MEMORY -> memory((Memory) part, candidate.pieces(), traits);
            case DRIVE -> drive((Drive) part, candidate.slot(), traits);
            case SUPPLY -> supply((Supply) part, traits);
            case COOLER -> cooler((Cooler) part, traits);
            case CASE -> pcCase((PcCase) part, traits);
            case FAN -> fan((Fan) part, candidate.pieces(), traits);
            case WIRELESS ->
                    traits.alike(((Wireless) part).place())
                            .more(((Wireless) part).standard().ordinal());
            case BRACE -> traits.alike(((Brace) part).form()).more(((Brace) part).maxMass());
            case CABLES -> traits.alikeForGoals(((Cables) part).covers());
            case SYSTEM -> system((OperatingSystem) part, traits);
        }
        return traits;
    }

    /** Behind a solid side no colour shows. */
    private boolean colourMust() {
        return brief.looks().colourStrength() == Strength.MUST;
    }

    private void system(OperatingSystem system, Traits traits) {
        traits.alike(system.requires()).alike(brief.system().part().isPresent() ? system.id() : "");
    }

    private static void board(Board board, Traits traits) {
        traits.alike(board.socket())
                .alike(board.families())
                .alike(board.shippedFirmware())
                .alike(board.form())
                .alike(board.memoryType())
                .alike(board.moduleForm())
                .alike(board.memorySlots())
                .alike(board.memoryMaxMts())
                .alike(board.slots())
                .alike(board.m2())
                .alike(board.shares())
                .alike(board.outputs())
                .alike(board.features())
                .alike(board.processorPlugs())
                .alike(board.lanGbps() > 0)
                .alike(board.fanHeaders().stated())
                .more(board.fanHeaders().or(0))
                .more(board.firmwareWithoutProcessor() ? 1 : 0)
                .more(board.memoryMaxGb())
                .more(board.processorPower())
                .more(board.sataPorts())
                .alike(board.wireless())
                .more(board.frontPorts(), FrontPort.values())
                .more(board.fanHeaderCurrent());
    }

    private void memory(Memory memory, int pieces, Traits traits) {
        int gb = memory.kitGb() * pieces;
        traits.alike(memory.type())
                .alike(memory.form())
                .alike(memory.modules() * pieces)
                .alike(memory.moduleGb())
                .alike(memory.mts())
                .more(memory.ecc() ? 1 : 0)
                .more(Math.min(gb, tasks ? gb : memoryGb))
                .less(memory.height());
    }

    private void drive(Drive drive, Slot slot, Traits traits) {
        traits.alike(drive.form())
                .alike(drive.bus())
                .more(Math.min(drive.capacityGb(), storageGb))
                .less(drive.dba())
                .moreForGoals(slot == Slot.DRIVE ? drive.enduranceTbw().or(0) : 0);
        if (tasks && slot == Slot.DRIVE) {
            // A quicker drive leaves processor and card less time to rest, so it is not better in
            // everything.
            traits.alike(drive.readMbs()).alike(drive.writeMbs());
        }
    }

    private void supply(Supply supply, Traits traits) {
        // More watts mean a smaller share of load, which is quieter only where load is heard.
        boolean louderWithLoad =
                supply.dba20() <= supply.dba50() && supply.dba50() <= supply.dba100();
        traits.alike(supply.form())
                .alike(louderWithLoad ? "" : supply.watts())
                .less(supply.length())
                .more(supply.watts())
                .more(supply.guide().ordinal())
                .more(supply.plugs(), Plug.values())
                .less(supply.dba20())
                .less(supply.dba50())
                .less(supply.dba100())
                .alikeForGoals(supply.efficiency())
                .alikeForGoals(brief.wishes().weight("energy") > 0 ? supply.watts() : 0);
    }

    private static void cooler(Cooler cooler, Traits traits) {
        // A thinner radiator goes to another side, where other fans have to make room for it.
        traits.alike(cooler.type())
                .alike(cooler.sockets())
                .less(cooler.height())
                .alike(cooler.radiatorMm())
                .alike(cooler.thickness())
                .less(cooler.resistanceKw())
                .alike(cooler.maxDba() > 0)
                .less(cooler.maxDba())
                .more(cooler.memoryClearance())
                .more(cooler.fanRaiseMm())
                .alike(cooler.fans());
    }

    private void pcCase(PcCase pcCase, Traits traits) {
        traits.alike(pcCase.boards())
                .more(pcCase.graphicsLength())
                .more(pcCase.graphicsHeight())
                .more(pcCase.expansionSlots())
                .more(pcCase.coolerHeight())
                .alike(pcCase.supplies())
                .more(pcCase.supplyLength())
                .more(pcCase.supplyLengthWithCage())
                .alike(pcCase.positions())
                .alike(pcCase.includedFans())
                .alike(List.of(pcCase.includedFanM3h(), pcCase.includedFanPa()))
                .less(pcCase.includedFanDba())
                .alike(pcCase.radiators())
                .more(pcCase.bays35())
                .more(pcCase.bays25())
                .alike(pcCase.frontPorts())
                .alike(brief.looks().side().isPresent() ? pcCase.side() : "")
                .more(colourMust() && pcCase.side() == SidePanel.SOLID ? 1 : 0)
                .more(pcCase.dampingDb())
                .less(pcCase.impedance())
                .more(pcCase.cardBracket() ? 1 : 0);
        Brief.SizeNeed size = brief.size();
        if (size.atMostDecilitres().isPresent()
                || size.height().isPresent()
                || size.width().isPresent()
                || size.depth().isPresent()) {
            traits.less(pcCase.volumeDecilitres())
                    .less(pcCase.heightMm())
                    .less(pcCase.widthMm())
                    .less(pcCase.depthMm());
        }
    }

    private static void fan(Fan fan, int pieces, Traits traits) {
        traits.alike(fan.sizeMm())
                .alike(fan.pack() * pieces)
                .alike(fan.connector())
                .alike(fan.current().stated())
                .less(fan.current())
                .more(fan.flowM3h())
                .more(fan.pressurePa())
                .less(fan.maxDba());
    }
}
