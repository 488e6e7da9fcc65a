package rigbrief.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Kept;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.explain.Explainers;
import rigbrief.explain.Topic;
import rigbrief.file.BriefReader;
import rigbrief.file.BuildReader;
import rigbrief.file.CatalogueReader;
import rigbrief.file.cell.CellRow;
import rigbrief.file.cell.Column;
import rigbrief.file.cell.ColumnLister;
import rigbrief.file.cell.PartCells;
import rigbrief.file.cell.Row;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * A build for a scenario out of the sample catalogue, as it was proposed once; every change makes
 * another machine.
 *
 * <p>The lists were proposals at the time of writing. No search is run here: that they are sound is
 * asserted, not believed.
 */
record ProposedMachine(String name, Brief brief, Build build) {
    private static final Catalogue CATALOGUE = catalogue();

    /** An air cooler, added fans, a card without a bracket and a wireless card in a slot. */
    static final ProposedMachine POTTER =
            of(
                    "potter",
                    "merrowby-courante-6-n",
                    "skerrowby-cove-1644m",
                    "lathmere-plainbar-2x16-d5-5600-c46",
                    "garrowick-couplet-sorrel-280",
                    "slatecombe-chip-1-tb",
                    "wattlemarsh-weir-650",
                    "brackenfin-frond-92",
                    "coffermere-bin-40",
                    "brackenfin-leaf-120",
                    "hobbinfold-tether-6");

    /** All white behind clear glass, with a 12V-2x6 card in a case that brings no fans. */
    static final ProposedMachine WHITE_POTTER =
            of(
                    "potter",
                    "ostrel-damask-8",
                    "pellidor-curlew-1320mw-white",
                    "obbleton-ridge-white-2x16-d5-6000-c36",
                    "wychmoor-grove-lampwick-970-white",
                    "slatecombe-chip-1-tb",
                    "copperlode-motherlode-850",
                    "umberhythe-grand-atrium-white",
                    "hushmere-whisper-140-white x2",
                    "braidwick-plait-card-white");

    /** Twelve of them, each with a display, drawn by the processor. */
    static final ProposedMachine SCHOOL =
            of(
                    "school-workshop",
                    "ostrel-worsted-6-g",
                    "hobbinfold-plain-880m",
                    "lathmere-plainbar-2x16-d4-3200-c22",
                    "slatecombe-flint-500-gb",
                    "wattlemarsh-fen-500",
                    "hobbinfold-deskmate-m",
                    "brackenfin-leaf-120",
                    "glimmerhythe-pane-24");

    /** Around a case, a supply and a drive of the client's own. */
    static final ProposedMachine KEEPER =
            of(
                    "keeper",
                    "ostrel-brocade-6",
                    "hobbinfold-selvedge-1320-silver",
                    "lathmere-plainbar-2x16-d5-5600-c46",
                    "wychmoor-copse-lampwick-950");

    /** A liquid cooler, error-correcting memory, two screens and a licence. */
    static final ProposedMachine DRAWING_OFFICE =
            of(
                    "cad",
                    "merrowby-saraband-16",
                    "skerrowby-firth-1920w",
                    "tollgarth-plumb-1x32-d5-4800-c40-ecc x2",
                    "umberhythe-twin-lampwick-520",
                    "slatecombe-chip-2-tb",
                    "grindlewick-mainspring-750",
                    "galebourne-undertow-240-glow",
                    "eskerlund-skap-white",
                    "pennyroyal-hearthside-7-workshop");

    /** A disk in a bay beside the drive on the board, and a port wanted on the front. */
    static final ProposedMachine EDITOR =
            of(
                    "editor",
                    "merrowby-saraband-12",
                    "quernstow-lintel-1920",
                    "lathmere-plainbar-2x32-d5-5600-c46",
                    "garrowick-couplet-sorrel-260-white",
                    "murmurel-cataract-1-tb",
                    "obbleton-millstone-4-tb",
                    "grindlewick-mainspring-850",
                    "hushmere-tor-white",
                    "coffermere-bin-44",
                    "pennyroyal-hearthside-7-office");

