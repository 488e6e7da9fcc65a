package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;

/** How the board's firmware is updated before the first boot. Common practice. */
final class FirmwareWork {
    private FirmwareWork() {}

    static Step step(FirmwareStep update, Build build) {
        List<String> actions = new ArrayList<>();
        actions.add(
                "%s leaves the shop with firmware %s and knows this processor from %s on: without the update there is no picture and no boot. A sticker on the board or its box may show that it has been done."
                        .formatted(build.board().name(), update.shipped(), update.needed()));
        if (update.how() != FirmwareStep.How.BY_THE_SHOP) {
            actions.add(
                    "Load version %s or newer from the board maker's own site onto a stick formatted as FAT32, with the file name that the board's manual asks for."
                            .formatted(update.needed()));
        }
        actions.addAll(
                switch (update.how()) {
                    case WITHOUT_PROCESSOR -> withoutProcessor();
                    case WITH_HELPER -> withHelper();
                    case BY_THE_SHOP -> byTheShop();
                });
        return new Step("firmware", "Update the board's firmware first", actions);
    }

    private static List<String> withoutProcessor() {
        return List.of(
                "Leave the processor out. With the board on its box, plug in the supply's 24-pin and"
                        + " processor leads only, then the mains; switch the supply on.",
                "Stick into the marked USB socket behind, press the update button as the manual says, and"
                        + " wait until its lamp stops blinking: up to ten minutes. Do not cut the power.",
                "Supply off, mains lead out, leads off again.");
    }

    private static List<String> withHelper() {
        return List.of(
                "Fit the helper processor with a cooler and one memory module, and what it takes for a"
                        + " picture; plug in the 24-pin and processor leads, then the mains, and start.",
                "Update from the firmware's own menu. Do not cut the power. Check the version it shows"
                        + " after the restart.",
                "Supply off, mains lead out. Take the helper out, wipe the paste off, pack it away.");
    }

    private static List<String> byTheShop() {
        return List.of(
                "This board can't be updated without a processor that it knows. Have the supplier update it"
                        + " before delivery, or borrow an older processor of the same socket, before any"
                        + " other step.");
    }
}
