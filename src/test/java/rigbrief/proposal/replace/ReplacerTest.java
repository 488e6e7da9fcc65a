package rigbrief.proposal.replace;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.CatalogueFixture.euro;
import static rigbrief.fixture.ProcessorFixture.aProcessor;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Slot;

/**
 * Checks by hand calculation: every part of the build costs 100.00 at a supplier that delivers for
 * 6.90; the other supplier delivers for 4.90.
 */
class ReplacerTest {
    private static final Build BUILD = aBuild().make();
    private static final String BOARD = BUILD.board().id();
    private static final String PROCESSOR = BUILD.processor().id();
    private static final String OTHER_BOARD = "other-board";

    private static BriefFixture brief() {
        return aBrief().ceiling("2000.00").wish("quiet", 1);
    }

    private static CatalogueFixture shops() {
        return aCatalogue()
                .supplier(KESTREL, "6.90")
                .supplier(QUAY, "4.90")
                .offering(BUILD)
                .part(aBoard().id(OTHER_BOARD))
                .offer(OTHER_BOARD, QUAY, "110.00");
    }

    private static Replacement replace(BuildRecord record, Trouble trouble, Catalogue catalogue) {
        return new Replacer(Limits.usual(), Disturbance.usual(catalogue.currency()))
                .replace(record, trouble, catalogue);
    }

    private static Way least(Filed filed, Trouble trouble) {
        Catalogue catalogue = shops().make();
        return replace(filed.record(brief().make(), catalogue), trouble, catalogue).ways().get(0);
    }

    private static Trouble faulty(String part) {
        return new Trouble(List.of(), List.of(part), Map.of());
    }

    @Test
    void a_part_that_sold_out_is_replaced_and_nothing_else_changes() {
        Way way = least(Filed.of(BUILD), Trouble.without(BOARD));

        assertThat(way.changes()).hasSize(1);
        assertThat(way.changes().get(0).to().orElseThrow().id()).isEqualTo(OTHER_BOARD);
        assertThat(way.extraMinor()).isEqualTo(1_000 + 490);
        assertThat(way.refundMinor()).isZero();
        assertThat(way.proven()).isTrue();
        assertThat(way.record().line(Slot.BOARD).orElseThrow().state()).isEqualTo(PartState.WANTED);
    }

    /** Trade fact: dead memory slots mean another board of the same kind, and a rebuild. */
    @Test
    void a_board_with_dead_memory_slots_is_replaced_by_another_of_the_same() {
        Way way = least(Filed.of(BUILD).all(PartState.FITTED), faulty(BOARD));

        assertThat(way.changes()).hasSize(1);
        assertThat(way.changes().get(0).sameAgain()).isTrue();
        assertThat(way.changedSlots()).isZero();
        assertThat(way.extraMinor()).isEqualTo(690);
        assertThat(way.refundMinor()).isEqualTo(10_000);
        for (BuildLine line : way.record().lines()) {
            assertThat(line.state())
                    .as(line.slot().word())
                    .isEqualTo(line.slot() == Slot.BOARD ? PartState.WANTED : PartState.FITTED);
        }
        assertThat(way.record().aside()).hasSize(1);
        assertThat(way.record().aside().get(0).units().get(0).state()).isEqualTo(PartState.FAULTY);
        assertThat(String.join("\n", way.work()))
                .contains("lift the processor straight up")
                .contains("One module at a time")
                .contains("what stays with a slot is the board's");
        assertThat(way.workMinutes()).isEqualTo(75);
    }

    @Test
    void a_faulty_board_that_sold_out_gives_way_to_another_kind_and_all_else_stays_fitted() {
        Trouble trouble = new Trouble(List.of(BOARD), List.of(BOARD), Map.of());

        Way way = least(Filed.of(BUILD).all(PartState.FITTED), trouble);

        assertThat(way.changedSlots()).isEqualTo(1);
        assertThat(way.extraMinor()).isEqualTo(1_000 + 490);
        assertThat(way.changes().get(0).because()).endsWith("is faulty and can't be had again");
    }

    @Test
    void what_is_here_already_may_sell_out() {
        Catalogue catalogue = shops().make();
        BuildRecord record =
                Filed.of(BUILD).all(PartState.RECEIVED).record(brief().make(), catalogue);

        Replacement answer = replace(record, Trouble.without(BOARD), catalogue);

        assertThat(answer.nothingToDo()).isTrue();
        assertThat(answer.ways()).hasSize(1);
        assertThat(answer.ways().get(0).extraMinor()).isZero();
        assertThat(answer.remarks()).anyMatch(it -> it.contains("is here already"));
    }

    @Test
    void an_order_that_can_not_be_filled_comes_back_in_full() {
        Way way = least(Filed.of(BUILD).all(PartState.ORDERED), Trouble.without(BOARD));

        assertThat(way.refundMinor()).isEqualTo(10_000);
        assertThat(way.lostMinor()).isZero();
        assertThat(way.record().aside().get(0).part()).isEqualTo(BOARD);
        assertThat(way.record().aside().get(0).units().get(0).state()).isEqualTo(PartState.ORDERED);
    }