    /** Small: Mini-ITX, SFX, a closed side and a limit to its volume. */
    static final ProposedMachine LIVING_ROOM =
            of(
                    "living-room",
                    "merrowby-courante-4-n",
                    "hobbinfold-hem-1644iw",
                    "obbleton-ridge-2x8-d5-5200-c40",
                    "umberhythe-twin-lampwick-930",
                    "kelpstead-raft-1-tb",
                    "hobbinfold-stitch-450",
                    "panniford-satchel-mesh",
                    "brackenfin-leaf-120");

    /** All of them. */
    static final List<ProposedMachine> ALL =
            List.of(POTTER, WHITE_POTTER, SCHOOL, KEEPER, DRAWING_OFFICE, EDITOR, LIVING_ROOM);

    /** A change to a draft of the brief, which may look at the brief as it was. */
    @FunctionalInterface
    interface Request {
        void put(BriefDraft draft, Brief was);
    }

    /** The audit of the build under the brief. */
    Audit audit() {
        return new Auditor(brief, CATALOGUE).audit(build);
    }

    /** What can be explained of it. */
    List<Topic> topics() {
        return Explainers.topics(brief, CATALOGUE, build);
    }

    /** The same with one cell of a part written otherwise; everything else of its row stays. */
    ProposedMachine cell(Slot slot, String column, String text) {
        Part part = build.part(slot);
        assertThat(ColumnLister.of(part.kind())).extracting(Column::name).contains(column);
        Map<String, String> cells = new LinkedHashMap<>(PartCells.of(part));
        String before = cells.put(column, text);
        assertThat(text).as("%s of %s", column, part.id()).isNotEqualTo(before);
        String id = column.equals("id") ? text : part.id();
        Part changed = part.kind().read(CellRow.named(id, new Rewritten(cells)));
        return with(build.with(slot, changed, build.pieces(slot)));
    }

    /** The same with another part of the catalogue in a slot. */
    ProposedMachine put(Slot slot, String id) {
        Part part = CATALOGUE.part(id).orElseThrow();
        return with(build.with(slot, part, 1));
    }

    /** The same with a number of packs in a slot. */
    ProposedMachine pieces(Slot slot, int count) {
        return with(build.with(slot, build.part(slot), count));
    }

    /** The same with an empty slot that was filled. */
    ProposedMachine without(Slot slot) {
        assertThat(build.has(slot)).as("slot %s filled", slot.word()).isTrue();
        return with(build.without(slot));
    }

    /** The same build under another brief. */
    ProposedMachine asked(Request request) {
        BriefDraft draft = new BriefDraft(brief);
        request.put(draft, brief);
        return new ProposedMachine(name, draft.toBrief(), build);
    }

    @Override
    public String toString() {
        return name + ": " + build.part(Slot.PROCESSOR).id();
    }

    private ProposedMachine with(Build changed) {
        return new ProposedMachine(name, brief, changed);
    }

    private static ProposedMachine of(String scenario, String... ids) {
        try {
            Brief brief = BriefReader.read(Path.of("scenarios", scenario + ".yaml"), CATALOGUE);
            byte[] list = String.join("\n", ids).getBytes(StandardCharsets.UTF_8);
            Build build =
                    BuildReader.read(new ByteArrayInputStream(list), scenario, CATALOGUE).build();
            for (Kept kept : brief.keep()) {
                build = build.with(kept.slot(), kept.part(), kept.pieces());
            }
            return new ProposedMachine(scenario, brief, build);
        } catch (BadInput bad) {
            throw new IllegalStateException(bad);
        }
    }

    private static Catalogue catalogue() {
        try {
            return CatalogueReader.read(Path.of("catalog-sample"));
        } catch (BadInput bad) {
            throw new IllegalStateException(bad);
        }
    }

    /** The cells of a part's row; a text that no file could hold fails the test. */
    private record Rewritten(Map<String, String> cells) implements Row {
        @Override
        public String cell(String column) {
            return cells.getOrDefault(column, "");
        }

        @Override
        public void fault(String column, String found, String expected, String advice) {
            fail("%s: found %s, expected %s; %s", column, found, expected, advice);
        }

        @Override
        public String leaveOut() {
            return "leave the cell empty";
        }

        @Override
        public boolean knows(String column) {
            return true;
        }
    }
}
