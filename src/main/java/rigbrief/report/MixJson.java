package rigbrief.report;

import java.util.List;
import rigbrief.build.BuildLine;
import rigbrief.part.Slot;
import rigbrief.proposal.Mix;
import rigbrief.proposal.Proposals;
import rigbrief.quantity.Money;

/** An order in two variants, in JSON. */
final class MixJson {
    private MixJson() {}

    static void fields(JsonPage json, Mix mix, Proposals answer) {
        json.field("total", Money.ofMinor(mix.totalMinor(), answer.brief().currency()).plain())
                .field("suppliers", mix.suppliers())
                .field("proven", mix.proven())
                .texts("differ-in", mix.changed().stream().map(Slot::word).toList())
                .list(
                        "variants",
                        List.of(mix.first(), mix.second()),
                        share ->
                                json.field("machines", share.machines())
                                        .list(
                                                "parts",
                                                share.record().lines(),
                                                line -> line(json, line)));
    }

    private static void line(JsonPage json, BuildLine line) {
        json.field("slot", line.slot().word())
                .field("part", line.part().id())
                .field("quantity", line.pieces());
        line.supplier()
                .ifPresentOrElse(
                        supplier -> json.field("supplier", supplier),
                        () -> json.nothing("supplier"));
        json.field("unit-price", line.unitPrice().plain());
    }
}
