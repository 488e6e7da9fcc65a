package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.measurement.accept.SheetLine;

class SheetTextTest {
    private static final String TEXT = new SheetText().write(SheetJsonTest.answer(), Style.PLAIN);

    @Test
    void cautions_come_before_anything_is_touched() {
        assertThat(TEXT.indexOf("pull the lead out")).isBetween(0, TEXT.indexOf("Look it over"));
        assertThat(TEXT)
                .contains("never open the supply", "let coolers, card and drives cool")
                .contains("manuals of the parts' makers");
    }

    @Test
    void every_part_of_the_test_has_its_head() {
        for (SheetLine.Station station : SheetLine.Station.values()) {
            assertThat(TEXT).contains("\n" + station.title() + "\n");
        }
    }

    @Test
    void what_was_promised_stands_beside_what_is_expected() {
        assertThat(TEXT.replaceAll("\\s+", " ")).contains("promised", "at most 45");
    }

    @Test
    void no_line_is_wider_than_the_page() {
        assertThat(TEXT.lines()).allMatch(line -> TextPage.length(line) <= TextPage.WIDTH);
    }
}
