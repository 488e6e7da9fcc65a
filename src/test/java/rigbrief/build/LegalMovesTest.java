package rigbrief.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LegalMovesTest {

    @Test
    void the_way_to_the_bench_is_wanted_ordered_received_fitted() {
        assertThat(LegalMoves.usual(PartState.ORDERED)).contains(PartState.WANTED);
        assertThat(LegalMoves.usual(PartState.RECEIVED)).contains(PartState.ORDERED);
        assertThat(LegalMoves.usual(PartState.FITTED)).contains(PartState.RECEIVED);
    }

    @Test
    void nothing_comes_back_from_returned() {
        assertThat(LegalMoves.to(PartState.RETURNED)).isEmpty();
    }

    @Test
    void a_part_is_faulty_only_once_it_is_here() {
        assertThat(LegalMoves.from(PartState.FAULTY))
                .containsExactly(PartState.RECEIVED, PartState.FITTED);
    }

    @ParameterizedTest
    @EnumSource(PartState.class)
    void both_ways_of_reading_the_table_agree(PartState from) {
        for (PartState to : PartState.values()) {
            assertThat(LegalMoves.to(from).contains(to))
                    .isEqualTo(LegalMoves.from(to).contains(from));
        }
    }

    @ParameterizedTest
    @EnumSource(PartState.class)
    void no_state_comes_from_itself(PartState state) {
        assertThat(LegalMoves.from(state)).doesNotContain(state);
    }
}
