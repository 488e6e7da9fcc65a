package rigbrief.assembly.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.assembly.AssemblyPlan;
import rigbrief.assembly.Connection;
import rigbrief.assembly.DriveHome;
import rigbrief.assembly.Lead;
import rigbrief.assembly.ScenarioBuilds;
import rigbrief.assembly.ScenarioBuilds.Filed;
import rigbrief.brief.Kept;
import rigbrief.build.Build;
import rigbrief.part.Plug;
import rigbrief.part.Slot;
import rigbrief.part.Tally;

/**
 * Goes through the assembly plan of every sample proposal with the order list in hand: each plug
 * that goes in and each thing that is screwed, stuck or typed on lies in the box of a part on the
 * list, is the client's, or is named among what is needed as well.
 */
class FirstBootIsCoveredTest {
    static List<Filed> proposals() {
        return ScenarioBuilds.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("proposals")
    void whatever_the_plan_plugs_in_comes_from_somewhere(Filed filed) {
        Hand hand = new Hand(filed);

        for (Connection connection : AssemblyPlan.of(filed.bench()).connections()) {
            assertThat(hand.holds(connection.lead())).as(connection.toString()).isTrue();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("proposals")
    void the_leads_of_the_supply_are_as_many_as_the_plan_plugs_in(Filed filed) {
        Map<Lead, Integer> plugged = new EnumMap<>(Lead.class);
        AssemblyPlan.of(filed.bench())
                .connections()
                .forEach(each -> plugged.merge(each.lead(), each.count(), Integer::sum));
        Tally<Plug> plugs = filed.record().build().supply().plugs().or(Tally.none());
        Hand hand = new Hand(filed);

        if (hand.item("power leads") == 0) {
            assertThat(plugs.of(Plug.ATX24)).isGreaterThanOrEqualTo(1);
            assertThat(plugs.of(Plug.EPS8) + plugs.of(Plug.EPS4))
                    .isGreaterThanOrEqualTo(
                            count(plugged, Lead.PROCESSOR_POWER_8)
                                    + count(plugged, Lead.PROCESSOR_POWER_4));
            assertThat(plugs.of(Plug.PCIE8) + plugs.of(Plug.PCIE6))
                    .isGreaterThanOrEqualTo(
                            count(plugged, Lead.CARD_POWER_8) + count(plugged, Lead.CARD_POWER_6));
            assertThat(plugs.of(Plug.PCIE16))
                    .isGreaterThanOrEqualTo(count(plugged, Lead.CARD_POWER_16));
            assertThat(plugs.of(Plug.SATA))
                    .isGreaterThanOrEqualTo(count(plugged, Lead.DRIVE_POWER));
        }
        int machines = filed.brief().quantity();
        assertThat(hand.item("SATA data cable"))
                .isGreaterThanOrEqualTo(machines * count(plugged, Lead.DRIVE_DATA));
        assertThat(hand.item("display cable"))
                .isGreaterThanOrEqualTo(machines * count(plugged, Lead.SCREEN));
    }

    private static int count(Map<Lead, Integer> plugged, Lead lead) {
        return plugged.getOrDefault(lead, 0);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("proposals")
    void whatever_is_screwed_stuck_or_typed_on_is_named(Filed filed) {
        Hand hand = new Hand(filed);
        Build build = filed.record().build();
        int machines = filed.brief().quantity();
        List<DriveHome> homes = AssemblyPlan.of(filed.bench()).drives();
        long flat = homes.stream().filter(home -> home.place() == DriveHome.Place.M2).count();

        assertThat(hand.item("thermal paste")).isPositive();
        assertThat(hand.item("stand-offs, and screws")).isEqualTo(machines);
        assertThat(hand.item("M.2 screw")).isEqualTo((int) flat * machines);
        assertThat(hand.item("screws for drives"))
                .isEqualTo((int) (homes.size() - flat) * machines);
        assertThat(hand.has(Slot.SYSTEM) || hand.item("operating system") == machines).isTrue();
        assertThat(hand.item("USB stick")).isPositive();
        assertThat(hand.item("keyboard and mouse")).isEqualTo(machines);
        assertThat(hand.item("network cable")).isEqualTo(machines);
        boolean screen =
                filed.brief().screen().isPresent()
                        || build.has(Slot.DISPLAY)
                        || hand.item("screen") > 0;
        assertThat(screen).isTrue();
        for (Kept kept : filed.brief().keep()) {
            if (kept.slot() == Slot.COOLER) {
                assertThat(hand.item("bracket of the cooler")).isEqualTo(machines);
            }
            if (kept.slot() == Slot.BOARD) {
                assertThat(hand.item("the board's cover")).isEqualTo(machines);
            }
        }
        assertThat(hand.list.alsoNeeded()).noneMatch(need -> need.why().isBlank());
    }

    /** What is in hand when all that the list names has come. */
    private static final class Hand {
        private final OrderList list;
        private final Set<Slot> slots = EnumSet.noneOf(Slot.class);

        Hand(Filed filed) {
            list = OrderList.of(filed.record(), filed.bench());
            list.orders().forEach(order -> order.lines().forEach(line -> slots.add(line.slot())));
            list.notOrdered().forEach(part -> slots.add(part.slot()));
        }

        boolean has(Slot slot) {
            return slots.contains(slot);
        }

        /** How many of an item are named beside the parts. */
        int item(String beginning) {
            return list.alsoNeeded().stream()
                    .filter(need -> need.item().startsWith(beginning))
                    .mapToInt(AlsoNeeded::quantity)
                    .sum();
        }

        /** Whether a sort of lead lies in a box on the list, is the client's, or is named. */
        boolean holds(Lead lead) {
            return switch (lead) {
                case BOARD_POWER,
                        PROCESSOR_POWER_8,
                        PROCESSOR_POWER_4,
                        CARD_POWER_8,
                        CARD_POWER_6,
                        CARD_POWER_16,
                        DRIVE_POWER,
                        PERIPHERAL_POWER ->
                        has(Slot.SUPPLY);
                case DRIVE_DATA -> item("SATA data cable") > 0;
                // The boxed cooler lies in the processor's box.
                case COOLER_FAN, PUMP -> has(Slot.COOLER) || has(Slot.PROCESSOR);
                case CASE_FAN -> has(Slot.CASE) || has(Slot.FANS);
                case FRONT_USB2, FRONT_USB3, FRONT_USB_C, FRONT_AUDIO, FRONT_SWITCHES ->
                        has(Slot.CASE);
                // Fixed to the part that is lit.
                case LIGHTING -> true;
                case AERIAL -> item("aerials") > 0;
                case SCREEN -> item("display cable") > 0;
                case MAINS -> item("mains lead") + item("leads of the client's supply") > 0;
            };
        }
    }
}
