package rigbrief.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.ScreenFixture.aScreen;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Plug;
import rigbrief.part.Port;

class StandardsCheckTest {
    static List<ProposedMachine> ordinary() {
        return ProposedMachine.ALL;
    }

    @ParameterizedTest
    @MethodSource("ordinary")
    void an_ordinary_build_agrees_with_every_standard(ProposedMachine machine) {
        assertThat(cautions(machine.audit())).isEmpty();
    }

    /** Slot 75 W and one plug of eight contacts 150 W (checks PCIE-04 to PCIE-08): 225 W. */
    @Test
    void a_card_may_draw_what_slot_and_plugs_give_and_no_watt_more() {
        var card = aGraphicsCard().plugs(Plug.PCIE8, 1);

        assertThat(cautions(aBrief(), aBuild().with(card.boardPowerW(225)))).isEmpty();

        var cautions = cautions(aBrief(), aBuild().with(card.boardPowerW(226)));
        assertThat(cautions)
                .singleElement()
                .satisfies(
                        it -> {
                            assertThat(it.text()).contains("draw 226 W", "may give 225 W");
                            assertThat(it.level()).isEqualTo(Level.CAUTION);
                            assertThat(it.excess()).isZero();
                        });
    }

    /** SATA 3 carries 600 MB/s (check STO-01). */
    @Test
    void a_drive_may_be_as_quick_as_its_sata_port_and_no_quicker() {
        assertThat(cautions(aBrief(), aBuild().with(aDrive().sata25().readMbs(600)))).isEmpty();

        var cautions = cautions(aBrief(), aBuild().with(aDrive().sata25().readMbs(601)));
        assertThat(cautions)
                .extracting(AuditFinding::text)
                .singleElement()
                .satisfies(text -> assertThat(text).contains("601 MB/s", "600 MB/s"));
    }

    @Test
    void a_drive_on_another_bus_may_be_quicker() {
        assertThat(cautions(aBrief(), aBuild().with(aDrive().readMbs(3_000)))).isEmpty();
    }

    /**
     * CTA-861 times 3840 x 2160 at 120 Hz with 1188 MHz, by hand 28,512 Mbit/s at 24 bits; HDMI at
     * 4 x 8 Gbit/s carries 4 x 8000 x 16/18 = 28,444 Mbit/s and a little less.
     */
    @Test
    void a_picture_that_fits_with_reduced_blanking_alone_is_told() {
        var build = aBuild().with(aGraphicsCard().outputs(new Port("hdmi2.1-frl32", 1)));
        var brief = aBrief().screen(aScreen().mode(3840, 2160, 120).bits(8).inputs("hdmi2.1"));

        assertThat(cautions(brief, build))
                .extracting(AuditFinding::text)
                .singleElement()
                .satisfies(text -> assertThat(text).contains("at 120 Hz", "28512 Mbit/s of "));
    }

    /** The next rate carries 35 Gbit/s; DisplayPort screens have no television's manners. */
    @Test
    void a_quicker_link_or_another_sort_of_link_is_not_told() {
        var screen = aScreen().mode(3840, 2160, 120).bits(8);
        var quicker = aBuild().with(aGraphicsCard().outputs(new Port("hdmi2.1-frl40", 1)));
        var other = aBuild().with(aGraphicsCard().outputs(new Port("dp1.4", 1)));

        assertThat(cautions(aBrief().screen(screen.inputs("hdmi2.1")), quicker)).isEmpty();
        assertThat(cautions(aBrief().screen(screen.inputs("dp1.4")), other)).isEmpty();
    }

    private static List<AuditFinding> cautions(BriefFixture brief, BuildFixture build) {
        var catalogue = aCatalogue().offering(build.make()).make();
        return cautions(new Auditor(brief.make(), catalogue).audit(build.make()));
    }

    private static List<AuditFinding> cautions(Audit audit) {
        return audit.findings().stream().filter(it -> it.rule().equals(StandardsCheck.ID)).toList();
    }
}
