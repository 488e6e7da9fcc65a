package rigbrief.measurement.accept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.fixture.BuildFixture.aBuild;

import org.junit.jupiter.api.Test;
import rigbrief.model.pcie.PcieLink;
import rigbrief.part.Slot;

class CardLinkTest {

    /**
     * PCI Express Base Specification: 16 GT/s, 128b/130b: 31.508 GB/s on 16 lanes, 7.877 on 4. Hand
     * calculation: 0.003 x (1 / 7.877 - 1 / 31.508) s for each GB.
     */
    @Test
    void a_quarter_of_the_lanes_adds_what_the_traffic_takes_longer() {
        PcieLink full = new PcieLink(4, 16);
        PcieLink quarter = new PcieLink(4, 4);

        assertThat(CardLink.addedS(full, quarter)).isCloseTo(2.856e-4, within(1e-7));
        assertThat(CardLink.times(full, quarter)).isCloseTo(4, within(1e-12));
        assertThat(CardLink.addedS(full, full)).isZero();
    }

    @Test
    void every_narrower_link_is_narrower_than_planned() {
        PcieLink planned = CardLink.planned(aBuild().make()).orElseThrow();

        assertThat(CardLink.narrower(aBuild().make()))
                .isNotEmpty()
                .allMatch(link -> link.bytesPerSecond() < planned.bytesPerSecond());
    }

    @Test
    void a_build_without_a_card_has_no_link() {
        var build = aBuild().without(Slot.GRAPHICS).make();

        assertThat(CardLink.planned(build)).isEmpty();
        assertThat(CardLink.narrower(build)).isEmpty();
    }
}