    @Test
    void a_price_rise_is_borne_while_the_ceiling_allows() {
        Catalogue catalogue = shops().make();
        BuildRecord record = Filed.of(BUILD).record(brief().make(), catalogue);
        Trouble dearer = new Trouble(List.of(), List.of(), Map.of(BOARD, euro("130.00")));

        Replacement answer = replace(record, dearer, catalogue);

        assertThat(answer.ways().get(0).changes()).isEmpty();
        assertThat(answer.ways().get(0).extraMinor()).isEqualTo(3_000);
        assertThat(answer.ways().get(1).aim()).isEqualTo(Way.Aim.CHEAPEST);
        // Cheapest of all is to leave the card at 100.00 out: nobody asked for it.
        assertThat(answer.ways().get(1).extraMinor()).isEqualTo(3_000 - 10_000);
        assertThat(answer.ways().get(1).changes().get(0).needed()).isFalse();
    }

    /** 15 % of 100.00 and postage of 6.90 are lost; an order from another shop costs 4.90. */
    @Test
    void a_board_that_is_here_goes_back_only_when_no_processor_fits_it() {
        String socket = "k9";
        Catalogue catalogue =
                shops().part(aProcessor().id("other-processor").socket(socket))
                        .offer("other-processor", QUAY, "130.00")
                        .part(aBoard().id("k9-board").socket(socket))
                        .offer("k9-board", QUAY, "110.00")
                        .part(
                                rigbrief.fixture.CoolerFixture.aCooler()
                                        .id("k9-cooler")
                                        .sockets(socket))
                        .offer("k9-cooler", QUAY, "100.00")
                        .make();
        BuildRecord record =
                Filed.of(BUILD)
                        .with(Slot.BOARD, Units.of(1, PartState.RECEIVED))
                        .record(brief().make(), catalogue);

        Way way = replace(record, Trouble.without(PROCESSOR), catalogue).ways().get(0);

        assertThat(way.changes())
                .extracting(Change::slot)
                .containsExactly(Slot.PROCESSOR, Slot.BOARD, Slot.COOLER);
        assertThat(way.changes()).allMatch(Change::needed);
        assertThat(way.changes().get(1).because()).contains("(socket)");
        assertThat(way.lostMinor()).isEqualTo(1_500 + 690);
        assertThat(way.refundMinor()).isEqualTo(10_000 - 1_500 - 690);
        assertThat(way.extraMinor()).isEqualTo(3_000 + 1_000 + 2_190 + 490);
        assertThat(way.record().aside()).extracting(it -> it.part()).containsExactly(BOARD);
    }

    @Test
    void of_forty_boards_only_the_three_faulty_ones_are_bought_again() {
        Brief desks = brief().quantity(40).ceiling("90000.00").make();
        Catalogue catalogue = shops().make();
        BuildRecord record =
                Filed.of(BUILD)
                        .all(PartState.FITTED)
                        .with(
                                Slot.BOARD,
                                Units.of(37, PartState.FITTED),
                                Units.of(3, PartState.FAULTY))
                        .record(desks, catalogue);

        Way way = replace(record, Trouble.NONE, catalogue).ways().get(0);

        assertThat(way.changes().get(0).sameAgain()).isTrue();
        assertThat(way.changes().get(0).units()).isEqualTo(3);
        assertThat(way.refundMinor()).isEqualTo(30_000);
        assertThat(way.extraMinor()).isEqualTo(690);
        assertThat(way.record().line(Slot.BOARD).orElseThrow().units())
                .extracting(units -> units.count() + " " + units.state().word())
                .containsExactly("37 fitted", "3 wanted");
        assertThat(way.workMinutes()).isEqualTo(3 * 75);
    }

    @Test
    void over_the_ceiling_there_is_no_way_out_and_what_it_would_take_is_told() {
        Catalogue catalogue = shops().make();
        Brief tight = brief().ceiling("715.00").make();
        BuildRecord record = Filed.of(BUILD).record(tight, catalogue);

        Replacement answer = replace(record, Trouble.without(BOARD), catalogue);

        assertThat(answer.impossible()).isTrue();
        assertThat(answer.proven()).isTrue();
        assertThat(answer.why())
                .anyMatch(it -> it.contains("EUR 821.80 would do") && it.contains("106.80 over"));
    }

    @Test
    void a_clients_own_part_that_is_faulty_is_bought_anew() {
        Brief keeps = brief().keeps(Slot.BOARD, BUILD.board()).make();
        Catalogue catalogue = shops().make();
        BuildRecord record = Filed.of(BUILD).record(keeps, catalogue);

        Way way = replace(record, faulty(BOARD), catalogue).ways().get(0);

        assertThat(way.changes().get(0).sameAgain()).isTrue();
        assertThat(way.extraMinor()).isEqualTo(10_000);
        assertThat(way.refundMinor()).isZero();
        assertThat(way.record().brief().orElseThrow().keep()).isEmpty();
        assertThat(way.record().line(Slot.BOARD).orElseThrow().kept()).isFalse();
    }

    @Test
    void the_parts_of_the_extra_add_up_to_it() {
        Catalogue catalogue = shops().make();
        BuildRecord record = Filed.of(BUILD).record(brief().fees("120.00", 19).make(), catalogue);

        Way way = replace(record, Trouble.without(BOARD), catalogue).ways().get(0);

        // 19 % of 14.90 is 2.83; the tax on 926.90 and on 941.80 is rounded apart from each other.
        assertThat(way.extraMinor()).isEqualTo(1_490 + 283);
    }
}
