package rigbrief.proposal.clash;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HittingSetsTest {
    @Test
    void nothing_hits_no_sets_but_the_empty_set() {
        assertThat(HittingSets.minimal(List.of())).containsExactly(new BitSet());
    }

    @Test
    void an_empty_set_can_t_be_hit() {
        assertThat(HittingSets.minimal(List.of(new BitSet()))).isEmpty();
    }

    @Test
    void all_minimal_ones_are_found_and_no_others_on_two_hundred_seeded_cases() {
        for (int seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            int elements = 1 + random.nextInt(8);
            List<BitSet> sets = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(5); i++) {
                BitSet set = new BitSet();
                for (int j = 0; j <= random.nextInt(4); j++) {
                    set.set(random.nextInt(elements));
                }
                sets.add(set);
            }

            List<BitSet> found = HittingSets.minimal(sets);

            assertThat(found)
                    .as("seed %d", seed)
                    .containsExactlyInAnyOrderElementsOf(
                            ClashSetsTest.exhaustive(
                                    elements, set -> sets.stream().allMatch(set::intersects)));
        }
    }
}
