package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import rigbrief.assembly.FanPlan.Origin;
import rigbrief.assembly.FanPlan.PlacedFan;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Fact;
import rigbrief.part.FanConnector;
import rigbrief.part.Slot;
import rigbrief.quantity.Current;
import rigbrief.wording.Texts;

/**
 * Which fan header feeds which case fans.
 *
 * <p>One fan a header while they last; then two added fans on one, since their current is known,
 * and the case's own last: the same reading as rule {@code fan-headers}.
 *
 * @param uses one entry per header in use, in the order of their numbers
 * @param onSupply fans with a 4-pin peripheral plug, which the supply feeds
 * @param headers headers the board has beside the processor fan's; empty when not stated
 * @param unfed fans that no header is left for, which the rule tells
 */
public record FanHeaders(
        List<HeaderUse> uses, List<String> onSupply, OptionalInt headers, int unfed) {
    private static final int FANS_PER_HEADER = 2;

    public FanHeaders {
        uses = List.copyOf(uses);
        onSupply = List.copyOf(onSupply);
    }

    /**
     * One header in use.
     *
     * @param number number on this list; the board's manual has the header's own name
     * @param fans the fans on it, by where they sit
     * @param drawMa what they draw together in mA; empty where it is not known
     * @param limitMa what the header gives in mA; empty where not stated
     */
    public record HeaderUse(
            int number, List<String> fans, OptionalInt drawMa, OptionalInt limitMa) {
        public HeaderUse {
            fans = List.copyOf(fans);
        }

        /** The current check in words, in a language. */
        public String current(Texts texts) {
            String limit =
                    limitMa.isPresent()
                            ? limitMa.getAsInt() + " mA"
                            : texts.text("header.not-stated");
            return drawMa.isPresent()
                    ? texts.text("header.draws", drawMa.getAsInt(), limit)
                    : texts.text("header.unknown", limit);
        }
    }

    private record OneFan(String name, boolean known) {}

    /** The headers of a build. */
    public static FanHeaders of(Assessment it) {
        return of(it, FanPlan.of(it), Texts.ENGLISH);
    }

    /** The headers of a build for the fans of its plan. */
    static FanHeaders of(Assessment it, FanPlan plan, Texts texts) {
        Build build = it.build();
        List<OneFan> fans = new ArrayList<>();
        List<String> onSupply = new ArrayList<>();
        boolean fedBySupply =
                build.has(Slot.FANS) && build.fan().connector() == FanConnector.PERIPHERAL4;
        for (PlacedFan group : plan.fans()) {
            for (int i = 1; i <= group.count() && group.origin() != Origin.RADIATOR; i++) {
                String name =
                        texts.text("header.fan." + group.place().word())
                                + (group.count() > 1 ? " " + i : "");
                boolean added = group.origin() == Origin.ADDED;
                if (added && fedBySupply) {
                    onSupply.add(name);
                } else {
                    fans.add(new OneFan(name, added));
                }
            }
        }
        return shared(build, fans, onSupply);
    }

    private static FanHeaders shared(Build build, List<OneFan> fans, List<String> onSupply) {
        if (!(build.board().fanHeaders() instanceof Fact.Stated<Integer> headers)) {
            List<HeaderUse> unknown = new ArrayList<>();
            fans.forEach(fan -> unknown.add(use(build, unknown.size() + 1, List.of(fan))));
            return new FanHeaders(unknown, onSupply, OptionalInt.empty(), 0);
        }
        int pairs = Math.max(0, Math.min(fans.size() - headers.value(), headers.value()));
        List<OneFan> left = new ArrayList<>(fans);
        // Added fans pair first: theirs is the current that is known.
        left.sort((a, b) -> Boolean.compare(b.known(), a.known()));
        List<HeaderUse> uses = new ArrayList<>();
        while (!left.isEmpty() && uses.size() < headers.value()) {
            int count = Math.min(left.size(), uses.size() < pairs ? FANS_PER_HEADER : 1);
            List<OneFan> here = List.copyOf(left.subList(0, count));
            left = left.subList(count, left.size());
            uses.add(use(build, uses.size() + 1, here));
        }
        return new FanHeaders(uses, onSupply, OptionalInt.of(headers.value()), left.size());
    }

    private static HeaderUse use(Build build, int number, List<OneFan> fans) {
        boolean known = fans.stream().allMatch(OneFan::known) && build.fan().current().stated();
        OptionalInt draw =
                known
                        ? OptionalInt.of(
                                fans.size()
                                        * build.fan().current().or(Current.ma(0)).milliamperes())
                        : OptionalInt.empty();
        OptionalInt limit =
                build.board().fanHeaderCurrent() instanceof Fact.Stated<Current> stated
                        ? OptionalInt.of(stated.value().milliamperes())
                        : OptionalInt.empty();
        return new HeaderUse(number, fans.stream().map(OneFan::name).toList(), draw, limit);
    }

    /** How many headers feed two fans, each on a split lead. */
    public int splitLeads() {
        return (int) uses.stream().filter(use -> use.fans().size() > 1).count();
    }
}
