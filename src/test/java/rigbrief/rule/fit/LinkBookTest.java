package rigbrief.rule.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.model.link.LinkResult;
import rigbrief.part.Port;
import rigbrief.part.Resolution;

class LinkBookTest {
    private static final LinkBook.Mode MODE = new LinkBook.Mode(new Resolution(3840, 2160), 120, 8);

    private final LinkBook book = new LinkBook();

    @Test
    void the_same_question_has_the_same_answer() {
        Port output = new Port("dp1.4", 3);

        LinkResult first = book.best(output, List.of(new Port("dp1.4", 1)), MODE);
        LinkResult second = book.best(output, List.of(new Port("dp1.4", 2)), MODE);

        assertThat(second).isSameAs(first);
    }

    @Test
    void an_uncompressed_link_is_better_than_a_compressed_one() {
        List<Port> inputs = List.of(new Port("hdmi2.0", 1), new Port("dp1.4", 1));

        LinkResult best = book.best(new Port("dp1.4", 1), inputs, MODE);

        assertThat(best.carried()).isEqualTo(LinkResult.Carried.UNCOMPRESSED);
        assertThat(LinkBook.rank(best)).isZero();
    }

    @Test
    void what_lacks_is_rounded_up_to_whole_megabits() {
        LinkResult result = book.best(new Port("dp1.2", 1), List.of(new Port("dp1.4", 1)), MODE);

        // By hand: 1075.804 MHz x 24 bits less 4 x 5.4 Gbit/s x 0.8 = 8,539.296 Mbit/s.
        assertThat(LinkBook.lackingMbit(result)).isEqualTo(8_540);
    }

    @Test
    void of_inputs_that_are_alike_the_one_listed_first_is_told() {
        LinkBook.Mode small = new LinkBook.Mode(new Resolution(1920, 1080), 60, 8);
        Port old = new Port("dp1.2", 1);
        Port young = new Port("dp1.4", 1);

        // By hand: four lanes of 5.4 and of 8.1 Gbit/s at 8b/10b; both carry the picture.
        assertThat(book.best(young, List.of(old, young), small).availableBitsPerSecond())
                .isEqualTo(17_280_000_000L);
        assertThat(book.best(young, List.of(young, old), small).availableBitsPerSecond())
                .isEqualTo(25_920_000_000L);
    }
}
