package rigbrief.assembly.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.assembly.Bench;
import rigbrief.assembly.ScenarioBuilds;
import rigbrief.assembly.ScenarioBuilds.Filed;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Kept;
import rigbrief.build.Build;
import rigbrief.part.Drive;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

class UpgradePathTest {

    private static final List<String> MACHINES =
            List.of(
                    "potter, lean",
                    "editor, balanced",
                    "competitor, lean",
                    "tight-600, lean",
                    "forty-desks, lean");

    static List<Filed> oneOfEach() {
        return ScenarioBuilds.all().stream()
                .filter(filed -> MACHINES.contains(filed.name()))
                .toList();
    }

    @Test
    void there_are_machines_to_look_at() {
        assertThat(oneOfEach()).hasSizeGreaterThanOrEqualTo(4);
    }

    @ParameterizedTest
    @MethodSource("oneOfEach")
    void each_sort_of_step_is_either_offered_or_said_not_to_be_had(Filed filed) {
        UpgradePath path = UpgradePath.of(filed.bench());

        List<String> titles = new ArrayList<>(path.nothing());
        path.upgrades().forEach(upgrade -> titles.add(upgrade.title()));
        assertThat(titles)
                .containsExactlyInAnyOrder(
                        "faster graphics",
                        "faster processor",
                        "twice the memory",
                        "twice the storage",
                        "quieter");
        for (Upgrade upgrade : path.upgrades()) {
            assertThat(upgrade.changes()).as(upgrade.title()).isNotEmpty();
            assertThat(upgrade.gains()).as(upgrade.title()).isNotEmpty();
            assertThat(upgrade.cost()).isLessThanOrEqualTo(path.budget());
        }
    }

    /**
     * The least money for twice the storage, by plain enumeration: every drive of the catalogue is
     * put into the second place, judged by the audit, and the cheapest sound one is the answer.
     * Where no drive alone does it, the path may add another part, and nothing is compared.
     */
    @ParameterizedTest
    @MethodSource("oneOfEach")
    void twice_the_storage_costs_what_enumeration_finds(Filed filed) {
        Build build = filed.record().build();
        if (build.has(Slot.SECOND_DRIVE)) {
            return;
        }
        UpgradePath path = UpgradePath.of(filed.bench());

        Optional<Money> least = least(filed, path.budget());

        Optional<Money> offered =
                path.upgrades().stream()
                        .filter(upgrade -> upgrade.title().equals("twice the storage"))
                        .map(Upgrade::cost)
                        .findFirst();
        least.ifPresent(cost -> assertThat(offered).contains(cost));
    }

    private static Optional<Money> least(Filed filed, Money budget) {
        Build build = filed.record().build();
        Auditor auditor = new Auditor(twice(filed, budget), filed.catalogue());
        Money least = null;
        for (Part drive : filed.catalogue().parts(Kind.DRIVE)) {
            Audit audit = auditor.audit(build.with(Slot.SECOND_DRIVE, drive, 1));
            boolean idle =
                    audit.findings().stream()
                            .anyMatch(finding -> finding.rule().startsWith("idle-"));
            if (audit.fits() && !idle && audit.cost().unavailable().isEmpty()) {
                Money cost = Money.ofMinor(audit.cost().totalMinor(), budget.currency());
                least = least == null || cost.compareTo(least) < 0 ? cost : least;
            }
        }
        return Optional.ofNullable(least);
    }

    private static Brief twice(Filed filed, Money budget) {
        Brief brief = filed.brief();
        Build build = filed.record().build();
        List<Kept> keep = new ArrayList<>();
        build.filled().forEach((slot, part) -> keep.add(new Kept(slot, part, build.pieces(slot))));
        int capacityGb = build.drives().stream().mapToInt(Drive::capacityGb).sum();
        return new BriefDraft(brief)
                .quantity(1)
                .ceiling(budget)
                .overrunBasisPoints(0)
                .keep(keep)
                .storage(
                        new Brief.StorageNeed(
                                2 * capacityGb, brief.storage().roomFor(), brief.storage().years()))
                .fees(new Brief.Fees(Money.zero(brief.currency()), brief.fees().taxBasisPoints()))
                .toBrief();
    }

    @Test
    void the_same_question_gets_the_same_answer() {
        Filed filed = oneOfEach().get(0);

        assertThat(UpgradePath.of(filed.bench())).isEqualTo(UpgradePath.of(filed.bench()));
    }

    @Test
    void a_machine_is_no_gain_over_itself() {
        Bench bench = oneOfEach().get(0).bench();

        assertThat(Gains.between(bench, bench)).isEmpty();
        assertThat(Gains.losses(bench, bench)).isEmpty();
    }
}
