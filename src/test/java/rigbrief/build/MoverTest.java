package rigbrief.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rigbrief.build.MoveFixture.DAY;
import static rigbrief.build.MoveFixture.desks;
import static rigbrief.build.MoveFixture.move;
import static rigbrief.build.MoveFixture.to;
import static rigbrief.build.MoveFixture.units;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.euro;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rigbrief.part.Slot;

class MoverTest {

    @Test
    void all_wanted_units_are_ordered_from_the_planned_supplier() throws MoveRefused {
        var after = move(desks(40), to(PartState.ORDERED));

        assertThat(units(after))
                .containsExactly(
                        new Units(
                                40,
                                PartState.ORDERED,
                                Optional.of(DAY),
                                Optional.of(KESTREL),
                                Optional.empty(),
                                Optional.empty()));
        assertThat(after.history()).hasSize(1);
    }

    @Test
    void some_units_part_from_the_others_and_the_line_is_as_far_as_the_last() throws MoveRefused {
        var ordered = move(desks(40), to(PartState.ORDERED));

        var after = move(ordered, to(PartState.RECEIVED).count(38));

        assertThat(units(after))
                .extracting(units -> units.count() + " " + units.state().word())
                .containsExactly("2 ordered", "38 received");
        assertThat(after.lines().get(0).state()).isEqualTo(PartState.ORDERED);
    }

    @Test
    void for_a_faulty_part_that_goes_back_a_new_one_is_wanted() throws MoveRefused {
        var record = move(desks(1), to(PartState.ORDERED).paid("99.00"));
        record = move(record, to(PartState.RECEIVED));
        record = move(record, to(PartState.FAULTY));

        record = move(record, to(PartState.RETURNED).refunded("90.00"));

        assertThat(units(record))
                .containsExactly(
                        Units.of(1, PartState.WANTED),
                        new Units(
                                1,
                                PartState.RETURNED,
                                Optional.of(DAY),
                                Optional.of(KESTREL),
                                Optional.of(euro("99.00")),
                                Optional.of(euro("90.00"))));
    }

    @Test
    void the_longest_ordered_come_first() throws MoveRefused {
        var record = move(desks(4), to(PartState.ORDERED).count(2).on(DAY.plusDays(1)));
        record = move(record, to(PartState.ORDERED).supplier(QUAY));

        record = move(record, to(PartState.RECEIVED).count(2).on(DAY.plusDays(3)));

        assertThat(units(record))
                .extracting(units -> units.state().word() + " " + units.supplier().orElseThrow())
                .containsExactly("ordered " + KESTREL, "received " + QUAY);
    }

    @Test
    void what_has_not_come_cannot_be_fitted_and_what_can_be_done_is_told() {
        assertThatThrownBy(() -> move(desks(2), to(PartState.FITTED)))
                .isInstanceOf(MoveRefused.class)
                .hasMessage(
                        "found 2 wanted of board-a, expected some that are received, from where"
                                + " they come to fitted; possible now: ordered, received");
    }

    @Test
    void an_earlier_day_than_the_last_is_refused() throws MoveRefused {
        var ordered = move(desks(1), to(PartState.ORDERED));

        assertThatThrownBy(() -> move(ordered, to(PartState.RECEIVED).on(DAY.minusDays(1))))
                .hasMessage(
                        "--date: found 2026-11-20, expected 2026-11-21 or later, the day from which"
                                + " board-a was ordered; correct it");
    }

    @Test
    void one_of_many_is_faulty_only_when_it_is_said_how_many() throws MoveRefused {
        var received = move(desks(40), to(PartState.RECEIVED));

        assertThatThrownBy(() -> move(received, to(PartState.FAULTY)))
                .hasMessageContaining("add --units 1");
        assertThat(units(move(received, to(PartState.FAULTY).count(1)))).hasSize(2);
    }

    @Test
    void units_in_two_states_are_told_apart_by_the_state_they_come_from() throws MoveRefused {
        var received = move(desks(2), to(PartState.RECEIVED));
        var both = move(received, to(PartState.FITTED).count(1));

        assertThatThrownBy(() -> move(both, to(PartState.FAULTY).count(1)))
                .hasMessage(
                        "found units of board-a that are received and fitted, expected one of"
                                + " these; add --from received or fitted");
        assertThat(units(move(both, to(PartState.FAULTY).count(1).from(PartState.FITTED))))
                .extracting(Units::state)
                .containsExactly(PartState.RECEIVED, PartState.FAULTY);
    }

