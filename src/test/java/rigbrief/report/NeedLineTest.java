package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.audit.Auditor;
import rigbrief.build.Build;
import rigbrief.fixture.BriefFixture;

class NeedLineTest {

    @Test
    void noise_is_met_at_the_limit_and_missed_below_it() {
        var met = only(needs(aBrief().noiseMustDba(60)));
        var missed = only(needs(aBrief().noiseWishDba(15)));

        assertThat(met.met()).isTrue();
        assertThat(met.kind()).isEqualTo("must");
        assertThat(met.atMost()).isTrue();
        assertThat(missed.met()).isFalse();
        assertThat(missed.kind()).isEqualTo("wish");
        assertThat(missed.chance()).isEmpty();
    }

    @Test
    void memory_is_exact_so_its_range_is_one_value() {
        var build = aBuild().make();

        var need = only(needs(aBrief().memory(build.memoryGb(), false)));

        assertThat(need.met()).isTrue();
        assertThat(need.promised()).contains(BigDecimal.valueOf(build.memoryGb()));
        assertThat(need.low()).isEqualTo(need.high());
        assertThat(need.chance()).hasValue(1);
    }

    @Test
    void one_gb_more_than_there_is_is_not_met() {
        var build = aBuild().make();

        var need = only(needs(aBrief().memory(build.memoryGb() + 1, false)));

        assertThat(need.met()).isFalse();
        assertThat(need.chance()).hasValue(0);
    }

    @Test
    void what_the_brief_does_not_measure_is_not_listed() {
        assertThat(needs(aBrief())).isEmpty();
    }

    private static List<NeedLine> needs(BriefFixture brief) {
        Build build = aBuild().make();
        var made = brief.make();
        var audit = new Auditor(made, aCatalogue().offering(build).make()).audit(build);
        return NeedLine.of(made, audit);
    }

    private static NeedLine only(List<NeedLine> needs) {
        assertThat(needs).hasSize(1);
        return needs.get(0);
    }
}
