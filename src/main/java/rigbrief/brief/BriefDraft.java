package rigbrief.brief;

import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigbrief.part.FrontPort;
import rigbrief.quantity.Money;

/** A brief being changed: starts as a copy of one, ends as another. */
public final class BriefDraft {
    private String name;
    private String client;
    private Currency currency;
    private int quantity;
    private Money ceiling;
    private int overrunBasisPoints;
    private int confidencePercent;
    private Optional<Screen> screen;
    private List<WorkloadNeed> workloads;
    private List<String> atOnce;
    private Brief.Looks looks;
    private Brief.Noise noise;
    private Brief.Wireless wireless;
    private Brief.MemoryNeed memory;
    private Brief.StorageNeed storage;
    private Brief.SizeNeed size;
    private List<FrontPort> frontPorts;
    private List<Kept> keep;
    private Brief.Avoid avoid;
    private Brief.Buying buying;
    private Brief.SystemNeed system;
    private Brief.Place place;
    private Brief.Headroom headroom;
    private Wishes wishes;
    private Brief.Fees fees;
    private Locale locale;

    /** A draft that starts as a copy. */
    public BriefDraft(Brief brief) {
        this.name = brief.name();
        this.client = brief.client();
        this.currency = brief.currency();
        this.quantity = brief.quantity();
        this.ceiling = brief.ceiling();
        this.overrunBasisPoints = brief.overrunBasisPoints();
        this.confidencePercent = brief.confidencePercent();
        this.screen = brief.screen();
        this.workloads = brief.workloads();
        this.atOnce = brief.atOnce();
        this.looks = brief.looks();
        this.noise = brief.noise();
        this.wireless = brief.wireless();
        this.memory = brief.memory();
        this.storage = brief.storage();
        this.size = brief.size();
        this.frontPorts = brief.frontPorts();
        this.keep = brief.keep();
        this.avoid = brief.avoid();
        this.buying = brief.buying();
        this.system = brief.system();
        this.place = brief.place();
        this.headroom = brief.headroom();
        this.wishes = brief.wishes();
        this.fees = brief.fees();
        this.locale = brief.locale();
    }

    /** Sets name. */
    public BriefDraft name(String value) {
        this.name = value;
        return this;
    }

    /** Sets client. */
    public BriefDraft client(String value) {
        this.client = value;
        return this;
    }

    /** Sets currency. */
    public BriefDraft currency(Currency value) {
        this.currency = value;
        return this;
    }

    /** Sets quantity. */
    public BriefDraft quantity(int value) {
        this.quantity = value;
        return this;
    }

    /** Sets ceiling. */
    public BriefDraft ceiling(Money value) {
        this.ceiling = value;
        return this;
    }

    /** Sets overrun basis points. */
    public BriefDraft overrunBasisPoints(int value) {
        this.overrunBasisPoints = value;
        return this;
    }

    /** Sets confidence percent. */
    public BriefDraft confidencePercent(int value) {
        this.confidencePercent = value;
        return this;
    }

    /** Sets screen. */
    public BriefDraft screen(Optional<Screen> value) {
        this.screen = value;
        return this;
    }

    /** Sets workloads. */
    public BriefDraft workloads(List<WorkloadNeed> value) {
        this.workloads = value;
        return this;
    }

    /** Sets at once. */
    public BriefDraft atOnce(List<String> value) {
        this.atOnce = value;
        return this;
    }

    /** Sets looks. */
    public BriefDraft looks(Brief.Looks value) {
        this.looks = value;
        return this;
    }

    /** Sets noise. */
    public BriefDraft noise(Brief.Noise value) {
        this.noise = value;
        return this;
    }

    /** Sets wireless. */
    public BriefDraft wireless(Brief.Wireless value) {
        this.wireless = value;
        return this;
    }

    /** Sets memory. */
    public BriefDraft memory(Brief.MemoryNeed value) {
        this.memory = value;
        return this;
    }

    /** Sets storage. */
    public BriefDraft storage(Brief.StorageNeed value) {
        this.storage = value;
        return this;
    }

    /** Sets size. */
    public BriefDraft size(Brief.SizeNeed value) {
        this.size = value;
        return this;
    }

    /** Sets front ports. */
    public BriefDraft frontPorts(List<FrontPort> value) {
        this.frontPorts = value;
        return this;
    }

    /** Sets keep. */
    public BriefDraft keep(List<Kept> value) {
        this.keep = value;
        return this;
    }

    /** Sets avoid. */
    public BriefDraft avoid(Brief.Avoid value) {
        this.avoid = value;
        return this;
    }

    /** Sets buying. */
    public BriefDraft buying(Brief.Buying value) {
        this.buying = value;
        return this;
    }

    /** Sets system. */
    public BriefDraft system(Brief.SystemNeed value) {
        this.system = value;
        return this;
    }

    /** Sets place. */
    public BriefDraft place(Brief.Place value) {
        this.place = value;
        return this;
    }

    /** Sets headroom. */
    public BriefDraft headroom(Brief.Headroom value) {
        this.headroom = value;
        return this;
    }

    /** Sets wishes. */
    public BriefDraft wishes(Wishes value) {
        this.wishes = value;
        return this;
    }

    /** Sets fees. */
    public BriefDraft fees(Brief.Fees value) {
        this.fees = value;
        return this;
    }

    /** Sets locale. */
    public BriefDraft locale(Locale value) {
        this.locale = value;
        return this;
    }

    /** The brief as it now stands. */
    public Brief toBrief() {
        return new Brief(
                name,
                client,
                currency,
                quantity,
                ceiling,
                overrunBasisPoints,
                confidencePercent,
                screen,
                workloads,
                atOnce,
                looks,
                noise,
                wireless,
                memory,
                storage,
                size,
                frontPorts,
                keep,
                avoid,
                buying,
                system,
                place,
                headroom,
                wishes,
                fees,
                locale);
    }
}
