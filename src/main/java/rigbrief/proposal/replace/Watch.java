package rigbrief.proposal.replace;

import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * A filed build set against a newer catalogue.
 *
 * @param filed the build as it was filed
 * @param brief its brief
 * @param today the newer catalogue
 * @param lines one per filled slot, in slot order
 * @param repair what has to change already, since parts can't be had any more; empty when nothing
 *     has to
 * @param plannedMinor what everything was to cost as filed, all in, in minor units
 * @param todayMinor what it costs with today's prices, in minor units; empty when it can't be had
 * @param remarks what else to tell
 */
public record Watch(
        BuildRecord filed,
        Brief brief,
        Catalogue today,
        List<Line> lines,
        Optional<Replacement> repair,
        long plannedMinor,
        Optional<Long> todayMinor,
        List<String> remarks) {
    public Watch {
        lines = List.copyOf(lines);
        remarks = List.copyOf(remarks);
    }

    /** What may go wrong with a part that is still to be bought. */
    public enum Risk {
        GONE("gone", 0),
        NO_FALLBACK("nothing takes its place", 5),
        LOW_STOCK("low stock", 3),
        SINGLE_OFFER("single offer", 2),
        LONG_LEAD("long lead", 2),
        DEARER("dearer", 1),
        CHEAPER("cheaper", 0);

        private final String word;
        private final int urgency;

        Risk(String word, int urgency) {
            this.word = word;
            this.urgency = urgency;
        }

        /** In words. */
        public String word() {
            return word;
        }

        int urgency() {
            return urgency;
        }
    }

    /**
     * One part.
     *
     * @param slot where it goes
     * @param part the part
     * @param pieces packs per machine
     * @param toBuy packs for all machines that are still to be bought; nothing is at risk at 0
     * @param plannedMinor planned price of one pack, in minor units
     * @param nowMinor least price of one pack today, in minor units; empty when it can't be had
     * @param suppliers how many suppliers can deliver all of them
     * @param stock most packs that one supplier has
     * @param leadDays shortest lead among those that can deliver, in days
     * @param risks what may go wrong, most serious first
     * @param fallback what takes its place if it sells out; empty when nothing is to be bought,
     *     when it is gone already, or when nothing can
     */
    public record Line(
            Slot slot,
            Part part,
            int pieces,
            int toBuy,
            long plannedMinor,
            Optional<Long> nowMinor,
            int suppliers,
            int stock,
            int leadDays,
            List<Risk> risks,
            Optional<Way> fallback) {
        public Line {
            risks = List.copyOf(risks);
        }

        /** How much it matters to order it early; 0 for no reason to hurry. */
        public int urgency() {
            int urgency = 0;
            for (Risk risk : risks) {
                urgency += risk.urgency();
            }
            return risks.contains(Risk.GONE) ? 0 : urgency;
        }
    }

    /** What to order first, most urgent first; only what there is a reason to hurry for. */
    public List<Line> orderFirst() {
        return lines.stream()
                .filter(line -> line.urgency() > Risk.DEARER.urgency())
                .sorted(
                        java.util.Comparator.comparingInt((Line line) -> -line.urgency())
                                .thenComparingInt(line -> -line.leadDays())
                                .thenComparing(Line::slot))
                .toList();
    }

    /** Whether a part is gone and nothing takes its place. */
    public boolean fails() {
        return repair.filter(Replacement::impossible).isPresent();
    }
}
