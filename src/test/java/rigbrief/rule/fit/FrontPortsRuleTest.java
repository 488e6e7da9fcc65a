package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.FrontPort;
import rigbrief.rule.Finding;

class FrontPortsRuleTest {
    @Test
    void ports_with_headers_are_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new FrontPortsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_port_without_a_header_is_a_caution() {
        BuildFixture build = aBuild().with(aBoard().frontPorts(FrontPort.USB_C, 0));

        Finding finding = check(new FrontPortsRule(), build);

        assertThat(finding)
                .isCaution()
                .saying("USB-C: 1 on the case, 0 on the board's headers; the rest stay dead");
    }

    @Test
    void a_needed_port_without_a_header_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aBoard().frontPorts(FrontPort.USB_C, 0));
        BriefFixture brief = aBrief().frontPorts(FrontPort.USB_C);

        Finding finding = check(new FrontPortsRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_needed_port_the_case_lacks_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aCase().frontPorts(FrontPort.USB_C, 0));
        BriefFixture brief = aBrief().frontPorts(FrontPort.USB_C);

        Finding finding = check(new FrontPortsRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("USB-C: 1 wanted, 0 on the case");
    }

    @Test
    void a_needed_port_that_works_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().frontPorts(FrontPort.USB_C, FrontPort.USB3);

        Finding finding = check(new FrontPortsRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_port_wanted_twice_is_counted_twice() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().frontPorts(FrontPort.USB3, FrontPort.USB3);

        Finding finding = check(new FrontPortsRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_header_without_a_port_is_met() {
        BuildFixture build = aBuild().with(aCase().frontPorts(FrontPort.USB3, 0));

        Finding finding = check(new FrontPortsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void empty_case_ports_are_a_caution() {
        BuildFixture build = aBuild().with(aCase().unknown("front_usb"));

        Finding finding = check(new FrontPortsRule(), build);

        assertThat(finding).isUnknown("case-1", "front_usb");
    }

    @Test
    void empty_board_headers_are_a_caution() {
        BuildFixture build = aBuild().with(aBoard().unknown("front_usb"));

        Finding finding = check(new FrontPortsRule(), build);

        assertThat(finding).isUnknown("board-1", "front_usb");
    }

    @Test
    void only_the_ports_that_lack_are_named() {
        BuildFixture build = aBuild().with(aBoard().frontPorts(FrontPort.USB_C, 0));
        BriefFixture brief = aBrief().frontPorts(FrontPort.USB3);

        Finding finding = check(new FrontPortsRule(), build, brief);

        org.assertj.core.api.Assertions.assertThat(finding.text())
                .isEqualTo("USB-C: 1 on the case, 0 on the board's headers; the rest stay dead");
    }
}
