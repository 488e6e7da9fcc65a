package rigbrief.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.FanFixture.aFan;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rigbrief.assembly.FanHeaders.HeaderUse;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.FanConnector;
import rigbrief.part.FanGroup;
import rigbrief.part.FanPosition;
import rigbrief.part.IncludedFans;
import rigbrief.part.Place;
import rigbrief.wording.Texts;

class FanHeadersTest {
    private static BuildFixture threeAddedOneIncluded() {
        return aBuild().with(
                        aCase().positions(
                                        new FanPosition(Place.FRONT, List.of(new FanGroup(3, 120))),
                                        new FanPosition(Place.REAR, List.of(new FanGroup(1, 120))))
                                .includedFans(new IncludedFans(Place.REAR, new FanGroup(1, 120))))
                .with(aFan().pack(3).currentMa(200));
    }

    @Test
    void each_fan_has_a_header_of_its_own_while_they_last() {
        var build = threeAddedOneIncluded().with(aBoard().fanHeaders(4));

        FanHeaders headers = FanHeaders.of(Benches.bench(build).it());

        assertThat(headers.uses()).hasSize(4).allMatch(use -> use.fans().size() == 1);
        assertThat(headers.splitLeads()).isZero();
    }

    @Test
    void added_fans_pair_first_because_their_current_is_known() {
        var build = threeAddedOneIncluded().with(aBoard().fanHeaders(3).fanHeaderMa(1000));

        FanHeaders headers = FanHeaders.of(Benches.bench(build).it());

        assertThat(headers.splitLeads()).isEqualTo(1);
        HeaderUse pair = headers.uses().get(0);
        assertThat(pair.fans()).containsExactly("front fan 1", "front fan 2");
        assertThat(pair.drawMa()).isEqualTo(OptionalInt.of(400));
        assertThat(pair.current(Texts.ENGLISH)).isEqualTo("draws 400 mA, the header gives 1000 mA");
    }

    @Test
    void a_fan_of_the_case_has_no_stated_current() {
        var build = threeAddedOneIncluded().with(aBoard().fanHeaders(4));

        HeaderUse rear = FanHeaders.of(Benches.bench(build).it()).uses().get(3);

        assertThat(rear.fans()).containsExactly("rear fan");
        assertThat(rear.current(Texts.ENGLISH)).startsWith("draw not stated");
    }

    @Test
    void fans_beyond_two_a_header_are_counted_as_unfed() {
        var build = threeAddedOneIncluded().with(aBoard().fanHeaders(1));

        FanHeaders headers = FanHeaders.of(Benches.bench(build).it());

        assertThat(headers.uses()).hasSize(1);
        assertThat(headers.unfed()).isEqualTo(2);
    }

    @Test
    void fans_with_a_peripheral_plug_hang_on_the_supply() {
        var build =
                threeAddedOneIncluded().with(aFan().pack(3).connector(FanConnector.PERIPHERAL4));

        FanHeaders headers = FanHeaders.of(Benches.bench(build).it());

        assertThat(headers.onSupply()).hasSize(3);
        assertThat(headers.uses()).hasSize(1);
    }
}
