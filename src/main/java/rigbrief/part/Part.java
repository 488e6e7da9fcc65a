package rigbrief.part;

/** One orderable item. */
public sealed interface Part
        permits Processor,
                Board,
                Memory,
                Graphics,
                Drive,
                Supply,
                Cooler,
                PcCase,
                Fan,
                Wireless,
                Brace,
                Cables,
                OperatingSystem,
                Display {
    /** Identity, look and guarantee. */
    Listing listing();

    /** Which kind it is. */
    Kind kind();

    /** Identity within the catalogue. */
    default String id() {
        return listing().id();
    }

    /** Maker and model. */
    default String name() {
        return listing().name();
    }
}
