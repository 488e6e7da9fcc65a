package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BuildFixture.aBuild;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rigbrief.measurement.tune.HeldScenes;
import rigbrief.measurement.tune.TuneTerms;

class TuningTextTest {

    @Test
    void a_title_has_its_menu_its_cap_and_its_scenes() {
        String text = text(TuneTerms.USUAL);

        assertThat(text.replaceAll("\\s+", " "))
                .contains("Lantern Marsh")
                .contains("in the menu", "Frame cap", "Cap the rate at ")
                .contains("causeway")
                .contains("99th percentile of frame time, counted in frames");
    }

    @Test
    void a_target_out_of_reach_is_said_to_be() {
        String text = text(new TuneTerms(OptionalInt.of(900), HeldScenes.ALL, OptionalInt.empty()));

        assertThat(text).contains("900 fps can't be held in its one scene at any settings");
    }

    @Test
    void no_line_is_wider_than_the_page() {
        assertThat(text(TuneTerms.USUAL).lines())
                .allMatch(line -> TextPage.length(line) <= TextPage.WIDTH);
    }

    private static String text(TuneTerms terms) {
        return new TuningText().write(TuningJsonTest.answer(aBuild().make(), terms), Style.PLAIN);
    }
}
