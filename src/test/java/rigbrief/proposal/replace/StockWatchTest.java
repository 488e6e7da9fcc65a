package rigbrief.proposal.replace;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;

import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.catalogue.Catalogue;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Slot;

class StockWatchTest {
    private static final Build BUILD = aBuild().make();
    private static final String BOARD = BUILD.board().id();
    private static final Brief BRIEF = aBrief().ceiling("2000.00").wish("quiet", 1).make();

    private static CatalogueFixture shops() {
        return aCatalogue()
                .supplier(KESTREL, "6.90")
                .supplier(QUAY, "4.90")
                .offering(BUILD)
                .part(aBoard().id("other-board"));
    }

    private static Watch watch(BuildRecord record, Catalogue today) {
        return new StockWatch(Limits.usual(), Disturbance.usual(today.currency()))
                .watch(record, today);
    }

    private static Watch.Line board(Watch watch) {
        return watch.lines().stream()
                .filter(line -> line.slot() == Slot.BOARD)
                .findFirst()
                .orElseThrow();
    }

    /** Hand calculation: 12.00 more for the part, 4.90 for a second delivery. */
    @Test
    void the_fallback_of_a_part_is_worked_out_beforehand() {
        Catalogue today = shops().offer("other-board", QUAY, "112.00").make();

        Watch watch = watch(Filed.of(BUILD).record(BRIEF, today), today);

        Way fallback = board(watch).fallback().orElseThrow();
        assertThat(fallback.changes()).hasSize(1);
        assertThat(fallback.extraMinor()).isEqualTo(1_200 + 490);
        assertThat(watch.repair()).isEmpty();
        assertThat(watch.todayMinor()).contains(watch.plannedMinor());
    }

    @Test
    void a_part_without_a_stand_in_and_with_one_offer_comes_first() {
        Catalogue today = shops().offer("other-board", QUAY, "112.00").make();

        Watch watch = watch(Filed.of(BUILD).record(BRIEF, today), today);

        assertThat(watch.orderFirst().get(0).risks())
                .containsExactly(Watch.Risk.NO_FALLBACK, Watch.Risk.SINGLE_OFFER);
        assertThat(board(watch).risks()).containsExactly(Watch.Risk.SINGLE_OFFER);
    }

    @Test
    void low_stock_long_lead_and_a_higher_price_are_told() {
        Catalogue before = shops().make();
        Catalogue today = shops().noOffer(BOARD).offer(BOARD, KESTREL, "105.00", 2, 10).make();

        Watch watch = watch(Filed.of(BUILD).record(BRIEF, before), today);

        assertThat(board(watch).risks())
                .containsExactly(
                        Watch.Risk.NO_FALLBACK,
                        Watch.Risk.LOW_STOCK,
                        Watch.Risk.SINGLE_OFFER,
                        Watch.Risk.LONG_LEAD,
                        Watch.Risk.DEARER);
        assertThat(watch.todayMinor()).contains(watch.plannedMinor() + 500);
    }

    @Test
    void a_part_that_is_gone_has_to_change_already() {
        Catalogue before = shops().make();
        Catalogue today = shops().noOffer(BOARD).offer("other-board", QUAY, "112.00").make();

        Watch watch = watch(Filed.of(BUILD).record(BRIEF, before), today);

        assertThat(board(watch).risks()).containsExactly(Watch.Risk.GONE);
        assertThat(watch.repair().orElseThrow().ways().get(0).changes()).hasSize(1);
        assertThat(watch.fails()).isFalse();
    }

    @Test
    void a_part_that_is_gone_and_that_nothing_replaces_makes_the_build_fail() {
        Catalogue before = shops().make();
        Catalogue today = shops().noOffer(BOARD).make();

        Watch watch = watch(Filed.of(BUILD).record(BRIEF, before), today);

        assertThat(watch.fails()).isTrue();
        assertThat(watch.todayMinor()).isEmpty();
    }

    @Test
    void what_is_here_is_at_no_risk() {
        Catalogue before = shops().make();
        Catalogue today = shops().noOffer(BOARD).make();

        Watch watch = watch(Filed.of(BUILD).all(PartState.RECEIVED).record(BRIEF, before), today);

        assertThat(board(watch).risks()).isEmpty();
        assertThat(watch.orderFirst()).isEmpty();
        assertThat(watch.repair()).isEmpty();
    }
}
