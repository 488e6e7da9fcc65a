package rigbrief.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;
import static rigbrief.fixture.ProcessorFixture.aProcessor;
import static rigbrief.fixture.SupplyFixture.aSupply;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.brief.Brief.Strength;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.FamilySupport;
import rigbrief.part.Lighting;
import rigbrief.part.Plug;
import rigbrief.part.WirelessStandard;
import rigbrief.rule.fit.BraceRule;
import rigbrief.rule.fit.CoolerHeightRule;
import rigbrief.rule.fit.FamilyRule;
import rigbrief.rule.fit.MemoryUnderCoolerRule;
import rigbrief.rule.fit.SupplyLoadRule;
import rigbrief.rule.need.LightingRule;
import rigbrief.rule.need.WirelessRule;

/**
 * What builders know from the bench. Common practice throughout: no publication stands behind
 * these.
 */
class TradeFactsTest {
    /**
     * Common practice: about 320 W of card beside a 65-watt-class six-core wants a 750 W supply.
     */
    @ParameterizedTest
    @CsvSource({"550, false", "650, false", "750, true", "850, true"})
    void a_card_of_320_watts_with_a_65_watt_six_core_wants_a_supply_of_750_watts(
            int watts, boolean enough) {
        BuildFixture build =
                aBuild().with(aProcessor().cores(6))
                        .with(aGraphicsCard().boardPowerW(320).plugs(Plug.PCIE8, 3))
                        .with(aSupply().watts(watts).plugs(Plug.PCIE8, 4));

        Finding finding = check(new SupplyLoadRule(), build);

        assertThat(finding instanceof Finding.Breach).isEqualTo(!enough);
    }

    /** Common practice: a switch on the cable satisfies a client who wants no lights. */
    @ParameterizedTest
    @CsvSource({"NONE, false", "SWITCHABLE, false", "FIXED, true"})
    void only_a_part_that_cannot_be_switched_off_offends_a_client_who_wants_no_lights(
            Lighting lighting, boolean offends) {
        BuildFixture build = aBuild().with(aMemoryKit().lighting(lighting));

        Finding finding = check(new LightingRule(), build, aBrief().lighting(LightingNeed.NONE));

        assertThat(finding instanceof Finding.Breach).isEqualTo(offends);
    }

    /** Common practice: wireless comes beside the wired port, never instead of it. */
    @ParameterizedTest
    @CsvSource({"2.5, false", "0, true"})
    void a_wireless_need_never_drops_the_wired_port(double lanGbps, boolean broken) {
        BuildFixture build =
                aBuild().with(aBoard().wireless(WirelessStandard.WIFI6E).lanGbps(lanGbps));

        Finding finding =
                check(
                        new WirelessRule(),
                        build,
                        aBrief().wireless(Strength.MUST, WirelessStandard.WIFI6));

        assertThat(finding instanceof Finding.Breach).isEqualTo(broken);
    }

    /** Common practice: beyond 1.5 kg or 320 mm a card is held up, or the builder is told. */
    @ParameterizedTest
    @CsvSource({"1500, 320, false", "1501, 320, true", "1500, 321, true"})
    void a_heavy_or_long_card_without_a_brace_is_a_caution(
            int massG, int lengthMm, boolean cautioned) {
        BuildFixture build =
                aBuild().with(aGraphicsCard().massG(massG).lengthMm(lengthMm))
                        .with(aCase().graphicsLengthMm(400));

        Finding finding = check(new BraceRule(), build);

        assertThat(finding instanceof Finding.Caution).isEqualTo(cautioned);
    }

    /** Common practice: a board on the shelf has the firmware of the day it was packed. */
    @Test
    void a_newer_processor_wants_a_firmware_step_before_first_boot() {
        BuildFixture build =
                aBuild().with(aProcessor().family("late"))
                        .with(
                                aBoard().families(new FamilySupport("late", "1.20"))
                                        .shippedFirmware("1.10")
                                        .firmwareWithoutProcessor(true));

        Finding finding = check(new FamilyRule(), build);

        assertThat(finding).isInstanceOf(Finding.Caution.class);
        assertThat(finding.text()).contains("1.20");
    }

    /**
     * Common practice: without a processor that boots the old firmware, nobody can write the new
     * one.
     */
    @Test
    void a_newer_processor_on_a_board_that_cannot_be_updated_without_one_is_a_breach() {
        BuildFixture build =
                aBuild().with(aProcessor().family("late"))
                        .with(
                                aBoard().families(new FamilySupport("late", "1.20"))
                                        .shippedFirmware("1.10")
                                        .firmwareWithoutProcessor(false));

        Finding alone = check(new FamilyRule(), build);
        Finding helped = check(new FamilyRule(), build, aBrief().helperProcessor());

        assertThat(alone).isInstanceOf(Finding.Breach.class);
        assertThat(helped).isNotInstanceOf(Finding.Breach.class);
    }

    /**
     * Common practice: a twin tower with 140 mm fans is held against the side panel and the memory.
     */
    @Test
    void a_twin_tower_with_140_mm_fans_is_checked_against_case_and_memory() {
        BuildFixture narrow =
                aBuild().with(aCooler().heightMm(166)).with(aCase().coolerHeightMm(165));
        BuildFixture tall =
                aBuild().with(aCooler().heightMm(160).memoryClearanceMm(42).fanRaiseMm(0))
                        .with(aMemoryKit().heightMm(51));

        assertThat(check(new CoolerHeightRule(), narrow).excess()).isEqualTo(1);
        assertThat(check(new MemoryUnderCoolerRule(), tall).excess()).isEqualTo(9);
    }
}
