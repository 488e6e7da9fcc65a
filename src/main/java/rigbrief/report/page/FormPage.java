package rigbrief.report.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.catalogue.Catalogue;
import rigbrief.intake.FormSheet;

/** The page on which clients answer by themselves; it writes the brief, and sends nothing. */
public final class FormPage {
    private FormPage() {}

    /**
     * The page for a catalogue in a language, as one HTML file that needs no other and no network.
     */
    public static String write(Catalogue catalogue, Words words) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("sheet", FormSheet.of(catalogue, words.texts()));
        model.put("currency", catalogue.currency().getCurrencyCode());
        model.put("sign", catalogue.currency().getSymbol(words.locale()));
        model.put("decimals", Integer.toString(catalogue.currency().getDefaultFractionDigits()));
        model.put(
                "plate",
                List.of(
                        List.of(words.text("form.takes"), words.text("form.takes.value")),
                        List.of(words.text("form.goes"), words.text("form.goes.value")),
                        List.of(words.text("form.becomes"), words.text("form.becomes.value"))));
        Page page = new Page("form.ftlh", words.text("form.title"), model, Optional.of("form.js"));
        return PageWriter.html(page, words);
    }
}
