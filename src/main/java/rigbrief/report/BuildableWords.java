package rigbrief.report;

import java.util.stream.Collectors;
import rigbrief.proposal.Buildable;
import rigbrief.proposal.Buildable.Limit;

/** How many machines can be built with today's stock, in words. */
final class BuildableWords {
    private BuildableWords() {}

    static String of(Buildable it) {
        if (it.whole() >= it.wanted()) {
            return it.wanted() == 1
                    ? "With today's offers the machine can be built."
                    : "With today's offers all %d can be built, each part from one supplier."
                            .formatted(it.wanted());
        }
        if (it.split() >= it.wanted()) {
            return "With today's offers all %d can be built if orders are split between suppliers; %d with each part from one."
                    .formatted(it.wanted(), it.whole());
        }
        String limits =
                it.limits().stream().map(BuildableWords::limit).collect(Collectors.joining("; "));
        if (it.wanted() == 1) {
            return "With today's offers the machine can't be built: " + limits + ".";
        }
        return "With today's offers %d of %d can be built%s, for want of %s."
                .formatted(
                        it.split(),
                        it.wanted(),
                        it.whole() < it.split()
                                ? " if orders are split, %d if not".formatted(it.whole())
                                : "",
                        limits);
    }

    private static String limit(Limit limit) {
        String had = limit.have() == 0 ? "" : ", %d ordered or here".formatted(limit.have());
        return "%s (%s on offer%s)"
                .formatted(
                        limit.part().name(),
                        limit.stock() == 0 ? "none" : Integer.toString(limit.stock()),
                        had);
    }
}
