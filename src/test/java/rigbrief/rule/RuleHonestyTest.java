package rigbrief.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static rigbrief.fixture.BraceFixture.aBrace;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CablesFixture.someCables;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.DisplayFixture.aDisplay;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.FanFixture.aFan;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.ScreenFixture.aScreen;
import static rigbrief.fixture.SystemFixture.aLicence;
import static rigbrief.fixture.WirelessFixture.aWirelessCard;
import static rigbrief.fixture.WorkloadFixture.KILN;
import static rigbrief.fixture.WorkloadFixture.MARSH;
import static rigbrief.fixture.WorkloadFixture.aWorkload;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.brief.Brief.SizeNeed;
import rigbrief.brief.Brief.Strength;
import rigbrief.build.Build;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Colour;
import rigbrief.part.FrontPort;
import rigbrief.part.Lighting;
import rigbrief.part.SidePanel;
import rigbrief.part.Slot;
import rigbrief.part.WirelessStandard;
import rigbrief.quantity.Mass;
import rigbrief.wording.Phrase;

/**
 * Rules read no more than they say, and never fail on a build they may be asked of.
 *
 * <p>The search leaves out what a rule doesn't read and asks early deciders of unfinished builds,
 * so both have to be true.
 */
class RuleHonestyTest {
    private static final List<BuildFixture> BUILDS =
            List.of(
                    aBuild(),
                    aBuild().without(Slot.GRAPHICS).without(Slot.COOLER),
                    aBuild().with(
                                    aGraphicsCard()
                                            .massG(1_800)
                                            .lengthMm(345)
                                            .slots(3.2)
                                            .boardPowerW(450)),
                    aBuild().with(aCooler().liquid(360)).with(aFan(), 4).with(aWirelessCard()),
                    aBuild().with(aMemoryKit().heightMm(60).lighting(Lighting.FIXED), 2)
                            .with(Slot.SECOND_DRIVE, aDrive().sata35())
                            .with(aBrace())
                            .with(someCables().colour(Colour.WHITE))
                            .with(aLicence())
                            .with(aDisplay()));

    private static final List<BriefFixture> BRIEFS =
            List.of(
                    aBrief(),
                    aBrief().ceiling("700.00")
                            .screen(aScreen().mode(3840, 2160, 240).bits(10))
                            .use(aNeed(MARSH).mustAverage(144))
                            .use(aNeed(KILN).mustFinishS(9))
                            .lighting(LightingNeed.NONE)
                            .colour(Colour.WHITE, Strength.MUST)
                            .side(SidePanel.CLEAR)
                            .noiseMustDba(25)
                            .wireless(Strength.MUST, WirelessStandard.WIFI7)
                            .memory(128, true)
                            .storage(4_000)
                            .size(
                                    new SizeNeed(
                                            OptionalInt.of(200),
                                            Optional.empty(),
                                            Optional.empty(),
                                            Optional.empty(),
                                            Optional.of(Mass.g(9_000))))
                            .frontPorts(FrontPort.USB_C, FrontPort.USB_C)
                            .keeps(Slot.CASE, aCase().id("case-9"))
                            .avoidMakers("Hollin")
                            .system(Strength.MUST));

    @Test
    void parts_a_rule_does_not_read_change_nothing() {
        for (BriefFixture brief : BRIEFS) {
            for (BuildFixture build : BUILDS) {
                for (Rule rule : Rules.ALL) {
                    if (!rule.reads().isEmpty()) {
                        Finding whole = rule.check(assess(build.make(), brief));
                        Finding part = rule.check(assess(only(build.make(), rule.reads()), brief));

                        assertThat(sort(part)).as(rule.info().id()).isEqualTo(sort(whole));
                    }
                }
            }
        }
    }

    @Test
    void optional_parts_may_be_absent() {
        for (BriefFixture brief : BRIEFS) {
            for (Rule rule : Rules.ALL) {
                Build bare = only(aBuild().make(), required());

                assertThatCode(() -> rule.check(assess(bare, brief)))
                        .as(rule.info().id())
                        .doesNotThrowAnyException();
            }
        }
    }

