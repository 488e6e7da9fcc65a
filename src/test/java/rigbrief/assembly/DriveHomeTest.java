package rigbrief.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.DriveFixture.aDrive;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rigbrief.assembly.DriveHome.Place;
import rigbrief.part.Bus;
import rigbrief.part.M2Slot;
import rigbrief.part.Share;
import rigbrief.part.Slot;

class DriveHomeTest {

    @Test
    void a_module_that_takes_ports_away_leaves_the_disk_the_next_one() {
        var board =
                aBoard().m2(new M2Slot(80, List.of(Bus.GEN4X4)))
                        .shares(new Share(1, List.of(1, 2), List.of()));
        var build = aBuild().with(board).with(Slot.SECOND_DRIVE, aDrive().sata35());

        List<DriveHome> homes = DriveHome.of(Benches.bench(build).it());

        assertThat(homes.get(0).m2()).isEqualTo(OptionalInt.of(1));
        assertThat(homes.get(0).lostSataPorts()).containsExactly(1, 2);
        assertThat(homes.get(1).place()).isEqualTo(Place.BAY_35);
        assertThat(homes.get(1).sataPort()).isEqualTo(OptionalInt.of(3));
    }

    @Test
    void a_small_drive_without_a_bay_of_its_own_goes_on_an_adapter() {
        var build = aBuild().with(aCase().bays25(0).bays35(1)).with(Slot.DRIVE, aDrive().sata25());

        DriveHome home = DriveHome.of(Benches.bench(build).it()).get(0);

        assertThat(home.place()).isEqualTo(Place.BAY_35_ON_ADAPTER);
        assertThat(home.sataPort()).isEqualTo(OptionalInt.of(1));
    }

    @Test
    void two_small_drives_share_one_bay_and_one_adapter() {
        var build =
                aBuild().with(aCase().bays25(1).bays35(1))
                        .with(Slot.DRIVE, aDrive().sata25())
                        .with(Slot.SECOND_DRIVE, aDrive().id("drive-2").sata25());

        List<DriveHome> homes = DriveHome.of(Benches.bench(build).it());

        assertThat(homes)
                .extracting(DriveHome::place)
                .containsExactly(Place.BAY_25, Place.BAY_35_ON_ADAPTER);
        assertThat(homes)
                .extracting(DriveHome::sataPort)
                .containsExactly(OptionalInt.of(1), OptionalInt.of(2));
    }
}
