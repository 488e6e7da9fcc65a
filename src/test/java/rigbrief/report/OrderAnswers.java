package rigbrief.report;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.CatalogueFixture.euro;
import static rigbrief.fixture.FanFixture.aFan;
import static rigbrief.fixture.SupplyFixture.aSupply;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.build.OrderStatus;
import rigbrief.build.PartState;
import rigbrief.build.SetAside;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.proposal.Buildable;

/** An order of four machines in which everything that may happen has happened. */
final class OrderAnswers {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 21);
    private static final Brief BRIEF = aBrief().quantity(4).make();

    private OrderAnswers() {}

    static OrderAnswer busy() {
        BuildRecord record =
                new BuildRecord(
                        Optional.of(BRIEF),
                        Optional.of("lean"),
                        "fixture",
                        "sha256:0",
                        List.of(board(), fans(), supply()),
                        List.of(aside()),
                        List.of(move(), swap()));
        return answer(record, Optional.of(move()));
    }

    /** An order that was only proposed. */
    static OrderAnswer untouched() {
        BuildRecord record =
                new BuildRecord(
                        Optional.of(BRIEF),
                        Optional.of("lean"),
                        "fixture",
                        "sha256:0",
                        List.of(board().with(List.of())));
        return answer(record, Optional.empty());
    }

    private static OrderAnswer answer(BuildRecord record, Optional<HistoryEntry.Move> moved) {
        return new OrderAnswer(
                "desk.build.yaml",
                catalogue(),
                OrderStatus.of(record, catalogue()),
                Buildable.of(record, BRIEF, catalogue()),
                moved);
    }

    private static Catalogue catalogue() {
        return aCatalogue()
                .part(aBoard().id("board-a"))
                .offer("board-a", KESTREL, "100.00")
                .part(aFan().id("fan-a"))
                .offer("fan-a", QUAY, "9.00", 1, 5)
                .part(aSupply().id("supply-a"))
                .make();
    }

    /** One wanted, one on its way, one here, one faulty, one back for its money. */
    private static BuildLine board() {
        return line(Slot.BOARD, aBoard().id("board-a").make(), "100.00", false)
                .with(
                        List.of(
                                Units.of(1, PartState.WANTED),
                                units(PartState.ORDERED, "", ""),
                                units(PartState.RECEIVED, "98.00", ""),
                                units(PartState.FAULTY, "98.00", ""),
                                units(PartState.RETURNED, "98.00", "")));
    }

    private static BuildLine fans() {
        return line(Slot.FANS, aFan().id("fan-a").make(), "9.00", false);
    }

    /** The client's own. */
    private static BuildLine supply() {
        return line(Slot.SUPPLY, aSupply().id("supply-a").make(), "0.00", true)
                .with(List.of(Units.of(4, PartState.FITTED)));
    }

    private static BuildLine line(Slot slot, Part part, String price, boolean kept) {
        return new BuildLine(
                slot,
                part,
                1,
                kept ? Optional.empty() : Optional.of(slot == Slot.FANS ? QUAY : KESTREL),
                euro(price),
                PartState.WANTED,
                kept);
    }

    private static SetAside aside() {
        return new SetAside(
                Slot.BOARD,
                "board-old",
                "Fell Board Old",
                Optional.of(QUAY),
                euro("90.00"),
                false,
                List.of(units(PartState.ORDERED, "90.00", "")));
    }

    private static Units units(PartState state, String paid, String refunded) {
        return new Units(
                1,
                state,
                Optional.of(DAY),
                Optional.of(KESTREL),
                paid.isEmpty() ? Optional.empty() : Optional.of(euro(paid)),
                refunded.isEmpty() ? Optional.empty() : Optional.of(euro(refunded)));
    }

    private static HistoryEntry.Move move() {
        return new HistoryEntry.Move(
                DAY,
                Optional.of("Ida"),
                Slot.BOARD,
                "board-a",
                1,
                PartState.RECEIVED,
                PartState.FAULTY,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of("two memory slots dead"));
    }

    private static HistoryEntry.Swap swap() {
        return new HistoryEntry.Swap(
                DAY,
                Optional.empty(),
                Slot.BOARD,
                Optional.of("board-old"),
                Optional.of("board-a"),
                Optional.of("sold out"));
    }
}
