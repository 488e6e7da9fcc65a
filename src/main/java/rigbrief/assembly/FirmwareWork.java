package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;

/** How the board's firmware is updated before the first boot. Common practice. */
final class FirmwareWork {
    private FirmwareWork() {}

    static Step step(FirmwareStep update, Bench bench) {
        Build build = bench.build();
        List<String> actions = new ArrayList<>();
        actions.add(
                bench.say("firmware.why", build.board().name(), update.shipped(), update.needed()));
        if (update.how() != FirmwareStep.How.BY_THE_SHOP) {
            actions.add(bench.say("firmware.load", update.needed()));
        }
        actions.addAll(
                switch (update.how()) {
                    case WITHOUT_PROCESSOR -> withoutProcessor(bench);
                    case WITH_HELPER -> withHelper(bench);
                    case BY_THE_SHOP -> byTheShop(bench);
                });
        return new Step("firmware", bench.say("firmware.title"), actions);
    }

    private static List<String> withoutProcessor(Bench bench) {
        return List.of(
                bench.say("firmware.bare.1"),
                bench.say("firmware.bare.2"),
                bench.say("firmware.bare.3"));
    }

    private static List<String> withHelper(Bench bench) {
        return List.of(
                bench.say("firmware.helper.1"),
                bench.say("firmware.helper.2"),
                bench.say("firmware.helper.3"));
    }

    private static List<String> byTheShop(Bench bench) {
        return List.of(bench.say("firmware.shop"));
    }
}
