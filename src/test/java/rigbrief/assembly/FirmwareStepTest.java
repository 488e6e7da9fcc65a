package rigbrief.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;

import org.junit.jupiter.api.Test;
import rigbrief.assembly.FirmwareStep.How;
import rigbrief.fixture.BoardFixture;
import rigbrief.part.FamilySupport;

class FirmwareStepTest {

    private static BoardFixture knownFrom(String firmware) {
        return aBoard().shippedFirmware("1.20").families(new FamilySupport("heron", firmware));
    }

    @Test
    void a_board_that_knows_the_processor_wants_no_update() {
        assertThat(FirmwareStep.of(Benches.bench(aBuild().with(knownFrom("1.20"))).it())).isEmpty();
    }

    @Test
    void an_update_without_a_processor_is_preferred() {
        var board = knownFrom("1.21").firmwareWithoutProcessor(true);

        var step =
                FirmwareStep.of(
                        Benches.bench(aBuild().with(board), aBrief().helperProcessor()).it());

        assertThat(step).contains(new FirmwareStep(How.WITHOUT_PROCESSOR, "heron", "1.20", "1.21"));
    }

    @Test
    void a_helper_processor_does_it_where_the_board_cannot() {
        var bench = Benches.bench(aBuild().with(knownFrom("1.21")), aBrief().helperProcessor());

        assertThat(FirmwareStep.of(bench.it()).orElseThrow().how()).isEqualTo(How.WITH_HELPER);
    }

    @Test
    void with_neither_the_shop_has_to() {
        var bench = Benches.bench(aBuild().with(knownFrom("1.21")));

        assertThat(FirmwareStep.of(bench.it()).orElseThrow().how()).isEqualTo(How.BY_THE_SHOP);
    }

    @Test
    void the_update_comes_before_the_processor_and_long_before_the_first_start() {
        var board = knownFrom("1.21").firmwareWithoutProcessor(true);

        var steps = Benches.steps(Benches.plan(aBuild().with(board)));

        assertThat(steps).containsSubsequence("firmware", "processor", "first-start");
    }

    @Test
    void a_list_of_families_that_is_not_stated_makes_no_step_but_is_looked_at() {
        var plan = Benches.plan(aBuild().with(aBoard().unknown("families")));

        assertThat(plan.firmware()).isEmpty();
        assertThat(plan.lookAt()).anyMatch(finding -> finding.rule().equals("family"));
    }
}
