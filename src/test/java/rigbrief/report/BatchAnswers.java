package rigbrief.report;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rigbrief.batch.Answered;
import rigbrief.batch.BatchAnswer;
import rigbrief.batch.BatchBrief;
import rigbrief.batch.BatchResult;
import rigbrief.batch.Ending;
import rigbrief.batch.TierTotal;

/** A small batch to write out: one of each ending. */
final class BatchAnswers {
    private BatchAnswers() {}

    static BatchAnswer mixed() {
        return new BatchAnswer(
                Path.of("answers"),
                List.of(
                        answered(
                                "anvil",
                                Ending.PROPOSED,
                                new TierTotal("lean", "479.63", "0"),
                                new TierTotal("full", "595.02", "1.24")),
                        answered(
                                "desks",
                                Ending.PROPOSED,
                                new TierTotal(TierTotal.VARIANTS, "22978.54", "")),
                        answered("hask", Ending.IMPOSSIBLE),
                        failed(
                                "=mail",
                                Ending.BAD_INPUT,
                                7,
                                "=mail.yaml:3:10: ceiling: found -5, expected more; write it"),
                        failed("moss", Ending.CALLED_OFF, 0)));
    }

    private static BatchResult answered(String name, Ending ending, TierTotal... totals) {
        return new BatchResult(
                brief(name),
                ending,
                name.equals("desks"),
                Optional.of(new Answered(ending, "EUR", List.of(totals))),
                List.of(),
                0);
    }

    private static BatchResult failed(String name, Ending ending, int faults, String... lines) {
        return new BatchResult(
                brief(name), ending, false, Optional.empty(), List.of(lines), faults);
    }

    private static BatchBrief brief(String name) {
        return new BatchBrief(Path.of(name + ".yaml"), name);
    }
}
