package rigbrief.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.brief.Brief;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;

class ValidityCheckTest {

    static List<ProposedMachine> ordinary() {
        return ProposedMachine.ALL;
    }

    @ParameterizedTest
    @MethodSource("ordinary")
    void an_ordinary_build_lies_within_every_range(ProposedMachine machine) {
        assertThat(cautions(machine.audit())).isEmpty();
    }

    /** Range of the card's model: up to 600 W. */
    @Test
    void a_card_of_900_watts_is_told() {
        var build = aBuild().with(aGraphicsCard().boardPowerW(900));

        var cautions = cautions(audit(aBrief(), build));

        assertThat(cautions).extracting(AuditFinding::text).anyMatch(has("card power of 900 W"));
        assertThat(cautions.get(0).parts()).containsExactly(build.make().graphics().id());
    }

    /** Range of the air's density: up to 3,050 m. */
    @Test
    void an_altitude_of_5_000_metres_is_told() {
        var cautions = cautions(audit(at(22, 5_000), aBuild()));

        assertThat(cautions)
                .extracting(AuditFinding::text)
                .singleElement()
                .matches(has("altitude of 5000 m"));
    }

    /** Range of rooms: 5 to 40 °C. */
    @Test
    void a_room_of_60_degrees_is_told() {
        var cautions = cautions(audit(at(60, 0), aBuild()));

        assertThat(cautions)
                .extracting(AuditFinding::text)
                .anyMatch(has("room temperature of 60 °C"));
    }

    @Test
    void a_room_of_40_degrees_is_still_within() {
        assertThat(cautions(audit(at(40, 3_050), aBuild()))).isEmpty();
    }

    /** Range of the yearly energy: up to 5,000 of the 8,760 hours under load; no rule asks. */
    @Test
    void a_caution_of_a_range_breaks_nothing_and_changes_no_score() {
        var usual = audit(aBrief().wish("upgrade-room", 3), aBuild());
        var place = new Brief.Place(22, 0, 230, 24, 1, 3_000, false);

        var audit = audit(aBrief().place(place).wish("upgrade-room", 3), aBuild());

        assertThat(audit.fits()).isTrue();
        assertThat(audit.points()).isEqualTo(usual.points());
        assertThat(cautions(audit)).hasSize(1);
        assertThat(cautions(audit))
                .allSatisfy(
                        it -> {
                            assertThat(it.level()).isEqualTo(Level.CAUTION);
                            assertThat(it.excess()).isZero();
                            assertThat(it.source()).startsWith("common practice");
                        });
    }

    private static Predicate<String> has(String words) {
        return text -> text.contains(words);
    }

    private static BriefFixture at(double roomC, double altitudeM) {
        return aBrief().place(new Brief.Place(roomC, altitudeM, 230, 4, 0.3, 3_000, false));
    }

    private static Audit audit(BriefFixture brief, BuildFixture build) {
        return new Auditor(brief.make(), aCatalogue().offering(build.make()).make())
                .audit(build.make());
    }

    private static List<AuditFinding> cautions(Audit audit) {
        return audit.findings().stream().filter(it -> it.rule().equals(ValidityCheck.ID)).toList();
    }
}
