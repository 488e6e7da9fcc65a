package rigbrief.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.BuildFixture.anEmptyBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.ProcessorFixture.aProcessor;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessment;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.fixture.BriefFixture;
import rigbrief.goal.Goals;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Margin;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Rules;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

class AuditorTest {

    @Test
    void a_sound_build_fits() {
        var audit = audit(aBrief(), aBuild().make());

        assertThat(audit.fits()).isTrue();
        assertThat(audit.findings()).noneMatch(it -> it.level() == Level.BREACH);
        assertThat(audit.figures()).isPresent();
    }

    @Test
    void a_cooler_one_millimetre_too_tall_is_told_with_its_excess_source_and_parts() {
        var build = aBuild().with(aCase().coolerHeightMm(165)).with(aCooler().heightMm(166)).make();

        var audit = audit(aBrief(), build);

        var breach = only(audit, "cooler-height");
        assertThat(audit.fits()).isFalse();
        assertThat(breach.level()).isEqualTo(Level.BREACH);
        assertThat(breach.excess()).isEqualTo(1);
        assertThat(breach.unit()).isEqualTo(Unit.MILLIMETRE);
        assertThat(breach.margin()).contains(new Margin(165, 166, Unit.MILLIMETRE));
        assertThat(breach.parts()).contains(build.pcCase().id(), build.cooler().id());
        assertThat(breach.source()).startsWith("maker's sheet");
    }

    @Test
    void breaches_come_before_cautions_and_cautions_before_notes() {
        var rules =
                List.of(
                        says("a-note", Finding.note(() -> Phrase.data("first"))),
                        says("a-caution", Finding.caution(() -> Phrase.data("second"))),
                        says("a-breach", Finding.breach(3, () -> Phrase.data("third"))),
                        says("another-breach", Finding.breach(2, () -> Phrase.data("fourth"))));

        var audit = audit(aBrief(), aBuild().make(), rules);

        assertThat(audit.findings())
                .extracting(AuditFinding::rule)
                .containsExactly("a-breach", "another-breach", "a-caution", "a-note");
    }

    @Test
    void a_rule_is_not_asked_while_a_required_slot_it_reads_is_empty() {
        var refusing = new Fixed("never-asked", Reads.of(Slot.BOARD, Slot.CASE), null);

        var audit = audit(aBrief(), aBuild().without(Slot.CASE).make(), List.of(refusing));

        assertThat(audit.findings()).isEmpty();
    }

    @Test
    void a_rule_is_asked_while_an_optional_slot_it_reads_is_empty() {
        var rule =
                new Fixed(
                        "asked",
                        Reads.of(Slot.BOARD, Slot.GRAPHICS),
                        Finding.note(() -> Phrase.data("asked")));

        var audit = audit(aBrief(), aBuild().without(Slot.GRAPHICS).make(), List.of(rule));

        assertThat(audit.findings()).hasSize(1);
    }

    @Test
    void margins_of_met_and_broken_rules_are_kept_in_the_order_of_the_rules() {
        var met = Finding.atMost(5, 7, Unit.PIECE, () -> Phrase.data("met"));
        var broken = Finding.atMost(9, 7, Unit.PIECE, () -> Phrase.data("broken"));

        var audit =
                audit(
                        aBrief(),
                        aBuild().make(),
                        List.of(says("b", broken), says("c", Finding.MET), says("a", met)));

        assertThat(audit.margins()).extracting(MarginLine::rule).containsExactly("b", "a");
        assertThat(audit.margins().get(0).margin().spare()).isEqualTo(-2);
    }

    @Test
    void a_rule_that_reads_every_slot_names_no_parts() {
        var rule = new Fixed("all", Reads.ALL, Finding.note(() -> Phrase.data("all")));

        var audit = audit(aBrief(), aBuild().make(), List.of(rule));

        assertThat(only(audit, "all").parts()).isEmpty();
    }

    @Test
    void an_unfinished_build_has_findings_and_a_cost_but_no_figures() {
        var audit = audit(aBrief().wish("quiet", 3), anEmptyBuild().with(aProcessor()).make());

        assertThat(audit.fits()).isFalse();
        assertThat(only(audit, "complete").level()).isEqualTo(Level.BREACH);
        assertThat(audit.figures()).isEmpty();
        assertThat(audit.goals()).isEmpty();
        assertThat(audit.predictions()).isEmpty();
        assertThat(audit.cost().totalMinor()).isEqualTo(10_000);
    }

    @Test
    void an_empty_build_can_be_judged() {
        var audit = audit(aBrief(), Build.empty());

        assertThat(audit.fits()).isFalse();
        assertThat(audit.build().missing()).hasSize(6);
    }

    /** Hand calculation: points are weight times ten-thousandths, summed over the goals. */
    @Test
    void only_goals_with_a_weight_are_scored_and_their_points_add_up() {
        var audit = audit(aBrief().wish("quiet", 3).wish("energy", 1), aBuild().make());

        assertThat(audit.goals()).extracting(GoalScore::goal).containsExactly("quiet", "energy");
        assertThat(audit.points())
                .isEqualTo(
                        3L * audit.goals().get(0).tenThousandths()
                                + audit.goals().get(1).tenThousandths());
        assertThat(audit.mostPoints()).isEqualTo(4 * 10_000);
        assertThat(audit.goals()).allSatisfy(it -> assertThat(it.because()).isNotBlank());
    }

    @Test
    void a_brief_without_weights_is_fully_satisfied() {
        var audit = audit(aBrief(), aBuild().make());

        assertThat(audit.utility()).isEqualTo(1);
    }

    private static Audit audit(BriefFixture brief, Build build) {
        return audit(brief, build, Rules.ALL);
    }

    private static Audit audit(BriefFixture brief, Build build, List<Rule> rules) {
        Brief made = brief.make();
        return new Auditor(made, aCatalogue().offering(build).make(), rules, Goals.ALL)
                .audit(build);
    }

    private static AuditFinding only(Audit audit, String rule) {
        Optional<AuditFinding> found =
                audit.findings().stream().filter(it -> it.rule().equals(rule)).findFirst();
        return found.orElseThrow();
    }

    private static Rule says(String id, Finding finding) {
        return new Fixed(id, Reads.of(Slot.BOARD), finding);
    }

    /** A rule that always says the same; with nothing to say it must not be asked. */
    private record Fixed(String id, Set<Slot> reads, Finding finding) implements Rule {
        @Override
        public RuleInfo info() {
            return new RuleInfo(
                    id, "Always so", Unit.CONDITION, Source.commonPractice("made up here"));
        }

        @Override
        public Finding check(Assessment it) {
            return Optional.ofNullable(finding).orElseThrow();
        }
    }
}
