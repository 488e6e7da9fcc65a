package rigbrief.assess;

import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;

/**
 * Assesses builds under one brief with one catalogue.
 *
 * <p>Keeps what many builds share: prices by supplier set, and speed by processor, card and memory
 * rate. Confined to one thread: give each thread an assessor of its own.
 */
public final class Assessor {
    private final Brief brief;
    private final Brief valued;
    private final Catalogue catalogue;
    private final Demand demand;
    private final Offers offers;
    private final Pricing pricing;
    private final SpeedModel speed;

    /**
     * An assessor.
     *
     * @throws IllegalArgumentException when the brief names a workload that the catalogue does not
     *     have, which the reader of briefs refuses
     */
    public Assessor(Brief brief, Catalogue catalogue) {
        this(brief, catalogue, Settled.NOTHING);
    }

    /**
     * An assessor of an order of which a part is settled.
     *
     * @param settled what was ordered before
     * @throws IllegalArgumentException when the brief names a workload that the catalogue does not
     *     have
     */
    public Assessor(Brief brief, Catalogue catalogue, Settled settled) {
        this(brief, brief, catalogue, settled);
    }

    /**
     * An assessor that judges by the rules of one brief and by the goals of another: some goals
     * begin at a must, so that only by the goals of one brief do builds under two of them compare.
     *
     * @param valued the brief that the goals go by; as the first but for its musts
     * @throws IllegalArgumentException when the brief names a workload that the catalogue does not
     *     have
     */
    public Assessor(Brief brief, Brief valued, Catalogue catalogue) {
        this(brief, valued, catalogue, Settled.NOTHING);
    }

    private Assessor(Brief brief, Brief valued, Catalogue catalogue, Settled settled) {
        this.brief = brief;
        this.valued = valued;
        this.catalogue = catalogue;
        this.demand = DemandModel.of(brief, valued, catalogue);
        this.offers = new Offers(brief, catalogue);
        this.pricing = new Pricing(brief, offers, settled);
        this.speed = new SpeedModel(brief, demand);
    }

    /** A build's assessment; figures are computed when asked for. */
    public Assessment assess(Build build) {
        return new Assessment(this, build);
    }

    /** The brief. */
    public Brief brief() {
        return brief;
    }

    /** The brief that the goals go by. */
    public Brief valued() {
        return valued;
    }

    /** The catalogue. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** What the brief's workloads need, whatever the build. */
    public Demand demand() {
        return demand;
    }

    /** Offers within the brief's terms. */
    public Offers offers() {
        return offers;
    }

    /** Prices by supplier set. */
    public Pricing pricing() {
        return pricing;
    }

    /** Speed of parts that are not yet a whole build. */
    public SpeedModel speed() {
        return speed;
    }
}