    @Test
    void an_early_breach_stays_a_breach() {
        for (BriefFixture brief : BRIEFS) {
            for (BuildFixture build : BUILDS) {
                for (Rule rule : Rules.ALL) {
                    if (rule.decidesEarly()) {
                        staysABreach(rule, build.make(), brief);
                    }
                }
            }
        }
    }

    @Test
    void an_early_decider_may_be_asked_of_nothing_at_all() {
        for (Rule rule : Rules.ALL) {
            if (rule.decidesEarly()) {
                assertThatCode(() -> rule.check(assess(Build.empty(), aBrief())))
                        .as(rule.info().id())
                        .doesNotThrowAnyException();
            }
        }
    }

    @Test
    void filling_a_slot_that_only_worsens_never_mends() {
        for (BriefFixture brief : BRIEFS) {
            for (BuildFixture build : BUILDS) {
                for (Rule rule : Rules.ALL) {
                    Build without = build.make();
                    for (Slot slot : rule.onlyWorsenedBy()) {
                        without = without.without(slot);
                    }
                    long before = rule.check(assess(without, brief)).excess();
                    long after = rule.check(assess(build.make(), brief)).excess();

                    assertThat(before).as(rule.info().id()).isLessThanOrEqualTo(after);
                }
            }
        }
    }

    @Test
    void every_breach_is_forbidden_to_the_search() {
        for (Rule rule : Rules.ALL) {
            assertThat(rule.forbids(Finding.breach(1, () -> Phrase.data("broken")))).isTrue();
            assertThat(rule.forbids(Finding.MET)).isFalse();
            assertThat(rule.reads()).containsAll(rule.onlyWorsenedBy());
        }
    }

    @Test
    void every_finding_but_a_met_one_says_something() {
        for (BriefFixture brief : BRIEFS) {
            for (BuildFixture build : BUILDS) {
                for (Rule rule : Rules.ALL) {
                    Finding finding = rule.check(assess(build.make(), brief));

                    assertThat(finding.text().isEmpty())
                            .as(rule.info().id())
                            .isEqualTo(finding instanceof Finding.Met);
                }
            }
        }
    }

    @Test
    void a_margin_has_the_sign_of_its_finding() {
        for (BriefFixture brief : BRIEFS) {
            for (BuildFixture build : BUILDS) {
                for (Rule rule : Rules.ALL) {
                    Finding finding = rule.check(assess(build.make(), brief));
                    boolean sized = rule.info().id().equals("size");

                    if (finding instanceof Finding.Met && !sized) {
                        assertThat(finding.margin().map(Margin::spare).orElse(0L))
                                .as(rule.info().id())
                                .isNotNegative();
                    }
                }
            }
        }
    }

    private static void staysABreach(Rule rule, Build build, BriefFixture brief) {
        for (Slot slot : build.filled().keySet()) {
            Build alone = only(build, EnumSet.of(slot));
            boolean early = rule.check(assess(alone, brief)) instanceof Finding.Breach;
            boolean late = rule.check(assess(build, brief)) instanceof Finding.Breach;

            if (early && rule.reads().contains(slot)) {
                assertThat(late).as(rule.info().id() + " on " + slot.word()).isTrue();
            }
        }
    }

    private static String sort(Finding finding) {
        return finding.getClass().getSimpleName() + " " + finding.excess() + finding.margin();
    }

    private static Set<Slot> required() {
        Set<Slot> required = EnumSet.allOf(Slot.class);
        required.removeIf(slot -> !slot.required());
        return required;
    }

    private static Build only(Build build, Set<Slot> slots) {
        Build part = build;
        for (Slot slot : Slot.values()) {
            part = slots.contains(slot) ? part : part.without(slot);
        }
        return part;
    }

    private static Assessment assess(Build build, BriefFixture brief) {
        CatalogueFixture catalogue =
                aCatalogue().workload(aWorkload().vramGb(14).frames()).workload(aWorkload().task());
        for (BuildFixture fixture : BUILDS) {
            catalogue.offering(fixture.make());
        }
        return new Assessor(brief.make(), catalogue.make()).assess(build);
    }
}
