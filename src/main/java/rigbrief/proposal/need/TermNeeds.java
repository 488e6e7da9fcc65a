package rigbrief.proposal.need;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Screen;
import rigbrief.quantity.Money;

/** What the job is: the ceiling, how many machines, what picture. */
final class TermNeeds {
    private TermNeeds() {}

    static void addCeiling(Brief brief, List<Need> needs) {
        String words = brief.ceiling().toString();
        needs.add(
                Need.stepped(
                        "ceiling",
                        "ceiling " + words,
                        Need.Kind.CEILING,
                        new Level(words, it -> Stretch.none(it)),
                        it -> Stretch.boundless(it),
                        List.of(),
                        Optional.empty(),
                        Optional.empty(),
                        it ->
                                Money.ofMinor(
                                                Math.max(
                                                        brief.ceiling().minorUnits(),
                                                        it.cost().totalMinor()),
                                                brief.currency())
                                        .toString()));
    }

    static void addTerms(Brief brief, List<Need> needs) {
        if (brief.quantity() > 1) {
            needs.add(quantity(brief.quantity()));
        }
        brief.screen().ifPresent(screen -> needs.add(screen(screen)));
    }

    private static Need quantity(int machines) {
        IntFunction<Level> level =
                count ->
                        new Level(
                                machines(count),
                                it -> new BriefDraft(it).quantity(count).toBrief());
        List<Integer> fewer =
                java.util.stream.IntStream.range(1, machines)
                        .map(i -> machines - i)
                        .boxed()
                        .toList();
        return Need.stepped(
                "quantity",
                "quantity " + machines,
                Need.Kind.TERM,
                level.apply(machines),
                it -> new BriefDraft(it).quantity(1).toBrief(),
                StoreNeeds.levels(fewer, level),
                Optional.empty(),
                Optional.empty(),
                it -> machines(it.brief().quantity()));
    }

    private static String machines(int count) {
        return count + (count == 1 ? " machine" : " machines");
    }

    private static Need screen(Screen screen) {
        IntFunction<Level> level =
                hz ->
                        new Level(
                                "%s at %d Hz".formatted(screen.resolution(), hz),
                                it -> with(it, Optional.of(at(screen, hz))));
        return Need.stepped(
                "display",
                "display %s at %d Hz".formatted(screen.resolution(), screen.refreshHz()),
                Need.Kind.TERM,
                level.apply(screen.refreshHz()),
                it -> with(it, Optional.empty()),
                StoreNeeds.levels(Ladder.HERTZ.allUnder(screen.refreshHz()), level),
                BodyNeeds.optional(Ladder.HERTZ.under(screen.refreshHz())).map(level::apply),
                Optional.empty(),
                it -> "another display");
    }

    private static Screen at(Screen screen, int refreshHz) {
        return new Screen(
                screen.resolution(),
                refreshHz,
                screen.bitsPerColour(),
                screen.inputs(),
                screen.count(),
                screen.buy(),
                screen.part());
    }

    private static Brief with(Brief brief, Optional<Screen> screen) {
        return new BriefDraft(brief).screen(screen).toBrief();
    }
}
