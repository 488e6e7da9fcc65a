package rigbrief.assembly.order;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.CatalogueFixture.euro;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.FanFixture.aFan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.assembly.Bench;
import rigbrief.assembly.ScenarioBuilds;
import rigbrief.assembly.ScenarioBuilds.Filed;
import rigbrief.assess.Cost;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.FanGroup;
import rigbrief.part.FanPosition;
import rigbrief.part.Place;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;
import rigbrief.wording.Texts;

class OrderListTest {

    static List<Filed> proposals() {
        return ScenarioBuilds.all();
    }

    private static OrderList list(Filed filed) {
        return OrderList.of(filed.record(), filed.bench());
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void every_part_is_listed_once_either_to_order_or_not(Filed filed) {
        OrderList list = list(filed);

        List<Slot> listed = new ArrayList<>();
        list.lines().forEach(line -> listed.add(line.slot()));
        list.notOrdered().forEach(other -> listed.add(other.slot()));
        assertThat(listed)
                .containsExactlyInAnyOrderElementsOf(filed.record().build().filled().keySet());
        for (OrderLine line : list.lines()) {
            assertThat(line.part()).isEqualTo(filed.record().build().part(line.slot()));
            assertThat(line.quantity())
                    .isEqualTo(
                            filed.record().build().pieces(line.slot()) * filed.brief().quantity());
        }
    }

    /** To the cent: the sums of the list are the cost that the build was proposed at. */
    @ParameterizedTest
    @MethodSource("proposals")
    void the_sums_are_the_cost_of_the_build(Filed filed) {
        OrderList list = list(filed);
        Cost cost = filed.bench().it().cost();

        long parts = 0;
        for (OrderLine line : list.lines()) {
            parts += line.unitPrice().minorUnits() * line.quantity();
        }
        assertThat(parts).isEqualTo(cost.partsMinor());
        assertThat(list.parts().minorUnits()).isEqualTo(cost.partsMinor());
        assertThat(list.delivery().minorUnits()).isEqualTo(cost.deliveryMinor());
        OrderList.Whole whole = list.whole().orElseThrow();
        assertThat(whole.fees().minorUnits()).isEqualTo(cost.feesMinor());
        assertThat(whole.tax().minorUnits()).isEqualTo(cost.taxMinor());
        assertThat(whole.total()).isEqualTo(list.total().plus(whole.fees()).plus(whole.tax()));
        assertThat(whole.total().minorUnits()).isEqualTo(cost.totalMinor());
    }

    @ParameterizedTest
    @MethodSource("proposals")
    void ranks_run_from_one_and_never_from_long_to_longer(Filed filed) {
        List<OrderLine> lines = list(filed).lines();

        for (int i = 0; i < lines.size(); i++) {
            assertThat(lines.get(i).rank()).isEqualTo(i + 1);
            if (i > 0) {
                assertThat(lines.get(i).leadDays())
                        .isLessThanOrEqualTo(lines.get(i - 1).leadDays());
            }
        }
    }

    /** What a first boot needs: asked as a builder would, not as the list is made. */
    @ParameterizedTest
    @MethodSource("proposals")
    void nothing_is_missing_that_a_first_boot_needs(Filed filed) {
        Build build = filed.record().build();
        OrderList list = list(filed);

        String all = items(list);
        assertThat(all)
                .contains("paste")
                .contains("stand-offs")
                .contains("display cable")
                .contains("keyboard")
                .contains("network cable")
                .contains("USB stick");
        assertThat(all.contains("operating system")).isEqualTo(!build.has(Slot.SYSTEM));
        assertThat(all.contains("SATA data cable"))
                .isEqualTo(build.drives().stream().anyMatch(drive -> !drive.form().m2()));
        assertThat(all.contains("M.2 screw"))
                .isEqualTo(build.drives().stream().anyMatch(drive -> drive.form().m2()));
        assertThat(list.alsoNeeded()).allMatch(need -> need.quantity() >= 1);
        assertThat(list.alsoNeeded()).noneMatch(need -> need.why().isBlank());
    }

    private static String items(OrderList list) {
        return list.alsoNeeded().stream().map(AlsoNeeded::item).toList().toString();
    }

    private static CatalogueFixture offered(BuildFixture build) {
        return aCatalogue().offering(build.make());
    }

    private static OrderList list(
            BuildFixture build, BriefFixture brief, CatalogueFixture catalogue) {
        return list(build.make(), brief.make(), catalogue.make(), List.of());
    }

    private static OrderList list(
            Build build, Brief brief, Catalogue catalogue, List<BuildLine> instead) {
        List<BuildLine> lines = new ArrayList<>();
        build.filled()
                .forEach(
                        (slot, part) ->
                                lines.add(
                                        instead.stream()
                                                .filter(line -> line.slot() == slot)
                                                .findFirst()
                                                .orElseGet(() -> wanted(build, slot, List.of()))));
        return OrderList.of(
                new BuildRecord(Optional.of(brief), Optional.empty(), "", "", lines),
                Bench.of(brief, catalogue, build));
    }

    private static BuildLine wanted(Build build, Slot slot, List<Units> units) {
        return new BuildLine(
                slot,
                build.part(slot),
                build.pieces(slot),
                Optional.of(KESTREL),
                euro("100.00"),
                PartState.WANTED,
                false,
                units);
    }

    @Test
    void what_takes_longest_is_bought_first_then_what_is_scarce() {
        var catalogue =
                aCatalogue()
                        .part(aCooler().make())
                        .offer(aCooler().make().id(), KESTREL, "30.00", 100, 9)
                        .offer(aCooler().make().id(), QUAY, "31.00", 100, 9);
        for (var part : aBuild().without(Slot.COOLER).make().filled().values()) {
            catalogue.part(part).offer(part.id(), KESTREL, "100.00", 100, 3);
            if (!part.id().equals(aCase().make().id())) {
                catalogue.offer(part.id(), QUAY, "110.00", 100, 3);
            }
        }
        catalogue.part(aDrive().make()).offer(aDrive().make().id(), KESTREL, "90.00", 1, 3);

        List<OrderLine> lines = list(aBuild(), aBrief(), catalogue).lines();

        assertThat(lines.subList(0, 3))
                .extracting(OrderLine::slot)
                .containsExactly(Slot.COOLER, Slot.CASE, Slot.DRIVE);
        assertThat(lines.get(1).urgency(Texts.ENGLISH)).isEqualTo("no other supplier");
        assertThat(lines.get(2).urgency(Texts.ENGLISH)).isEqualTo("1 left");
        assertThat(lines.get(3).urgency(Texts.ENGLISH)).isEmpty();
    }

    @Test
    void one_delivery_is_paid_to_each_supplier_used() {
        var build = aBuild();
        var catalogue =
                offered(build)
                        .supplier(KESTREL, "6.90")
                        .supplier(QUAY, "4.10")
                        .offer(aCase().make().id(), QUAY, "50.00");

        OrderList list = list(build, aBrief(), catalogue);

        assertThat(list.orders()).hasSize(2);
        assertThat(list.delivery()).isEqualTo(euro("11.00"));
        assertThat(list.parts()).isEqualTo(euro("750.00"));
    }

    @Test
    void what_was_ordered_before_is_not_ordered_again() {
        Build build = aBuild().make();
        LocalDate day = LocalDate.of(2026, 11, 2);
        var ordered =
                wanted(
                        build,
                        Slot.CASE,
                        List.of(
                                new Units(
                                        1,
                                        PartState.ORDERED,
                                        Optional.of(day),
                                        Optional.of(KESTREL),
                                        Optional.empty(),
                                        Optional.empty())));

        OrderList list = list(build, aBrief().make(), offered(aBuild()).make(), List.of(ordered));

        assertThat(list.lines()).extracting(OrderLine::slot).doesNotContain(Slot.CASE);
        assertThat(list.notOrdered())
                .extracting(NotOrdered::slot, NotOrdered::why)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Slot.CASE, "ordered 2026-11-02"));
        assertThat(list.whole()).isEmpty();
        assertThat(list.total()).isEqualTo(euro("700.00"));
    }

    @Test
    void of_twelve_cases_of_which_five_are_here_seven_are_ordered() {
        Build build = aBuild().make();
        var brief = aBrief().quantity(12).ceiling("90000.00").make();
        var some =
                wanted(
                        build,
                        Slot.CASE,
                        List.of(Units.of(7, PartState.WANTED), Units.of(5, PartState.RECEIVED)));

        OrderList list = list(build, brief, offered(aBuild()).make(), List.of(some));

        OrderLine cases =
                list.lines().stream()
                        .filter(line -> line.slot() == Slot.CASE)
                        .findFirst()
                        .orElseThrow();
        assertThat(cases.quantity()).isEqualTo(7);
        assertThat(cases.price()).isEqualTo(euro("700.00"));
    }

    @Test
    void the_clients_own_cooler_wants_new_paste_and_the_clients_own_case_its_screws_counted() {
        var build = aBuild();
        var brief = aBrief().keeps(Slot.COOLER, aCooler()).keeps(Slot.CASE, aCase());

        OrderList list = list(build, brief, offered(build));

        assertThat(list.alsoNeeded())
                .filteredOn(need -> need.need() == AlsoNeeded.Need.BUY)
                .extracting(AlsoNeeded::item)
                .anyMatch(item -> item.contains("paste"))
                .anyMatch(item -> item.contains("stand-offs"));
        assertThat(list.notOrdered()).extracting(NotOrdered::why).contains("the client's own");
    }

    @Test
    void fans_that_share_a_header_want_a_split_lead_for_each_machine() {
        var build =
                aBuild().with(
                                aCase().positions(
                                                new FanPosition(
                                                        Place.FRONT, List.of(new FanGroup(3, 120))))
                                        .includedFans())
                        .with(aBoard().fanHeaders(2))
                        .with(aFan().pack(3).currentMa(200));

        OrderList list = list(build, aBrief().quantity(4).ceiling("90000.00"), offered(build));

        assertThat(list.alsoNeeded())
                .anyMatch(need -> need.item().contains("split lead") && need.quantity() == 4);
    }

    @Test
    void a_part_that_nobody_offers_is_listed_as_not_to_be_had() {
        var build = aBuild();
        var catalogue = aCatalogue();
        build.make()
                .filled()
                .forEach(
                        (slot, part) -> {
                            catalogue.part(part);
                            if (slot != Slot.DRIVE) {
                                catalogue.offer(part.id(), KESTREL, "100.00");
                            }
                        });

        OrderList list = list(build, aBrief(), catalogue);

        assertThat(list.notOrdered())
                .extracting(NotOrdered::slot, NotOrdered::why)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Slot.DRIVE, "nobody offers it now"));
        assertThat(list.parts()).isEqualTo(Money.ofMinor(70_000, CatalogueFixture.EURO));
    }
}