    @Test
    void a_paid_order_is_not_cancelled_without_a_word_about_the_money() throws MoveRefused {
        var paid = move(desks(1), to(PartState.ORDERED).paid("99.00"));

        assertThatThrownBy(() -> move(paid, to(PartState.WANTED)))
                .hasMessageContaining("write returned");
        assertThat(move(paid, to(PartState.RETURNED)).lines().get(0).state())
                .isEqualTo(PartState.WANTED);
    }

    @Test
    void more_money_than_was_paid_does_not_come_back() throws MoveRefused {
        var paid = move(desks(1), to(PartState.ORDERED).paid("99.00"));

        assertThatThrownBy(() -> move(paid, to(PartState.RETURNED).refunded("99.01")))
                .hasMessageContaining("no more than what was paid for each board-a, 99.00");
    }

    @Test
    void what_was_paid_can_be_noted_later() throws MoveRefused {
        var ordered = move(desks(1), to(PartState.ORDERED));

        var later = move(ordered, to(PartState.ORDERED).on(DAY.plusDays(9)).paid("99.00"));

        assertThat(units(later).get(0).paid()).contains(euro("99.00"));
        assertThat(units(later).get(0).since()).contains(DAY);
    }

    @Test
    void a_replaced_part_is_set_aside_and_nothing_of_its_order_is_lost() throws MoveRefused {
        var ordered = move(desks(2), to(PartState.ORDERED).count(1).paid("99.00"));

        var swapped =
                ordered.swapped(
                        MoveFixture.line("board-b"),
                        DAY,
                        Optional.of("Ida"),
                        Optional.of("sold out"));

        assertThat(swapped.line(Slot.BOARD).orElseThrow().part().id()).isEqualTo("board-b");
        assertThat(swapped.aside()).hasSize(1);
        assertThat(swapped.aside().get(0).units())
                .extracting(units -> units.count() + " " + units.state().word())
                .containsExactly("1 ordered");
        var returned = move(swapped, to(PartState.RETURNED).refunded("99.00"));
        assertThat(returned.aside().get(0).units())
                .extracting(Units::state)
                .containsExactly(PartState.RETURNED);
        assertThat(returned.history()).hasSize(3);
    }

    /**
     * Whatever is done in whatever order: the units that are not returned stay as many as the
     * machines need, every move is in the table, and the history replayed gives the states.
     */
    @Property(tries = 300)
    void no_unit_is_lost_and_the_history_tells_the_states(@ForAll long seed) {
        Random random = new Random(seed);
        int machines = 1 + random.nextInt(12);
        BuildRecord record = desks(machines);

        for (int i = 0; i < 30; i++) {
            record = moved(record, randomMove(random, machines, i));
        }

        assertThat(live(record)).isEqualTo(machines);
        assertThat(counts(units(record))).isEqualTo(replayed(record, machines));
        record.history().stream()
                .map(HistoryEntry.Move.class::cast)
                .forEach(move -> assertThat(LegalMoves.from(move.to())).contains(move.from()));
    }

    private static MoveFixture randomMove(Random random, int machines, int day) {
        PartState[] states = PartState.values();
        MoveFixture move = to(states[random.nextInt(states.length)]).on(DAY.plusDays(day));
        if (random.nextBoolean()) {
            move.count(1 + random.nextInt(machines));
        }
        if (random.nextInt(3) == 0) {
            move.from(states[random.nextInt(states.length)]);
        }
        return move;
    }

    private static BuildRecord moved(BuildRecord record, MoveFixture move) {
        try {
            return move(record, move);
        } catch (MoveRefused refused) {
            return record;
        }
    }

    private static int live(BuildRecord record) {
        return units(record).stream()
                .filter(units -> units.state() != PartState.RETURNED)
                .mapToInt(Units::count)
                .sum();
    }

    private static Map<PartState, Integer> counts(List<Units> units) {
        Map<PartState, Integer> counts = new EnumMap<>(PartState.class);
        units.forEach(each -> counts.merge(each.state(), each.count(), Integer::sum));
        return counts;
    }

    private static Map<PartState, Integer> replayed(BuildRecord record, int machines) {
        Map<PartState, Integer> counts = new EnumMap<>(PartState.class);
        counts.put(PartState.WANTED, machines);
        for (HistoryEntry entry : record.history()) {
            var move = (HistoryEntry.Move) entry;
            counts.merge(move.from(), -move.count(), Integer::sum);
            counts.merge(move.to(), move.count(), Integer::sum);
            if (move.to() == PartState.RETURNED) {
                counts.merge(PartState.WANTED, move.count(), Integer::sum);
            }
        }
        counts.values().removeIf(count -> count == 0);
        return counts;
    }
}
