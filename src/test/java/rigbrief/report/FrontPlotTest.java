package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.build.Build;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.proposal.budget.FrontStep;

class FrontPlotTest {
    private static final List<FrontStep> STEPS =
            List.of(
                    step(100_000, 0.20, false),
                    step(120_000, 0.60, true),
                    step(200_000, 0.80, false));

    private static FrontStep step(long totalMinor, double utility, boolean knee) {
        return new FrontStep(
                totalMinor,
                Math.round(utility * 1000),
                utility,
                0,
                List.of(),
                30,
                List.of(),
                knee,
                Build.empty());
    }

    private static List<String> plot(FrontPlot.Letters letters) {
        return new FrontPlot(STEPS, CatalogueFixture.EURO, letters).lines();
    }

    @Test
    void a_plot_fits_a_narrow_terminal_in_plain_letters() {
        assertThat(plot(FrontPlot.Letters.ASCII))
                .allMatch(line -> line.length() <= 80)
                .allMatch(line -> line.chars().allMatch(letter -> letter < 128));
    }

    @Test
    void every_build_is_a_point_and_the_knee_has_a_letter_of_its_own() {
        String plot = String.join("\n", plot(FrontPlot.Letters.ASCII));

        assertThat(plot.chars().filter(letter -> letter == '*')).hasSize(2);
        assertThat(plot.chars().filter(letter -> letter == 'K')).hasSize(1);
    }

    @Test
    void dearer_is_to_the_right_and_better_is_higher() {
        List<int[]> places = new ArrayList<>();
        List<String> lines = plot(FrontPlot.Letters.ASCII);

        for (int row = 0; row < lines.size(); row++) {
            for (int column = 0; column < lines.get(row).length(); column++) {
                if ("*K".indexOf(lines.get(row).charAt(column)) >= 0) {
                    places.add(new int[] {column, row});
                }
            }
        }

        places.sort((a, b) -> a[0] - b[0]);
        assertThat(places).hasSize(3);
        assertThat(places.get(0)[1]).isGreaterThan(places.get(1)[1]);
        assertThat(places.get(1)[1]).isGreaterThan(places.get(2)[1]);
    }

    @Test
    void the_axis_tells_the_least_and_the_most_money() {
        assertThat(plot(FrontPlot.Letters.UNICODE).get(16))
                .contains("1,000.00")
                .endsWith("2,000.00");
    }
}
