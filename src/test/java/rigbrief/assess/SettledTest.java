package rigbrief.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;

/**
 * Checks by hand calculation: eight parts at 100.00 each from a supplier that delivers for 6.90.
 */
class SettledTest {
    private static final Build BUILD = aBuild().make();
    private static final String BOARD = BUILD.board().id();

    private static Settled board(int units, long paidMinor, long lossMinor) {
        return new Settled(
                List.of(
                        new Settled.Holding(
                                Slot.BOARD,
                                BUILD.board(),
                                units,
                                Optional.of(KESTREL),
                                paidMinor,
                                lossMinor)),
                690);
    }

    private static Cost cost(int machines, Settled settled, Build build, boolean offered) {
        var shop = aCatalogue().supplier(KESTREL, "6.90").offering(BUILD);
        Catalogue catalogue = (offered ? shop : shop.noOffer(BOARD)).make();
        return new Assessor(aBrief().quantity(machines).make(), catalogue, settled)
                .assess(build)
                .cost();
    }

    @Test
    void a_part_that_was_ordered_counts_at_what_was_paid_and_needs_no_offer() {
        Cost cost = cost(1, board(1, 9_000, 2_000), BUILD, false);

        assertThat(cost.unavailable()).isEmpty();
        assertThat(cost.totalMinor()).isEqualTo(70_000 + 9_000 + 690 + 690);
    }

    @Test
    void what_is_lost_on_it_counts_when_another_takes_its_place() {
        Cost cost = cost(1, board(1, 9_000, 2_000), BUILD.without(Slot.BOARD), true);

        assertThat(cost.totalMinor()).isEqualTo(70_000 + 2_000 + 690 + 690);
    }

    @Test
    void only_the_packs_that_are_missing_are_bought() {
        Cost cost = cost(3, board(2, 18_000, 0), BUILD, true);

        assertThat(cost.totalMinor()).isEqualTo(3 * 70_000 + 18_000 + 10_000 + 690 + 690);
    }

    @Test
    void nothing_settled_changes_nothing() {
        assertThat(cost(1, Settled.NOTHING, BUILD, true).totalMinor()).isEqualTo(80_000 + 690);
    }

    @Test
    void a_loss_over_what_was_paid_is_refused() {
        assertThatThrownBy(() -> board(1, 100, 101))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("101 lost of 100 paid");
    }
}
