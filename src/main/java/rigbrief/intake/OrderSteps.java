package rigbrief.intake;

import java.util.List;
import java.util.OptionalInt;
import rigbrief.brief.Brief;

/** Who it is for, how many, how soon, from how many shops. */
final class OrderSteps {
    private static final String FOR_WHOM = "The client";
    private static final String DELIVERY = "Delivery";
    private static final String SHOPS = "shops";
    private static final int MOST_MACHINES = 10_000;
    private static final int MOST_DAYS = 365;
    private static final int MOST_SHOPS = 100;

    private OrderSteps() {}

    static List<Question> client(Sheet sheet) {
        return List.of(
                Asking.about(FOR_WHOM, "client")
                        .ask("Who is this computer for? A name, as it shall stand on the proposal.")
                        .explain(
                                "The name stands on the proposal and in the file; it"
                                        + " changes nothing else.")
                        .read(
                                typed -> {
                                    String name = Entries.text(typed, "a name");
                                    return new Answer(
                                            name,
                                            sheet.draft().client(name).toBrief(),
                                            "The brief is for " + name + ".");
                                }),
                Asking.about(FOR_WHOM, "quantity")
                        .ask("How many computers like this are wanted?")
                        .explain(
                                "All of them will be built from the same parts, and"
                                        + " shops must have enough in stock.")
                        .usual("1")
                        .read(
                                typed -> {
                                    int count = Entries.whole(typed, 1, MOST_MACHINES);
                                    return new Answer(
                                            Integer.toString(count),
                                            sheet.draft().quantity(count).toBrief(),
                                            count == 1
                                                    ? "One computer; every amount is for it."
                                                    : count
                                                            + " computers; every amount"
                                                            + " is for all of them"
                                                            + " together.");
                                }));
    }

    static List<Question> delivery(Sheet sheet) {
        return List.of(
                Asking.about(DELIVERY, "days-to-wait")
                        .ask(
                                "Within how many days must the parts arrive? Type a"
                                        + " number of days, or any.")
                        .explain(
                                "Shops state how long they take to send a part. A part"
                                        + " that takes longer than this is left out.")
                        .usual(Levels.ANY)
                        .read(typed -> days(sheet, typed)),
                Asking.about(DELIVERY, SHOPS)
                        .ask("From how many shops may the parts come? Type a number, or any.")
                        .explain(
                                ("Each shop charges its own delivery, which is part of every"
                                                + " amount shown here. Few shops make ordering and"
                                                + " returning simpler; many make it cheaper. The"
                                                + " catalogue has %d.")
                                        .formatted(sheet.catalogue().suppliers().size()))
                        .usual(Levels.ANY)
                        .read(typed -> shops(sheet, typed)));
    }

    private static Answer days(Sheet sheet, String typed) throws NotUnderstood {
        Brief.Buying buying = sheet.brief().buying();
        OptionalInt days = numberOrAny(typed, 0, MOST_DAYS);
        return new Answer(
                text(days),
                sheet.draft()
                        .buying(
                                new Brief.Buying(
                                        buying.suppliers(),
                                        buying.atMostSuppliers(),
                                        days,
                                        buying.variants()))
                        .toBrief(),
                days.isEmpty()
                        ? "Parts may take as long as they take."
                        : "Parts that take longer than %s are left out."
                                .formatted(Plain.counted(days.getAsInt(), "day")));
    }

    private static Answer shops(Sheet sheet, String typed) throws NotUnderstood {
        Brief.Buying buying = sheet.brief().buying();
        OptionalInt shops = numberOrAny(typed, 1, MOST_SHOPS);
        return new Answer(
                text(shops),
                sheet.draft()
                        .buying(
                                new Brief.Buying(
                                        buying.suppliers(),
                                        shops,
                                        buying.withinDays(),
                                        buying.variants()))
                        .toBrief(),
                shops.isEmpty()
                        ? "Each part may come from whichever shop makes the whole cheapest."
                        : "All parts come from at most %s."
                                .formatted(Plain.counted(shops.getAsInt(), "shop")));
    }

    private static OptionalInt numberOrAny(String typed, int least, int most) throws NotUnderstood {
        if (typed.strip().equalsIgnoreCase(Levels.ANY)) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(Entries.whole(typed, least, most));
    }

    private static String text(OptionalInt number) {
        return number.isEmpty() ? Levels.ANY : Integer.toString(number.getAsInt());
    }
}
