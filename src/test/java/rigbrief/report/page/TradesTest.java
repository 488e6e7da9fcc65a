package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.build.Build;
import rigbrief.part.Slot;

class TradesTest {
    private static final Build ORDINARY = aBuild().make();
    private static final Build MORE_MEMORY = aBuild().with(aMemoryKit().id("other"), 2).make();

    private final Trades trades = new Trades(Words.of(Locale.UK));

    private static Audit audit(Build build) {
        return new Auditor(
                        aBrief().make(),
                        aCatalogue().offering(MORE_MEMORY).offering(ORDINARY).make())
                .audit(build);
    }

    @Test
    void a_build_has_nothing_over_itself() {
        assertThat(trades.better(audit(ORDINARY), audit(ORDINARY))).isEmpty();
        assertThat(trades.worse(audit(ORDINARY), audit(ORDINARY))).isEmpty();
        assertThat(trades.changes(ORDINARY, ORDINARY)).isEmpty();
    }

    @Test
    void what_is_better_one_way_is_worse_the_other_way() {
        Audit one = audit(ORDINARY);
        Audit other = audit(MORE_MEMORY);

        assertThat(trades.better(one, other)).hasSameSizeAs(trades.worse(other, one));
        assertThat(trades.worse(one, other)).hasSameSizeAs(trades.better(other, one));
    }

    @Test
    void another_part_is_named_with_the_one_it_replaces() {
        assertThat(trades.changes(MORE_MEMORY, ORDINARY))
                .singleElement()
                .asString()
                .isEqualTo(
                        "Memory: 2 x %s instead of %s"
                                .formatted(MORE_MEMORY.memory().name(), ORDINARY.memory().name()));
    }

    @Test
    void a_place_that_is_filled_or_emptied_says_so() {
        Build without = ORDINARY.without(Slot.GRAPHICS);
        String card = ORDINARY.graphics().name();

        assertThat(trades.changes(ORDINARY, without))
                .containsExactly("Graphics card: " + card + " in addition");
        assertThat(trades.changes(without, ORDINARY)).containsExactly("Graphics card: no " + card);
    }
}
