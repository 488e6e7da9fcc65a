package rigbrief.explain;

import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.model.memory.MemoryBandwidth;

/** Explains the rate the memory really runs at. */
final class MemoryExplainer implements Explainer {
    private static final String TITLE = "Memory rate";

    @Override
    public List<Topic> topics(Assessment it) {
        return List.of(new Topic("memory.mts", TITLE, () -> explained(it)));
    }

    private static Explanation explained(Assessment it) {
        Build build = it.build();
        Derivation how =
                new Derivation(
                        "memory.mts",
                        TITLE,
                        "the least of kit, board for that many modules, and processor",
                        "makers' sheets of the three parts");
        int kit = build.memory().mts();
        int board = build.board().memoryMts(build.memoryModules());
        int processor = build.processor().memoryMts(build.memory().type());
        how.given("kit", kit, "MT/s", build.memory().id() + ", mts");
        how.given("modules", build.memoryModules(), "", build.memory().id() + ", modules x packs");
        how.given("board", board, "MT/s", build.board().id() + ", memory_max_mts");
        how.given("processor", processor, "MT/s", build.processor().id() + ", memory");
        how.remark(MemoryBandwidth.RATE_MTS.remark(it.memoryMts()));
        return how.gives(it.memoryMts(), 0, "MT/s", "min({}, {}, {})", kit, board, processor);
    }
}
