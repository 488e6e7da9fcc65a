package rigbrief.intake;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import rigbrief.brief.Brief;
import rigbrief.brief.MainsByCountry;
import rigbrief.quantity.Money;

/** What a builder sets: the client's language, fee, tax, power price, hours of use. */
final class FigureSteps {
    private static final String MORE = "more-figures";
    private static final String TOPIC = "Figures for the builder";
    private static final String YES = "yes";
    private static final String NO = "no";

    private static final List<Choice> LOCALES =
            List.of(
                    new Choice("en-gb", "English, Great Britain", "230 volts"),
                    new Choice("en-us", "English, United States", "115 volts, Letter paper"),
                    new Choice("de-de", "German, Germany", "230 volts"),
                    new Choice("de-at", "German, Austria", "230 volts"),
                    new Choice("de-ch", "German, Switzerland", "230 volts"));

    private FigureSteps() {}

    static List<Question> more(Sheet sheet) {
        return List.of(
                Asking.about(TOPIC, MORE)
                        .ask(
                                "Shall language, fee for the work, tax, power price,"
                                        + " hours of use, room temperature and memory that corrects"
                                        + " errors be set as well?")
                        .explain(
                                "These are for whoever builds the computer. Without"
                                        + " them the proposal is in English, no fee and no tax"
                                        + " are charged, a kilowatt-hour costs 0.30 the"
                                        + " computer is used four hours a day in a room of 25 degrees,"
                                        + " and the memory is of the usual sort.")
                        .choices(
                                List.of(
                                        new Choice(NO, NO, "The usual figures are taken."),
                                        new Choice(YES, YES, "You will be asked for them.")))
                        .usual(NO)
                        .readChoice(choice -> sheet.brief()));
    }

    static List<Question> figures(Sheet sheet) {
        if (!sheet.answered(MORE, YES)) {
            return List.of();
        }
        return List.of(
                locale(sheet),
                fee(sheet),
                tax(sheet),
                tariff(sheet),
                hours(sheet),
                room(sheet),
                ecc(sheet));
    }

    private static Question locale(Sheet sheet) {
        return Asking.about(TOPIC, "language")
                .ask("In which language, and as in which country, shall the proposal be written?")
                .explain(
                        "Numbers, dates and paper follow the country, and so does the"
                                + " voltage at the wall. Another may be typed as two letters for"
                                + " the language and two for the country, such as en-IE; a"
                                + " language that there are no texts for gets English.")
                .choices(LOCALES)
                .usual("en-gb")
                .read(typed -> locale(sheet, typed));
    }

    private static Answer locale(Sheet sheet, String typed) throws NotUnderstood {
        String entry = Entries.find(LOCALES, typed).map(Choice::word).orElse(typed.strip());
        String[] letters = entry.split("-");
        boolean formed = entry.matches("[A-Za-z]{2}-[A-Za-z]{2}");
        Locale locale = formed ? new Locale(letters[0], letters[1]) : Locale.ROOT;
        // A language's tag may differ from what was typed: no file holds what it would not read.
        boolean known =
                formed
                        && locale.toLanguageTag().equalsIgnoreCase(entry)
                        && Arrays.asList(Locale.getISOLanguages()).contains(locale.getLanguage())
                        && Arrays.asList(Locale.getISOCountries()).contains(locale.getCountry());
        if (!known) {
            throw new NotUnderstood(
                    typed.strip(), "a language and a country", "write them like en-IE or de-AT");
        }
        Brief.Place old = sheet.brief().place();
        int volts = MainsByCountry.volts(locale.getCountry());
        return new Answer(
                entry.toLowerCase(Locale.ROOT),
                sheet.draft()
                        .locale(locale)
                        .place(place(old, volts, old.hoursPerDay(), old.tariffPerKwhMinor()))
                        .toBrief(),
                "Written as in %s; %d volts at the wall."
                        .formatted(locale.getDisplayCountry(Locale.ENGLISH), volts));
    }

    private static Brief.Place place(
            Brief.Place old, int volts, double hoursPerDay, long tariffMinor) {
        return new Brief.Place(
                old.roomC(),
                old.altitudeM(),
                volts,
                hoursPerDay,
                old.loadShare(),
                tariffMinor,
                old.helperProcessor());
    }

    private static Question fee(Sheet sheet) {
        return Asking.about(TOPIC, "fee")
                .ask(
                        "What is charged for building each computer, in %s?"
                                .formatted(sheet.brief().currency()))
                .explain("The fee for work. It is part of the total.")
                .usual("0")
                .read(
                        typed -> {
                            Money fee = Entries.money(typed, sheet.brief().currency(), true);
                            return new Answer(
                                    Entries.plain(fee.amount()),
                                    sheet.draft()
                                            .fees(
                                                    new Brief.Fees(
                                                            fee,
                                                            sheet.brief().fees().taxBasisPoints()))
                                            .toBrief(),
                                    fee + " a computer for work.");
                        });
    }

