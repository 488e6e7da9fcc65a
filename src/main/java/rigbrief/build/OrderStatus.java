package rigbrief.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/**
 * How an order stands.
 *
 * @param record the build
 * @param lines its parts, those set aside behind
 * @param steps what is to be done next, the most pressing first
 * @param money where the money is
 * @param fitted machines of which every part is fitted
 * @param here machines of which every part is here at least, the fitted ones among them
 */
public record OrderStatus(
        BuildRecord record,
        List<Line> lines,
        List<Step> steps,
        OrderMoney money,
        int fitted,
        int here) {
    public OrderStatus {
        lines = List.copyOf(lines);
        steps = List.copyOf(steps);
    }

    /**
     * A part of an order.
     *
     * @param slot its slot
     * @param part its id
     * @param name maker and model
     * @param kept whether it is the client's own
     * @param aside whether it was set aside
     * @param unitPrice planned price of each
     * @param supplier planned supplier
     * @param units its units
     */
    public record Line(
            Slot slot,
            String part,
            String name,
            boolean kept,
            boolean aside,
            Money unitPrice,
            Optional<String> supplier,
            List<Units> units) {
        public Line {
            units = List.copyOf(units);
        }

        /** How many units are in a state. */
        public int count(PartState state) {
            return units.stream()
                    .filter(group -> group.state() == state)
                    .mapToInt(Units::count)
                    .sum();
        }
    }

    /** What can be done with units, the most pressing first. */
    public enum Action {
        /** A faulty part, or one that was set aside, goes back. */
        SEND_BACK,
        /** The order of a part that was set aside is cancelled. */
        CANCEL,
        /** A wanted part is ordered. */
        ORDER,
        /** A wanted part of the client's is fetched. */
        FETCH,
        /** An ordered part is waited for. */
        AWAIT,
        /** Money for a returned part is asked for. */
        CLAIM,
        /** A received part is fitted. */
        FIT
    }

    /**
     * Something to be done next.
     *
     * @param action what
     * @param line the part
     * @param units the units
     * @param due the day an awaited part should be here; empty where no offer tells the lead time
     */
    public record Step(Action action, Line line, Units units, Optional<LocalDate> due) {}

    /** How the order of a build stands. */
    public static OrderStatus of(BuildRecord record, Catalogue catalogue) {
        List<Line> lines = lines(record);
        Currency currency = catalogue.currency();
        List<Step> steps = new ArrayList<>();
        for (Line line : lines) {
            for (Units units : line.units()) {
                action(line, units)
                        .ifPresent(
                                action ->
                                        steps.add(
                                                new Step(
                                                        action,
                                                        line,
                                                        units,
                                                        due(line, units, catalogue))));
            }
        }
        steps.sort(Comparator.comparing(Step::action));
        return new OrderStatus(
                record,
                lines,
                steps,
                OrderMoney.of(lines, currency),
                machines(record, List.of(PartState.FITTED)),
                machines(record, List.of(PartState.FITTED, PartState.RECEIVED)));
    }

    private static List<Line> lines(BuildRecord record) {
        List<Line> lines = new ArrayList<>();
        for (BuildLine it : record.lines()) {
            lines.add(
                    new Line(
                            it.slot(),
                            it.part().id(),
                            it.part().name(),
                            it.kept(),
                            false,
                            it.unitPrice(),
                            it.supplier(),
                            it.units(record.machines())));
        }
        for (SetAside it : record.aside()) {
            lines.add(
                    new Line(
                            it.slot(),
                            it.part(),
                            it.name(),
                            it.kept(),
                            true,
                            it.unitPrice(),
                            it.supplier(),
                            it.units()));
        }
        return lines;
    }

    private static Optional<Action> action(Line line, Units units) {
        return switch (units.state()) {
            case WANTED -> Optional.of(line.kept() ? Action.FETCH : Action.ORDER);
            case ORDERED -> Optional.of(line.aside() ? Action.CANCEL : Action.AWAIT);
            case RECEIVED -> Optional.of(line.aside() ? Action.SEND_BACK : Action.FIT);
            case FITTED -> line.aside() ? Optional.of(Action.SEND_BACK) : Optional.empty();
            case FAULTY -> Optional.of(Action.SEND_BACK);
            case RETURNED ->
                    units.paid().isPresent() && units.refunded().isEmpty()
                            ? Optional.of(Action.CLAIM)
                            : Optional.empty();
        };
    }

    /** The day of the order plus the lead time that the supplier states today. */
    private static Optional<LocalDate> due(Line line, Units units, Catalogue catalogue) {
        if (units.state() != PartState.ORDERED || units.since().isEmpty()) {
            return Optional.empty();
        }
        return catalogue.offers(line.part()).stream()
                .filter(offer -> units.supplier().filter(offer.supplier()::equals).isPresent())
                .min(Comparator.comparing(Offer::leadDays))
                .map(offer -> units.since().get().plusDays(offer.leadDays()));
    }

    private static int machines(BuildRecord record, List<PartState> states) {
        int least = record.lines().isEmpty() ? 0 : record.machines();
        for (BuildLine line : record.lines()) {
            int units =
                    line.units(record.machines()).stream()
                            .filter(group -> states.contains(group.state()))
                            .mapToInt(Units::count)
                            .sum();
            least = Math.min(least, units / line.pieces());
        }
        return least;
    }
}
