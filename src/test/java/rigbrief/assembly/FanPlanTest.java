package rigbrief.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.FanFixture.aFan;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigbrief.assembly.AirBalance.Lean;
import rigbrief.assembly.FanPlan.Direction;
import rigbrief.assembly.FanPlan.Origin;
import rigbrief.assembly.FanPlan.PlacedFan;
import rigbrief.fixture.CaseFixture;
import rigbrief.part.FanGroup;
import rigbrief.part.FanPosition;
import rigbrief.part.IncludedFans;
import rigbrief.part.Place;
import rigbrief.part.RadiatorPosition;

class FanPlanTest {
    private static CaseFixture twoInOneOut() {
        return aCase().positions(
                        new FanPosition(Place.FRONT, List.of(new FanGroup(2, 120))),
                        new FanPosition(Place.TOP, List.of(new FanGroup(2, 120))),
                        new FanPosition(Place.REAR, List.of(new FanGroup(1, 120))))
                .includedFans(
                        new IncludedFans(Place.FRONT, new FanGroup(2, 120)),
                        new IncludedFans(Place.REAR, new FanGroup(1, 120)));
    }

    /** Common practice: cool air in at the front and below, warm air out behind and above. */
    @ParameterizedTest
    @EnumSource(Place.class)
    void warm_air_leaves_behind_and_above(Place place) {
        boolean out = place == Place.REAR || place == Place.TOP;

        assertThat(Direction.at(place)).isEqualTo(out ? Direction.OUT : Direction.IN);
    }

    /**
     * Three like fans, free flow 80 m³/h and 12 Pa each, against K = 0.0008: by hand Q = 2 A / (1 +
     * sqrt(1 + 4 K A B)) with A = 240, B = 20 is 95.148 m³/h at full speed (K Q² = 7.242 Pa, and
     * 240 x (1 - 7.242 / 12) gives the same again), a third of it each.
     */
    @Test
    void the_fans_share_the_operating_point_of_the_case() {
        FanPlan plan = FanPlan.of(Benches.bench(aBuild().with(twoInOneOut())).it());

        double each = 95.148 / 3 * plan.speedShare();
        assertThat(plan.balance().inM3h()).isCloseTo(2 * each, within(0.05));
        assertThat(plan.balance().outM3h()).isCloseTo(each, within(0.05));
        assertThat(plan.balance().lean()).isEqualTo(Lean.IN);
    }

    @Test
    void a_side_without_fans_is_left_empty() {
        FanPlan plan = FanPlan.of(Benches.bench(aBuild().with(twoInOneOut())).it());

        assertThat(plan.free())
                .containsExactly(new FanPlan.FreePosition(Place.TOP, new FanGroup(2, 120)));
    }

    @Test
    void added_fans_are_told_from_those_of_the_case() {
        var pcCase = twoInOneOut().includedFans(new IncludedFans(Place.REAR, new FanGroup(1, 120)));

        FanPlan plan = FanPlan.of(Benches.bench(aBuild().with(pcCase).with(aFan())).it());

        assertThat(plan.fans())
                .extracting(PlacedFan::place, PlacedFan::origin)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Place.FRONT, Origin.ADDED),
                        org.assertj.core.groups.Tuple.tuple(Place.REAR, Origin.CASE));
    }

    @Test
    void a_radiator_takes_the_place_of_the_fans_behind_it_and_blows_as_they_would() {
        var pcCase =
                twoInOneOut()
                        .includedFans(
                                new IncludedFans(Place.FRONT, new FanGroup(2, 120)),
                                new IncludedFans(Place.TOP, new FanGroup(2, 120)))
                        .radiators(new RadiatorPosition(Place.TOP, List.of(240), 30));
        var build = aBuild().with(pcCase).with(aCooler().liquid(240).fans(2));

        FanPlan plan = FanPlan.of(Benches.bench(build).it());

        assertThat(plan.fans())
                .extracting(PlacedFan::place, PlacedFan::origin, PlacedFan::direction)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Place.FRONT, Origin.CASE, Direction.IN),
                        org.assertj.core.groups.Tuple.tuple(
                                Place.TOP, Origin.RADIATOR, Direction.OUT));
        assertThat(plan.balance().radiatorFans()).isEqualTo(2);
        assertThat(plan.balance().words(rigbrief.wording.Texts.ENGLISH))
                .contains("radiator's 2 fans blow out");
    }

    /** Common practice: within a tenth of the larger flow both ways count as even. */
    @Test
    void a_tenth_apart_is_even_and_a_little_more_is_not() {
        assertThat(lean(100, 90)).isEqualTo(Lean.EVEN);
        assertThat(lean(100, 89.9)).isEqualTo(Lean.IN);
        assertThat(lean(89.9, 100)).isEqualTo(Lean.OUT);
        assertThat(lean(0, 0)).isEqualTo(Lean.STILL);
    }

    private static Lean lean(double inM3h, double outM3h) {
        return AirBalance.of(
                        List.of(
                                new PlacedFan(Place.FRONT, 1, 120, Origin.CASE, inM3h),
                                new PlacedFan(Place.REAR, 1, 120, Origin.CASE, outM3h)))
                .lean();
    }
}
