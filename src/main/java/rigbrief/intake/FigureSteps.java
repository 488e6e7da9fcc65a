package rigbrief.intake;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import rigbrief.brief.Brief;
import rigbrief.brief.MainsByCountry;
import rigbrief.quantity.Money;
import rigbrief.wording.Phrase;

/** What a builder sets: the client's language, fee, tax, power price, hours of use. */
final class FigureSteps {
    private static final String MORE = "more-figures";
    private static final String TOPIC = "figures";
    private static final String YES = "yes";
    private static final String NO = "no";

    private static final List<Choice> LOCALES =
            List.of(
                    Choice.of("language", "en-gb"),
                    Choice.of("language", "en-us"),
                    Choice.of("language", "de-de"),
                    Choice.of("language", "de-at"),
                    Choice.of("language", "de-ch"));

    private FigureSteps() {}

    static List<Question> more(Sheet sheet) {
        return List.of(
                Asking.about(TOPIC, MORE)
                        .choices(List.of(Choice.of(MORE, NO), Choice.of(MORE, YES)))
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
            throw NotUnderstood.of(typed.strip(), "language");
        }
        Brief.Place old = sheet.brief().place();
        int volts = MainsByCountry.volts(locale.getCountry());
        return new Answer(
                entry.toLowerCase(Locale.ROOT),
                sheet.draft()
                        .locale(locale)
                        .place(place(old, volts, old.hoursPerDay(), old.tariffPerKwhMinor()))
                        .toBrief(),
                Phrase.of("then.language", locale, volts));
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
                .ask(sheet.brief().currency().getCurrencyCode())
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
                                    Phrase.of("then.fee", fee));
                        });
    }

    private static Question tax(Sheet sheet) {
        return Asking.about(TOPIC, "tax")
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
                                    Phrase.of("then.tax", Plain.figure(percent)));
                        });
    }

    private static Question tariff(Sheet sheet) {
        int decimals = sheet.brief().currency().getDefaultFractionDigits() + 2;
        return Asking.about(TOPIC, "tariff")
                .ask(sheet.brief().currency().getCurrencyCode())
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
                                    Phrase.of("then.tariff"));
                        });
    }

    private static Question hours(Sheet sheet) {
        return Asking.about(TOPIC, "hours")
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
                                    Phrase.of("then.hours", Plain.figure(hours), hours));
                        });
    }

    private static Question room(Sheet sheet) {
        return Asking.about(TOPIC, "room-temperature")
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
                                    Phrase.of("then.room-temperature", Plain.figure(roomC)));
                        });
    }

    private static Question ecc(Sheet sheet) {
        return Asking.about(TOPIC, "memory-ecc")
                .choices(List.of(Choice.of("memory-ecc", NO), Choice.of("memory-ecc", YES)))
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
