package rigbrief.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MemoryPlacesTest {

    /** Common practice: two modules go to the second and fourth slot from the processor. */
    @ParameterizedTest
    @CsvSource({"4,2,'2,4'", "4,1,'2'", "4,4,'1,2,3,4'", "2,2,'1,2'", "2,1,'2'", "8,4,'2,4,6,8'"})
    void modules_go_to_every_second_slot_first(int slots, int modules, String places) {
        var build = aBuild().with(aBoard().memorySlots(slots)).with(aMemoryKit().modules(modules));

        MemoryPlaces found = MemoryPlaces.of(build.make());

        List<Integer> expected =
                java.util.Arrays.stream(places.split(",")).map(Integer::valueOf).toList();
        assertThat(found.slots()).isEqualTo(expected);
        assertThat(found.first()).isEqualTo(2);
    }
}
