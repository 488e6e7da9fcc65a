package rigbrief.assembly.handover;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.euro;
import static rigbrief.fixture.SupplyFixture.aSupply;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.part.Slot;

class PartPassportTest {
    private static final LocalDate ORDERED = LocalDate.of(2026, 11, 2);
    private static final LocalDate CAME = LocalDate.of(2026, 11, 9);

    private static BuildLine line(boolean kept, List<Units> units) {
        return new BuildLine(
                Slot.SUPPLY,
                aSupply().warrantyYears(7).make(),
                1,
                Optional.of(KESTREL),
                euro("80.00"),
                PartState.WANTED,
                kept,
                units);
    }

    private static Units since(PartState state, LocalDate day) {
        return new Units(
                1, state, Optional.of(day), Optional.of(QUAY), Optional.empty(), Optional.empty());
    }

    private static PartPassport of(BuildLine line, List<HistoryEntry> history) {
        BuildRecord record =
                new BuildRecord(Optional.empty(), Optional.empty(), "", "", List.of(line));
        return PartPassport.of(line, record.with(List.of(line), List.of(), history));
    }

    private static HistoryEntry move(PartState to, LocalDate day) {
        return new HistoryEntry.Move(
                day,
                Optional.empty(),
                Slot.SUPPLY,
                aSupply().make().id(),
                1,
                PartState.WANTED,
                to,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void a_part_that_never_moved_has_no_day() {
        PartPassport passport = of(line(false, List.of()), List.of());

        assertThat(passport.until()).isEmpty();
        assertThat(passport.supplier()).contains(KESTREL);
    }

    @Test
    void the_guarantee_runs_from_the_day_the_part_came() {
        PartPassport passport =
                of(
                        line(false, List.of(since(PartState.RECEIVED, CAME))),
                        List.of(move(PartState.ORDERED, ORDERED), move(PartState.RECEIVED, CAME)));

        assertThat(passport.until()).contains(LocalDate.of(2033, 11, 9));
        assertThat(passport.supplier()).contains(QUAY);
    }

    @Test
    void a_part_that_was_fitted_later_is_still_counted_from_the_day_it_came() {
        PartPassport passport =
                of(
                        line(false, List.of(since(PartState.FITTED, CAME.plusDays(20)))),
                        List.of(move(PartState.RECEIVED, CAME)));

        assertThat(passport.from()).contains(CAME);
    }

    @Test
    void a_part_on_its_way_is_counted_from_the_order() {
        PartPassport passport =
                of(
                        line(false, List.of(since(PartState.ORDERED, ORDERED))),
                        List.of(move(PartState.ORDERED, ORDERED)));

        assertThat(passport.from()).contains(ORDERED);
    }

    @Test
    void the_guarantee_of_the_clients_own_part_is_not_ours_to_tell() {
        PartPassport passport = of(line(true, List.of(since(PartState.RECEIVED, CAME))), List.of());

        assertThat(passport.from()).isEmpty();
        assertThat(passport.own()).isTrue();
    }
}
