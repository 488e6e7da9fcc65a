package rigbrief.pricelist;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.CatalogueFixture.euro;
import static rigbrief.fixture.FanFixture.aFan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.catalogue.Catalogue;
import rigbrief.pricelist.Match.By;
import rigbrief.pricelist.Suspicion.Kind;

/** Expected values are worked out by hand. */
class PriceImportTest {
    private static final LocalDate DAY = LocalDate.of(2026, 12, 1);
    private static final Catalogue STOCK =
            aCatalogue()
                    .part(aFan().id("fan-a"))
                    .part(aFan().id("fan-b"))
                    .offer("fan-a", KESTREL, "10.00")
                    .offer("fan-b", QUAY, "10.00")
                    .make();

    @Test
    void a_row_with_the_parts_id_changes_the_suppliers_offer() {
        var plan = plan(row("fan-a", "12.00", 7));

        assertThat(plan.sound()).isTrue();
        assertThat(plan.matches()).extracting(Match::by).containsExactly(By.ID);
        assertThat(plan.changes().get(0).percent().orElseThrow()).isEqualByComparingTo("20.0");
        assertThat(plan.changes().get(0).after().stock()).isEqualTo(7);
    }

    /** 40 % itself is allowed; a cent more is not. */
    @ParameterizedTest
    @CsvSource({"14.00,true", "14.01,false", "6.00,true", "5.99,false"})
    void a_price_may_move_by_forty_percent_and_no_more(String price, boolean sound) {
        var plan = plan(row("fan-a", price, 1));

        assertThat(plan.sound()).isEqualTo(sound);
        if (!sound) {
            assertThat(plan.suspicions())
                    .extracting(Suspicion::kind)
                    .containsExactly(Kind.PRICE_MOVED);
        }
    }

    @ParameterizedTest
    @CsvSource({"20.00,true", "20.01,false", "5.00,true", "4.99,false"})
    void a_first_price_is_held_against_those_of_other_suppliers(String price, boolean sound) {
        assertThat(plan(row("fan-b", price, 1)).sound()).isEqualTo(sound);
    }

    @Test
    void stock_below_zero_is_suspicious_and_is_none_once_accepted() {
        var rows = List.of(row("fan-a", "10.00", -2));

        assertThat(plan(rows, Verdicts.NONE).suspicions())
                .extracting(Suspicion::kind)
                .containsExactly(Kind.STOCK_NEGATIVE);
        var accepted = plan(rows, new Verdicts(Map.of(), Set.of(2), Set.of()));
        assertThat(accepted.sound()).isTrue();
        assertThat(accepted.changes().get(0).after().stock()).isZero();
    }

    @Test
    void one_part_twice_is_suspicious_until_one_row_is_called_right() {
        var rows = List.of(row("fan-a", "10.00", 1), row(3, "fan-a", "11.00", 1));

        assertThat(plan(rows, Verdicts.NONE).suspicions())
                .extracting(Suspicion::kind)
                .containsExactly(Kind.TWICE);
        var accepted = plan(rows, new Verdicts(Map.of(), Set.of(3), Set.of()));
        assertThat(accepted.changes())
                .extracting(change -> change.after().price())
                .containsExactly(euro("11.00"));
    }

    @Test
    void an_older_list_is_suspicious() {
        var old = new PriceRow(2, "", "fan-a", "", "", "", euro("10.00"), 1, 1, DAY.minusYears(1));

        assertThat(plan(List.of(old), Verdicts.NONE).suspicions())
                .extracting(Suspicion::kind)
                .containsExactly(Kind.OLDER);
    }

    @Test
    void a_skipped_row_is_as_if_it_were_not_there() {
        var plan =
                plan(
                        List.of(row("fan-a", "99.00", -1)),
                        new Verdicts(Map.of(), Set.of(), Set.of(2)));

        assertThat(plan.sound()).isTrue();
        assertThat(plan.changes()).isEmpty();
    }

    @Test
    void a_suggested_part_is_taken_only_when_it_is_named() {
        String name = STOCK.part("fan-a").orElseThrow().name();
        var row = new PriceRow(2, "", "", "", "", name, euro("10.00"), 1, 1, DAY);

        var asIs = plan(List.of(row), Verdicts.NONE);
        assertThat(asIs.changes()).isEmpty();
        assertThat(asIs.unmatched().get(0).suggestions())
                .extracting(suggestion -> suggestion.part().id())
                .contains("fan-a");

        var named = plan(List.of(row), new Verdicts(Map.of(2, "fan-a"), Set.of(), Set.of()));
        assertThat(named.matches()).extracting(Match::by).containsExactly(By.ACCEPTED);
    }

    @Test
    void the_map_knows_a_number_for_good() {
        var row = new PriceRow(2, "K-1", "", "", "", "", euro("10.00"), 1, 1, DAY);
        var list = new PriceList(KESTREL, List.of(row), 0, Map.of("K-1", "fan-a"), false);

        assertThat(PriceImport.plan(STOCK, list, Verdicts.NONE).matches())
                .extracting(Match::by)
                .containsExactly(By.MAP);
    }

    @Test
    void what_the_list_does_not_name_is_left_or_sold_out_as_the_map_says() {
        var row = row("fan-b", "10.00", 1);
        var left = new PriceList(KESTREL, List.of(row), 0, Map.of(), false);
        var gone = new PriceList(KESTREL, List.of(row), 0, Map.of(), true);

        assertThat(PriceImport.plan(STOCK, left, Verdicts.NONE).changes()).hasSize(1);
        var plan = PriceImport.plan(STOCK, gone, Verdicts.NONE);
        assertThat(plan.changes()).hasSize(2);
        assertThat(plan.changes().get(1).sellsOut()).isTrue();
    }

    private static PriceRow row(String id, String price, int stock) {
        return row(2, id, price, stock);
    }

    private static PriceRow row(int line, String id, String price, int stock) {
        return new PriceRow(line, "", id, "", "", "", euro(price), stock, 2, DAY);
    }

    private static ImportPlan plan(PriceRow row) {
        return plan(List.of(row), Verdicts.NONE);
    }

    private static ImportPlan plan(List<PriceRow> rows, Verdicts verdicts) {
        var list = new PriceList(KESTREL, new ArrayList<>(rows), 0, Map.of(), false);
        return PriceImport.plan(STOCK, list, verdicts);
    }
}
