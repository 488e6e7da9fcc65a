package rigbrief.measurement.accept;

/** Ids of the lines that causes show in. */
final class SheetIds {
    static final String MEMORY_RATE = "memory.rate-mts";
    static final String MEMORY_SIZE = "memory.size-gb";
    static final String MEMORY_MODULES = "memory.modules";
    static final String MEMORY_CHANNELS = "memory.channels";
    static final String CARD_LANES = "graphics.lanes";
    static final String PROCESSOR_C = "heat.processor-c";
    static final String CARD_C = "heat.graphics-c";
    static final String ROOM_C = "heat.room-c";
    static final String IDLE_USE = "processor.idle-use-percent";
    static final String ON_CARD = "look.screen-on-card";

    private SheetIds() {}
}
