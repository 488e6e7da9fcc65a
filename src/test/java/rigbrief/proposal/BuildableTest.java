package rigbrief.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.anEmptyBuild;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.CatalogueFixture.euro;
import static rigbrief.fixture.DriveFixture.aDrive;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Slot;

/** Expected numbers are counted by hand. */
class BuildableTest {
    private static final Build BOARD_ALONE = anEmptyBuild().with(aBoard().id("board-a")).make();
    private static final Brief FORTY = aBrief().quantity(40).make();

    @Test
    void an_order_may_reach_further_split_between_suppliers_than_whole() {
        var it = Buildable.of(BOARD_ALONE, FORTY, boards(25, 12));

        assertThat(it.whole()).isEqualTo(25);
        assertThat(it.split()).isEqualTo(37);
        assertThat(it.limits())
                .extracting(limit -> limit.part().id() + " " + limit.stock())
                .containsExactly("board-a 37");
    }

    @Test
    void more_than_enough_is_all_that_is_wanted() {
        var it = Buildable.of(BOARD_ALONE, FORTY, boards(41, 0));

        assertThat(it.whole()).isEqualTo(40);
        assertThat(it.limits()).isEmpty();
    }

    @Test
    void one_supplier_at_most_means_the_stock_of_one() {
        var brief = aBrief().quantity(40).atMostSuppliers(1).make();

        assertThat(Buildable.of(BOARD_ALONE, brief, boards(25, 12)).split()).isEqualTo(25);
    }

    @Test
    void what_comes_too_late_does_not_count() {
        var brief = aBrief().quantity(40).withinDays(2).make();

        // Every offer of the fixture takes three days.
        assertThat(Buildable.of(BOARD_ALONE, brief, boards(25, 12)).split()).isZero();
    }

    /** 30 drives, two in each machine, one in each slot: 15 machines. */
    @Test
    void a_part_in_two_slots_has_one_stock() {
        var drive = aDrive().id("drive-a");
        Build two = anEmptyBuild().with(Slot.DRIVE, drive).with(Slot.SECOND_DRIVE, drive).make();
        Catalogue stock =
                aCatalogue().part(drive.make()).offer("drive-a", KESTREL, "50.00", 30, 3).make();

        var it = Buildable.of(two, FORTY, stock);

        assertThat(it.split()).isEqualTo(15);
        assertThat(it.limits().get(0).pieces()).isEqualTo(2);
    }

    /** 10 ordered, 5 here, 3 faulty, 22 wanted; 20 on offer: 35 machines. */
    @Test
    void what_is_ordered_or_here_counts_beside_the_stock() {
        var line =
                new BuildLine(
                        Slot.BOARD,
                        aBoard().id("board-a").make(),
                        1,
                        Optional.of(KESTREL),
                        euro("100.00"),
                        PartState.WANTED,
                        false,
                        List.of(
                                Units.of(10, PartState.ORDERED),
                                Units.of(5, PartState.RECEIVED),
                                Units.of(3, PartState.FAULTY),
                                Units.of(22, PartState.WANTED)));
        var filed = new BuildRecord(Optional.of(FORTY), Optional.empty(), "f", "d", List.of(line));

        var it = Buildable.of(filed, FORTY, boards(20, 0));

        assertThat(it.split()).isEqualTo(35);
        assertThat(it.limits().get(0).have()).isEqualTo(15);
    }

    private static Catalogue boards(int kestrel, int quay) {
        CatalogueFixture catalogue = aCatalogue().part(aBoard().id("board-a").make());
        catalogue.offer("board-a", KESTREL, "100.00", kestrel, 3);
        return catalogue.offer("board-a", QUAY, "90.00", quay, 3).make();
    }
}
