package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.BuildFixture.anEmptyBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FanFixture.aFan;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Lighting;
import rigbrief.rule.Finding;

class LightingRuleTest {
    @Test
    void dark_parts_are_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().lighting(LightingNeed.NONE);

        Finding finding = check(new LightingRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_light_that_can_be_switched_off_satisfies_no_lights() {
        // Common practice.
        BuildFixture build = aBuild().with(aMemoryKit().lighting(Lighting.SWITCHABLE));
        BriefFixture brief = aBrief().lighting(LightingNeed.NONE);

        Finding finding = check(new LightingRule(), build, brief);

        assertThat(finding).isNote().saying("switch off the light of Brindle model memory-1");
    }

    @Test
    void a_light_that_can_not_be_switched_off_is_a_breach_of_one() {
        // Common practice.
        BuildFixture build = aBuild().with(aMemoryKit().lighting(Lighting.FIXED));
        BriefFixture brief = aBrief().lighting(LightingNeed.NONE);

        Finding finding = check(new LightingRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("Brindle model memory-1");
    }

    @Test
    void fixed_lights_are_counted() {
        BuildFixture build =
                aBuild().with(aMemoryKit().lighting(Lighting.FIXED))
                        .with(aFan().lighting(Lighting.FIXED));
        BriefFixture brief = aBrief().lighting(LightingNeed.SWITCHABLE);

        Finding finding = check(new LightingRule(), build, brief);

        assertThat(finding).isBreachOf(2);
    }

    @Test
    void a_switchable_light_is_met_where_it_is_asked() {
        BuildFixture build = aBuild().with(aMemoryKit().lighting(Lighting.SWITCHABLE));
        BriefFixture brief = aBrief().lighting(LightingNeed.SWITCHABLE);

        Finding finding = check(new LightingRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void any_light_is_met_where_it_does_not_matter() {
        BuildFixture build = aBuild().with(aMemoryKit().lighting(Lighting.FIXED));
        BriefFixture brief = aBrief();

        Finding finding = check(new LightingRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void one_part_alone_can_break_it() {
        BuildFixture build = anEmptyBuild().with(aFan().lighting(Lighting.FIXED));
        BriefFixture brief = aBrief().lighting(LightingNeed.NONE);

        Finding finding = check(new LightingRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }
}
