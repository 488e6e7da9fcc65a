package rigbrief.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.CoolerFixture.aCooler;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.assembly.ScenarioBuilds.Filed;
import rigbrief.assess.Workings;
import rigbrief.assess.Workings.State;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.model.power.CircuitLoad;
import rigbrief.part.Drive;
import rigbrief.part.FanConnector;
import rigbrief.part.FrontPort;
import rigbrief.part.Part;
import rigbrief.part.Plug;
import rigbrief.part.SidePanel;
import rigbrief.part.Slot;
import rigbrief.part.Tally;
import rigbrief.quantity.Unit;
import rigbrief.rule.fit.DisplayLinkRule;
import rigbrief.rule.fit.ScreenLink;
import rigbrief.wording.Texts;

/** What must be true of the plan of any machine that was ever proposed. */
class AssemblyPlanTest {

    static List<Filed> proposals() {
        return ScenarioBuilds.all();
    }

    @Test
    void there_are_proposals_to_look_at() {
        assertThat(proposals()).hasSizeGreaterThanOrEqualTo(22);
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void every_part_is_named_in_the_order_of_work_or_at_the_first_boot(Filed filed) {
        AssemblyPlan plan = AssemblyPlan.of(filed.bench());

        String text = plan.steps() + " " + plan.firstBoot();
        for (var part : filed.record().build().filled().entrySet()) {
            assertThat(text).as(part.getKey().word()).contains(part.getValue().name());
        }
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void steps_have_names_of_their_own_and_something_to_do(Filed filed) {
        AssemblyPlan plan = AssemblyPlan.of(filed.bench());

        assertThat(Benches.steps(plan))
                .doesNotHaveDuplicates()
                .startsWith("prepare")
                .endsWith("check", "first-start", "close")
                .containsSubsequence("processor", "memory", "case", "supply", "board", "leads");
        assertThat(plan.steps()).noneMatch(step -> step.actions().isEmpty());
    }

    /** The rule book decides: only a caution or breach of rule family makes the step. */
    @ParameterizedTest
    @MethodSource("proposals")
    void the_firmware_step_is_there_just_when_the_rule_book_asks_for_an_update(Filed filed) {
        Bench bench = filed.bench();

        AssemblyPlan plan = AssemblyPlan.of(bench);

        boolean asked =
                bench.audit().findings().stream()
                        .anyMatch(
                                finding ->
                                        finding.rule().equals("family")
                                                && finding.level() != Level.NOTE
                                                && finding.text().contains("update it"));
        assertThat(plan.firmware().isPresent()).isEqualTo(asked);
        assertThat(Benches.steps(plan).contains("firmware")).isEqualTo(asked);
        if (asked) {
            assertThat(Benches.steps(plan)).containsSubsequence("firmware", "first-start");
        }
    }

    /** Counted anew from the parts: each socket is one line's plug. */
    @ParameterizedTest
    @MethodSource("proposals")
    void every_power_socket_has_its_plug(Filed filed) {
        var build = filed.record().build();
        AssemblyPlan plan = AssemblyPlan.of(filed.bench());

        Tally<Plug> board = build.board().processorPlugs().or(Tally.none());
        Tally<Plug> card =
                build.has(Slot.GRAPHICS) ? build.graphics().plugs().or(Tally.none()) : Tally.none();
        assertThat(count(plan, Lead.BOARD_POWER)).isEqualTo(1);
        assertThat(count(plan, Lead.PROCESSOR_POWER_8)).isEqualTo(board.of(Plug.EPS8));
        assertThat(count(plan, Lead.PROCESSOR_POWER_4)).isEqualTo(board.of(Plug.EPS4));
        assertThat(count(plan, Lead.CARD_POWER_8)).isEqualTo(card.of(Plug.PCIE8));
        assertThat(count(plan, Lead.CARD_POWER_6)).isEqualTo(card.of(Plug.PCIE6));
        assertThat(count(plan, Lead.CARD_POWER_16)).isEqualTo(card.of(Plug.PCIE16));
        long cabled = build.drives().stream().filter(drive -> !drive.form().m2()).count();
        assertThat(count(plan, Lead.DRIVE_POWER)).isEqualTo((int) cabled);
        assertThat(count(plan, Lead.DRIVE_DATA)).isEqualTo((int) cabled);
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void every_front_port_has_a_header_or_is_said_to_have_none(Filed filed) {
        var build = filed.record().build();
        AssemblyPlan plan = AssemblyPlan.of(filed.bench());

        Tally<FrontPort> ports = build.pcCase().frontPorts().or(Tally.none());
        Tally<FrontPort> headers = build.board().frontPorts().or(Tally.none());
        for (FrontPort port : FrontPort.values()) {
            Lead lead = Lead.valueOf("FRONT_" + port.name());
            int working = Math.min(ports.of(port), headers.of(port));
            assertThat(count(plan, lead)).as(port.word()).isEqualTo(working);
            assertThat(
                            plan.connections().stream()
                                    .anyMatch(c -> c.lead() == lead && c.count() == 0))
                    .as(port.word())
                    .isEqualTo(working < ports.of(port));
        }
        assertThat(count(plan, Lead.FRONT_SWITCHES)).isEqualTo(1);
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void every_fan_of_the_case_has_a_header_and_none_is_asked_for_more_than_it_gives(Filed filed) {
        Bench bench = filed.bench();
        AssemblyPlan plan = AssemblyPlan.of(bench);

        int caseFans = bench.it().layout().caseFans();
        boolean onSupply =
                bench.build().has(Slot.FANS)
                        && bench.build().fan().connector() == FanConnector.PERIPHERAL4;
        int fed =
                onSupply
                        ? count(plan, Lead.CASE_FAN) + count(plan, Lead.PERIPHERAL_POWER)
                        : count(plan, Lead.CASE_FAN);
        assertThat(fed).isEqualTo(caseFans);
        assertThat(plan.headers().unfed()).isZero();
        assertThat(plan.headers().uses())
                .allMatch(
                        use ->
                                use.drawMa().isEmpty()
                                        || use.limitMa().isEmpty()
                                        || use.drawMa().getAsInt() <= use.limitMa().getAsInt());
    }

    /** The flows of the plan are those the climate model cools the case with, shared out. */
    @ParameterizedTest
    @MethodSource("proposals")
    void what_comes_in_and_goes_out_adds_up_to_the_flow_of_the_case(Filed filed) {
        Bench bench = filed.bench();
        FanPlan fans = FanPlan.of(bench.it());

        double full = Workings.coolingCase(bench.it(), State.LOAD).air().fullFlowM3h();
        double load = full * bench.it().load().caseFanShare();
        assertThat(fans.balance().inM3h() + fans.balance().outM3h()).isCloseTo(load, within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void every_drive_has_a_home_and_no_two_share_one(Filed filed) {
        AssemblyPlan plan = AssemblyPlan.of(filed.bench());

        assertThat(plan.drives())
                .extracting(DriveHome::drive)
                .containsExactlyElementsOf(filed.record().build().drives());
        assertThat(plan.drives()).noneMatch(home -> home.place() == DriveHome.Place.NONE);
        assertThat(plan.drives().stream().flatMapToInt(home -> home.m2().stream()))
                .doesNotHaveDuplicates();
        assertThat(plan.drives().stream().flatMapToInt(home -> home.sataPort().stream()))
                .doesNotHaveDuplicates();
        List<Integer> lost =
                plan.drives().stream().flatMap(home -> home.lostSataPorts().stream()).toList();
        assertThat(plan.drives())
                .noneMatch(home -> home.sataPort().stream().anyMatch(lost::contains));
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void every_module_has_a_slot(Filed filed) {
        MemoryPlaces memory = AssemblyPlan.of(filed.bench()).memory();

        assertThat(memory.slots())
                .hasSize(filed.record().build().memoryModules())
                .doesNotHaveDuplicates()
                .allMatch(slot -> slot >= 1 && slot <= memory.boardSlots());
    }

    /** The rule and the plan must speak of the same cable. */
    @ParameterizedTest
    @MethodSource("proposals")
    void the_last_screen_hangs_on_the_link_that_the_rule_judged(Filed filed) {
        Bench bench = filed.bench();
        List<ScreenPlug> screens = ScreenPlug.of(bench.it());

        ScreenLink judged = new DisplayLinkRule().link(bench.it()).orElse(null);
        assertThat(screens).isNotEmpty();
        ScreenPlug last = screens.get(screens.size() - 1);
        if (judged != null) {
            assertThat(last.link().orElseThrow()).isEqualTo(judged.result());
            assertThat(last.resolution()).contains(judged.resolution());
            assertThat(last.refreshHz()).isEqualTo(judged.refreshHz());
        }
        assertThat(last.card()).isEqualTo(bench.build().has(Slot.GRAPHICS));
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void what_is_tight_is_every_length_with_under_ten_millimetres_to_spare(Filed filed) {
        Bench bench = filed.bench();

        Stream<String> expected =
                bench.audit().margins().stream()
                        .filter(line -> line.margin().unit() == Unit.MILLIMETRE)
                        .filter(line -> line.margin().have() - line.margin().need() < 10)
                        .map(line -> line.rule());
        assertThat(AssemblyPlan.of(bench).tight())
                .extracting(TightSpot::rule)
                .containsExactlyElementsOf(expected.toList());
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void the_dangers_of_mains_supply_and_static_are_always_told(Filed filed) {
        AssemblyPlan plan = AssemblyPlan.of(filed.bench());

        assertThat(plan.cautions())
                .extracting(Caution::head)
                .contains("Mains", "Stored charge", "Static", "Edges");
        assertThat(plan.cautions()).allMatch(caution -> !caution.basis().isBlank());
        assertThat(plan.cautions().get(0).text()).contains("Local electrical codes");
        boolean glass = filed.record().build().pcCase().side() != SidePanel.SOLID;
        assertThat(plan.cautions().stream().anyMatch(one -> one.head().equals("Side panel")))
                .isEqualTo(glass);
    }

    @Test
    void a_clearance_of_ten_millimetres_is_not_tight_and_of_nine_is() {
        var ten = aBuild().with(aCase().coolerHeightMm(165)).with(aCooler().heightMm(155));
        var nine = aBuild().with(aCase().coolerHeightMm(165)).with(aCooler().heightMm(156));

        assertThat(Benches.plan(ten).tight())
                .noneMatch(spot -> spot.rule().equals("cooler-height"));
        assertThat(Benches.plan(nine).tight())
                .contains(
                        new TightSpot(
                                "cooler-height", "Cooler fits under the side panel", 165, 156));
    }

    /** Common practice: over 15 kg two people lift. */
    @Test
    void a_machine_of_more_than_fifteen_kilograms_is_lifted_by_two() {
        long others = Caution.massG(aBuild().with(aCase().massG(1)).make()) - 1;

        var fifteen = Benches.plan(aBuild().with(aCase().massG((int) (15_000 - others))));
        var more = Benches.plan(aBuild().with(aCase().massG((int) (15_001 - others))));

        assertThat(fifteen.cautions()).noneMatch(one -> one.head().equals("Weight"));
        assertThat(more.cautions()).anyMatch(one -> one.head().equals("Weight"));
    }

    @Test
    void many_machines_are_warned_of_their_circuit_and_sent_to_an_electrician() {
        var plan = Benches.plan(aBuild(), aBrief().quantity(12).ceiling("90000.00"));

        Caution circuit =
                plan.cautions().stream()
                        .filter(one -> one.head().equals("Circuits"))
                        .findFirst()
                        .orElseThrow();
        assertThat(circuit.text())
                .contains("12 machines", "a circuit of 16 A bears 3680 W", "licensed electrician")
                .endsWith(CircuitLoad.DEFERRAL);
    }

    /** Check ELEC-04: 470 µF at 390 V hold 35.74 J; beside it, 176 s down to 60 V by 200 kΩ. */
    @Test
    void the_charge_in_a_supply_is_told_in_figures() {
        assertThat(Benches.plan(aBuild()).cautions())
                .filteredOn(one -> one.head().equals("Stored charge"))
                .singleElement()
                .satisfies(
                        one ->
                                assertThat(one.text())
                                        .startsWith("Never open the supply")
                                        .contains("470 µF", "36 J at 390 V", "about 3 minutes"));
    }

    @Test
    void a_build_that_lacks_a_part_is_refused() {
        var build = aBuild().without(Slot.SUPPLY);

        assertThatThrownBy(() -> Benches.plan(build))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("without supply");
    }

    private static int count(AssemblyPlan plan, Lead lead) {
        return plan.connections().stream()
                .filter(connection -> connection.lead() == lead)
                .mapToInt(Connection::count)
                .sum();
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void a_first_boot_sees_memory_drives_fans_system_and_screens(Filed filed) {
        AssemblyPlan plan = AssemblyPlan.of(filed.bench());

        String text = plan.firstBoot().toString();
        assertThat(text)
                .contains(filed.record().build().memoryGb() + " GB in")
                .contains(filed.bench().it().memoryMts() + " MT/s")
                .contains("nstall")
                .contains("Drivers");
        for (Drive drive : filed.record().build().drives()) {
            assertThat(text).contains(drive.name());
        }
        plan.screens().forEach(screen -> assertThat(text).contains(screen.picture(Texts.ENGLISH)));
        assertThat(plan.tests().toString()).contains("Memory test", "Processor under full load");
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void the_weight_that_is_told_is_the_sum_of_the_parts(Filed filed) {
        long sum = 0;
        for (var one : filed.record().build().filled().entrySet()) {
            Part part = one.getValue();
            boolean inside = one.getKey() != Slot.DISPLAY && one.getKey() != Slot.SYSTEM;
            int pieces = filed.record().build().pieces(one.getKey());
            sum +=
                    inside
                            ? (long) part.listing().mass().map(mass -> mass.grams()).or(0) * pieces
                            : 0;
        }

        assertThat(Caution.massG(filed.record().build())).isEqualTo(sum);
    }
}