    private static Question tax(Sheet sheet) {
        return Asking.about(TOPIC, "tax")
                .ask("How many percent of tax come on top of parts, delivery and work?")
                .explain(
                        "Only if the catalogue's prices are without tax. 0 if they"
                                + " hold it already.")
                .usual("0")
                .read(
                        typed -> {
                            BigDecimal percent = Entries.number(typed.replace("%", ""), 0, 100, 2);
                            int basisPoints = percent.movePointRight(2).intValueExact();
                            return new Answer(
                                    Entries.plain(percent),
                                    sheet.draft()
                                            .fees(
                                                    new Brief.Fees(
                                                            sheet.brief().fees().assembly(),
                                                            basisPoints))
                                            .toBrief(),
                                    Entries.plain(percent) + " % of tax are part of every total.");
                        });
    }

    private static Question tariff(Sheet sheet) {
        int decimals = sheet.brief().currency().getDefaultFractionDigits() + 2;
        return Asking.about(TOPIC, "tariff")
                .ask(
                        "What does a kilowatt-hour of electricity cost, in %s?"
                                .formatted(sheet.brief().currency()))
                .explain(
                        "It stands on the power bill. A kilowatt-hour (kWh) runs a"
                                + " computer of 200 watts for five hours.")
                .usual("0.30")
                .read(
                        typed -> {
                            BigDecimal price = Entries.number(typed, 0, 1_000, decimals);
                            Brief.Place old = sheet.brief().place();
                            long minor = price.movePointRight(decimals).longValueExact();
                            return new Answer(
                                    Entries.plain(price),
                                    sheet.draft()
                                            .place(
                                                    new Brief.Place(
                                                            old.roomC(),
                                                            old.altitudeM(),
                                                            old.mainsV(),
                                                            old.hoursPerDay(),
                                                            old.loadShare(),
                                                            minor,
                                                            old.helperProcessor()))
                                            .toBrief(),
                                    "The yearly power bill is reckoned with it.");
                        });
    }

    private static Question hours(Sheet sheet) {
        return Asking.about(TOPIC, "hours")
                .ask("How many hours a day will it be used?")
                .explain("The yearly power bill and the wear of drives follow from it.")
                .usual("4")
                .read(
                        typed -> {
                            BigDecimal hours = Entries.number(typed, 0, 24, 1);
                            Brief.Place old = sheet.brief().place();
                            return new Answer(
                                    Entries.plain(hours),
                                    sheet.draft()
                                            .place(
                                                    new Brief.Place(
                                                            old.roomC(),
                                                            old.altitudeM(),
                                                            old.mainsV(),
                                                            hours.doubleValue(),
                                                            old.loadShare(),
                                                            old.tariffPerKwhMinor(),
                                                            old.helperProcessor()))
                                            .toBrief(),
                                    "Reckoned with %s hours a day."
                                            .formatted(Entries.plain(hours)));
                        });
    }

    private static Question room(Sheet sheet) {
        return Asking.about(TOPIC, "room-temperature")
                .ask("How warm does the room get where it is used, in degrees Celsius?")
                .explain(
                        "On the warmest days on which it has to work. Every temperature inside"
                                + " starts from it, and so do the speeds of the fans.")
                .usual(
                        Entries.plain(
                                BigDecimal.valueOf(sheet.brief().place().roomC())
                                        .stripTrailingZeros()))
                .read(
                        typed -> {
                            BigDecimal roomC = Entries.number(typed, 5, 40, 1);
                            Brief.Place old = sheet.brief().place();
                            return new Answer(
                                    Entries.plain(roomC),
                                    sheet.draft()
                                            .place(
                                                    new Brief.Place(
                                                            roomC.doubleValue(),
                                                            old.altitudeM(),
                                                            old.mainsV(),
                                                            old.hoursPerDay(),
                                                            old.loadShare(),
                                                            old.tariffPerKwhMinor(),
                                                            old.helperProcessor()))
                                            .toBrief(),
                                    "Heat and noise are reckoned for a room of %s degrees."
                                            .formatted(Entries.plain(roomC)));
                        });
    }

    private static Question ecc(Sheet sheet) {
        return Asking.about(TOPIC, "memory-ecc")
                .ask("Must the memory correct errors by itself?")
                .explain(
                        "Such memory is called ECC. It notices and mends single wrong bits; it is"
                                + " dearer, and board and processor must be made for it. For"
                                + " work whose numbers must not be wrong.")
                .choices(
                        List.of(
                                new Choice(NO, NO, "Memory of the usual sort will do."),
                                new Choice(YES, YES, "Memory without it is left out.")))
                .usual(NO)
                .readChoice(
                        choice ->
                                sheet.draft()
                                        .memory(
                                                new Brief.MemoryNeed(
                                                        sheet.brief().memory().atLeastGb(),
                                                        choice.word().equals(YES)))
                                        .toBrief());
    }
}
