package rigbrief.build;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.euro;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.brief.Brief;
import rigbrief.fixture.BriefFixture;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/** A move in the making: all of one board's wanted units, on a day in November. */
final class MoveFixture {
    static final LocalDate DAY = LocalDate.of(2026, 11, 21);

    private final PartState to;
    private Optional<PartState> from = Optional.empty();
    private OptionalInt count = OptionalInt.empty();
    private LocalDate date = DAY;
    private Optional<String> supplier = Optional.empty();
    private Optional<Money> paid = Optional.empty();
    private Optional<Money> refunded = Optional.empty();

    private MoveFixture(PartState to) {
        this.to = to;
    }

    static MoveFixture to(PartState state) {
        return new MoveFixture(state);
    }

    /** A build of so many machines with nothing but a board each. */
    static BuildRecord desks(int machines) {
        Brief brief = BriefFixture.aBrief().quantity(machines).make();
        return new BuildRecord(
                Optional.of(brief),
                Optional.of("lean"),
                "fixture",
                "sha256:0",
                List.of(line("board-a")));
    }

    static BuildLine line(String id) {
        return new BuildLine(
                Slot.BOARD,
                aBoard().id(id).make(),
                1,
                Optional.of(KESTREL),
                euro("100.00"),
                PartState.WANTED,
                false);
    }

    static BuildRecord move(BuildRecord record, MoveFixture move) throws MoveRefused {
        return new Mover(record).move(move.make());
    }

    static List<Units> units(BuildRecord record) {
        return record.lines().get(0).units(record.machines());
    }

    MoveFixture from(PartState state) {
        from = Optional.of(state);
        return this;
    }

    MoveFixture count(int units) {
        count = OptionalInt.of(units);
        return this;
    }

    MoveFixture on(LocalDate day) {
        date = day;
        return this;
    }

    MoveFixture supplier(String id) {
        supplier = Optional.of(id);
        return this;
    }

    MoveFixture paid(String amount) {
        paid = Optional.of(euro(amount));
        return this;
    }

    MoveFixture refunded(String amount) {
        refunded = Optional.of(euro(amount));
        return this;
    }

    private MoveRequest make() {
        return new MoveRequest(
                "board-a",
                to,
                from,
                count,
                date,
                Optional.empty(),
                supplier,
                paid,
                refunded,
                Optional.empty(),
                false);
    }
}
