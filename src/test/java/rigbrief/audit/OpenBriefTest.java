package rigbrief.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.EURO;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.CatalogueFixture.euro;
import static rigbrief.fixture.DisplayFixture.aDisplay;
import static rigbrief.fixture.SystemFixture.aLicence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.brief.Brief.Strength;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

class OpenBriefTest {

    @Test
    void a_sound_list_of_parts_fits() {
        var filed = filed(aBuild().make());
        var catalogue = aCatalogue().offering(filed.build()).make();

        var audit = new Auditor(OpenBrief.of(filed, catalogue), catalogue).audit(filed);

        assertThat(audit.findings()).noneMatch(it -> it.level() == Level.BREACH);
    }

    /** Hand calculation: eight parts at 100.00 each, delivered free. */
    @Test
    void the_ceiling_is_the_price_of_the_list() {
        var filed = filed(aBuild().make());
        var catalogue = aCatalogue().offering(filed.build()).make();

        var brief = OpenBrief.of(filed, catalogue);

        assertThat(brief.ceiling()).isEqualTo(euro("800.00"));
    }

    @Test
    void a_list_that_nobody_offers_still_has_a_ceiling_above_nothing() {
        var filed = filed(aBuild().make());

        var brief = OpenBrief.of(filed, aCatalogue().make());

        assertThat(brief.ceiling()).isEqualTo(euro("0.01"));
    }

    @Test
    void a_display_and_a_licence_on_the_list_were_wanted() {
        var filed = filed(aBuild().with(aDisplay()).with(aLicence()).make());

        var brief = OpenBrief.of(filed, aCatalogue().offering(filed.build()).make());

        assertThat(brief.screen()).hasValueSatisfying(it -> assertThat(it.buy()).isTrue());
        assertThat(brief.system().strength()).isEqualTo(Strength.WISH);
    }

    @Test
    void a_kept_line_is_the_clients_own_and_costs_nothing() {
        var build = aBuild().make();
        var lines = new ArrayList<>(filed(build).lines());
        lines.replaceAll(
                line ->
                        line.slot() == Slot.CASE
                                ? new BuildLine(
                                        Slot.CASE,
                                        line.part(),
                                        1,
                                        Optional.empty(),
                                        Money.zero(EURO),
                                        PartState.RECEIVED,
                                        true)
                                : line);
        var filed = new BuildRecord(Optional.empty(), Optional.empty(), "", "", lines);

        var brief = OpenBrief.of(filed, aCatalogue().offering(build).make());

        assertThat(brief.keep()).hasSize(1);
        assertThat(brief.ceiling()).isEqualTo(euro("700.00"));
    }

    private static BuildRecord filed(Build build) {
        List<BuildLine> lines = new ArrayList<>();
        build.filled()
                .forEach(
                        (slot, part) ->
                                lines.add(
                                        new BuildLine(
                                                slot,
                                                part,
                                                build.pieces(slot),
                                                Optional.empty(),
                                                Money.zero(EURO),
                                                PartState.WANTED,
                                                false)));
        return new BuildRecord(Optional.empty(), Optional.empty(), "", "", lines);
    }
}
