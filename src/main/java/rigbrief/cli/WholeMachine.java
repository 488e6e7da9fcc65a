package rigbrief.cli;

import java.util.List;
import rigbrief.build.Build;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.part.Slot;

/** Refuses a build that can't run for want of a part. */
final class WholeMachine {
    private WholeMachine() {}

    static void check(Build build, String name) throws BadInput {
        List<String> missing = build.missing().stream().map(Slot::word).toList();
        if (!missing.isEmpty()) {
            throw new BadInput(
                    new Fault(
                            name,
                            1,
                            1,
                            "parts",
                            "",
                            "also " + String.join(", ", missing),
                            "add what is missing, or see what there is with rigbrief audit"));
        }
    }
}
