package rigbrief.assess;

import rigbrief.quantity.Unit;

/**
 * What is predicted for one asked-for figure of a workload, against what was asked.
 *
 * <p>A higher rate is better, a shorter task is better: {@link #met()} knows which.
 *
 * @param use id of the workload
 * @param measure which figure
 * @param must whether it is a must; else a wish
 * @param promised the middle prediction, in the measure's unit
 * @param low lower end of the range in which the measured value will lie with the brief's
 *     confidence
 * @param high upper end of that range
 * @param required what was asked
 * @param chance chance that a measurement meets what was asked, 0 to 1
 * @param sure what holds with the brief's confidence, one-sided: a rate at least, a time at most
 */
public record Promise(
        String use,
        Measure measure,
        boolean must,
        double promised,
        double low,
        double high,
        double required,
        double chance,
        double sure) {
    /** Which figure of a workload is promised. */
    public enum Measure {
        AVERAGE("average", Unit.CENTIFRAME),
        LOW("1 % low", Unit.CENTIFRAME),
        FINISH("finish-within", Unit.CENTISECOND);

        private final String word;
        private final Unit unit;

        Measure(String word, Unit unit) {
            this.word = word;
            this.unit = unit;
        }

        /** Its name on screens. */
        public String word() {
            return word;
        }

        /** Fixed-point unit of comparisons and margins. */
        public Unit unit() {
            return unit;
        }
    }

    /** By how many hundredths the sure value misses what was asked; 0 when it does not. */
    public long missedBy() {
        long had = Math.round(sure * 100);
        long asked = Math.round(required * 100);
        return Math.max(0, measure == Measure.FINISH ? had - asked : asked - had);
    }

    /** Whether it holds with the brief's confidence. */
    public boolean met() {
        return missedBy() == 0;
    }
}
