package rigbrief.explain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Board;
import rigbrief.part.FanConnector;
import rigbrief.part.Share;
import rigbrief.part.Slot;
import rigbrief.rule.fit.DrivePlaceRule;

/** Explains what is counted rather than computed: fans, shared headers, ports left over. */
final class CountExplainer implements Explainer {
    private static final String SOURCE = "counted on the makers' sheets";

    @Override
    public List<Topic> topics(Assessment it) {
        List<Topic> topics = new ArrayList<>();
        topics.add(new Topic("fans.count", "Case fans in all", () -> fans(it)));
        if (it.build().board().fanHeaders().stated()) {
            topics.add(
                    new Topic(
                            "fans.shared-headers",
                            "Fan headers that feed two fans each",
                            () -> shared(it)));
        }
        topics.add(new Topic("sata.ports-left", "SATA ports left over", () -> ports(it)));
        return topics;
    }

    private static Explanation fans(Assessment it) {
        Derivation how =
                new Derivation(
                        "fans.count",
                        "Case fans in all",
                        "fans that come with the case and stay + added fans that found a place",
                        SOURCE);
        int included = included(how, it);
        int added = Cooling.count(it.layout().addedFans());
        how.given("added fans", added, "", "the build");
        return how.gives(it.layout().caseFans(), 0, "", "{} + {}", included, added);
    }

    private static int included(Derivation how, Assessment it) {
        int included = Cooling.count(it.layout().includedFans());
        how.given(
                "fans of the case",
                included,
                "",
                it.build().pcCase().id() + ", included_fans, but for a side that a radiator takes");
        return included;
    }

    private static Explanation shared(Assessment it) {
        Derivation how =
                new Derivation(
                        "fans.shared-headers",
                        "Fan headers that feed two fans each",
                        "fans on the board - its headers, at least 0",
                        SOURCE);
        Build build = it.build();
        int included = included(how, it);
        boolean fed = build.has(Slot.FANS) && build.fan().connector() != FanConnector.PERIPHERAL4;
        int added = fed ? build.fanCount() : 0;
        int headers = build.board().fanHeaders().or(0);
        how.given("added fans that plug into the board", added, "", "the build");
        how.given("fan headers", headers, "", build.board().id() + ", fan_headers");
        return how.gives(
                Math.max(0, included + added - headers),
                0,
                "",
                "max(0, {} + {} - {})",
                included,
                added,
                headers);
    }

    private static Explanation ports(Assessment it) {
        Derivation how =
                new Derivation(
                        "sata.ports-left",
                        "SATA ports left over",
                        "ports of the board - those that an M.2 slot in use switches off - drives on"
                                + " a cable",
                        SOURCE);
        Board board = it.build().board();
        int drives = DrivePlaceRule.sataDrives(it.build());
        how.given("SATA ports", board.sataPorts(), "", board.id() + ", sata_ports");
        List<Object> values = new ArrayList<>(List.of(board.sataPorts()));
        for (Share share : board.shares()) {
            if (it.layout().driveM2().contains(share.m2())) {
                int off = share.sataPorts().size();
                how.given(
                        "switched off by M.2 slot " + share.m2(), off, "", board.id() + ", shares");
                values.add(off);
            }
        }
        how.given("drives on a cable", drives, "", "the build");
        values.add(drives);
        return how.gives(
                it.layout().sataPortsLeft(),
                0,
                "",
                String.join(" - ", Collections.nCopies(values.size(), "{}")),
                values.toArray());
    }
}
