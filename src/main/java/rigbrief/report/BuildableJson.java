package rigbrief.report;

import rigbrief.proposal.Buildable;

/** How many machines can be built with today's stock, in JSON. */
final class BuildableJson {
    private BuildableJson() {}

    /** Adds the field {@code buildable-today}. */
    static void write(JsonPage json, Buildable it) {
        json.object(
                "buildable-today",
                of ->
                        of.field("wanted", it.wanted())
                                .field("from-one-supplier-a-part", it.whole())
                                .field("with-split-orders", it.split())
                                .list(
                                        "limits",
                                        it.limits(),
                                        limit ->
                                                of.field("slot", limit.slot().word())
                                                        .field("part", limit.part().id())
                                                        .field("pieces", limit.pieces())
                                                        .field("had", limit.have())
                                                        .field("on-offer", limit.stock())));
    }
}
