package rigbrief.cli;

import java.util.List;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import rigbrief.brief.Brief;
import rigbrief.diagnostic.Quotation;
import rigbrief.report.page.Words;

/** The option that names the language of a page. */
final class LanguageOption {
    @Option(
            names = "--language",
            paramLabel = "LANGUAGE",
            converter = Known.class,
            description = "Language of pages: en, de. Default: that of the brief's locale.")
    private Locale language;

    /** The language asked for; {@code own} for that of each brief. */
    String word() {
        return language == null ? "own" : language.getLanguage();
    }

    /** Words in the language asked for, numbers as in the brief's country. */
    Words words(Brief brief) {
        Locale told = brief.locale();
        return Words.of(
                language == null ? told : new Locale(language.getLanguage(), told.getCountry()));
    }

    /** One of the languages there are texts in. */
    static final class Known implements ITypeConverter<Locale> {
        @Override
        public Locale convert(String word) {
            for (Locale locale : Words.LANGUAGES) {
                if (locale.getLanguage().equals(word)) {
                    return locale;
                }
            }
            List<String> known = Words.LANGUAGES.stream().map(Locale::getLanguage).toList();
            throw new TypeConversionException(
                    "found %s, expected one of %s; texts exist in these"
                            .formatted(Quotation.of(word), String.join(", ", known)));
        }
    }
}
