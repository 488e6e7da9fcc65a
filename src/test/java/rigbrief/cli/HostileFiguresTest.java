package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures that are none, or that no sum should be made of unseen. */
class HostileFiguresTest extends HostileInput {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "-Infinity",
                "-0",
                "-0.00",
                "1e400",
                "1e-400",
                "1e2",
                "0x10",
                "100000001",
                "9223372036854775808",
                "600.001",
                "\u0666\u0660\u0660"
            })
    void odd_figures_are_no_ceiling(String figure) throws IOException {
        assertThat(
                        refusedBrief(
                                shop.text("brief.yaml")
                                        .replace("ceiling: 600", "ceiling: " + figure)))
                .contains("brief.yaml:3:10: ceiling: found \"" + figure + "\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "-1",
                "1e400",
                "100000000.01",
                "9223372036854775808",
                "58,50"
            })
    void odd_figures_are_no_price(String figure) throws IOException {
        put(
                "catalog/offers.csv",
                shop.text("catalog/offers.csv")
                        .replace(",quaymark,58.50,", ",quaymark,\"" + figure + "\","));

        assertThat(refused("catalog", "stats", "--catalog", shop.file("catalog")))
                .contains("price: found \"" + figure + "\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2147483648", "-1", "1.5", "NaN", "1000000001", "99999999999999999999"})
    void odd_figures_are_no_stock(String figure) throws IOException {
        put(
                "catalog/offers.csv",
                shop.text("catalog/offers.csv")
                        .replace(",quaymark,58.50,EUR,24,", ",quaymark,58.50,EUR," + figure + ","));

        assertThat(refused("catalog", "stats", "--catalog", shop.file("catalog")))
                .contains("stock: found \"" + figure + "\"");
    }

    @Test
    void very_long_numbers_are_refused_in_yaml_and_json_alike() throws IOException {
        String long_ = "9".repeat(100_000);

        assertThat(
                        refusedBrief(
                                shop.text("brief.yaml")
                                        .replace("ceiling: 600", "ceiling: " + long_)))
                .contains("brief.yaml:3:10: ceiling: ");
        assertThat(refusedBrief("{\"currency\": \"EUR\", \"ceiling\": " + long_ + "}"))
                .contains("brief.yaml:1:");
    }

    /** Highest price and number that are read; the sum by hand: 100000000.00 x 10000 machines. */
    @Test
    void the_dearest_parts_ten_thousand_times_add_up_exactly() throws IOException {
        String dear =
                shop.text("catalog/offers.csv")
                                .lines()
                                .map(
                                        line ->
                                                line.startsWith("part,")
                                                        ? line
                                                        : line.replaceAll(
                                                                "^([^,]+,[^,]+),[^,]+,EUR,[0-9]+,",
                                                                "$1,100000000.00,EUR,1000000,"))
                                .collect(Collectors.joining("\n"))
                        + "\n";
        put("catalog/offers.csv", dear);
        put(
                "brief.yaml",
                shop.text("brief.yaml")
                        .replace("ceiling: 600", "ceiling: 100000000\nquantity: 10000"));

        ExitStatus audit =
                captured.run(
                        "audit",
                        shop.file("list.txt"),
                        "--brief",
                        shop.file("brief.yaml"),
                        "--format",
                        "json",
                        "--catalog",
                        shop.file("catalog"));

        assertThat(audit).as(captured.err()).isEqualTo(ExitStatus.BREAKS);
        // Eight parts, two of them alike: 7 lines, 8 pieces; 8 x 1e8 x 1e4.
        assertThat(captured.out()).contains("8000000000000.00");
        ExitStatus propose =
                new Captured()
                        .run("propose", shop.file("brief.yaml"), "--catalog", shop.file("catalog"));
        assertThat(propose).isEqualTo(ExitStatus.IMPOSSIBLE);
    }
}
