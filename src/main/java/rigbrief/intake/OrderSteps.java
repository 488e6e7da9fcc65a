package rigbrief.intake;

import java.util.List;
import java.util.OptionalInt;
import rigbrief.brief.Brief;
import rigbrief.wording.Phrase;

/** Who it is for, how many, how soon, from how many shops. */
final class OrderSteps {
    private static final String FOR_WHOM = "client";
    private static final String DELIVERY = "delivery";
    private static final String SHOPS = "shops";
    private static final int MOST_MACHINES = 10_000;
    private static final int MOST_DAYS = 365;
    private static final int MOST_SHOPS = 100;

    private OrderSteps() {}

    static List<Question> client(Sheet sheet) {
        return List.of(
                Asking.about(FOR_WHOM, "client")
                        .read(
                                typed -> {
                                    String name = Entries.text(typed, Phrase.of("expected.name"));
                                    return new Answer(
                                            name,
                                            sheet.draft().client(name).toBrief(),
                                            Phrase.of("then.client", name));
                                }),
                Asking.about(FOR_WHOM, "quantity")
                        .usual("1")
                        .read(
                                typed -> {
                                    int count = Entries.whole(typed, 1, MOST_MACHINES);
                                    return new Answer(
                                            Integer.toString(count),
                                            sheet.draft().quantity(count).toBrief(),
                                            Phrase.of("then.quantity", count));
                                }));
    }

    static List<Question> delivery(Sheet sheet) {
        return List.of(
                Asking.about(DELIVERY, "days-to-wait")
                        .usual(Levels.ANY)
                        .read(typed -> days(sheet, typed)),
                Asking.about(DELIVERY, SHOPS)
                        .why(sheet.catalogue().suppliers().size())
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
                        ? Phrase.of("then.days-to-wait.any")
                        : Phrase.of("then.days-to-wait", days.getAsInt()));
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
                        ? Phrase.of("then.shops.any")
                        : Phrase.of("then.shops", shops.getAsInt()));
    }

    private static OptionalInt numberOrAny(String typed, int least, int most) throws NotUnderstood {
        if (Entries.means(Levels.ANY, typed)) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(Entries.whole(typed, least, most));
    }

    private static String text(OptionalInt number) {
        return number.isEmpty() ? Levels.ANY : Integer.toString(number.getAsInt());
    }
}
