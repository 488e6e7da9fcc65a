package rigbrief.report.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rigbrief.catalogue.Catalogue;
import rigbrief.intake.FormSheet;

/** The page on which clients answer by themselves; it writes the brief, and sends nothing. */
public final class FormPage {
    private FormPage() {}

    /** The page for a catalogue, as one HTML file that needs no other and no network. */
    public static String write(Catalogue catalogue) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("sheet", FormSheet.of(catalogue));
        model.put("currency", catalogue.currency().getCurrencyCode());
        model.put("decimals", Integer.toString(catalogue.currency().getDefaultFractionDigits()));
        model.put(
                "plate",
                List.of(
                        List.of("Takes", "about five minutes"),
                        List.of("Goes", "nowhere: all of it stays on this page until you send it"),
                        List.of("Becomes", "a brief, one small file")));
        Page page = new Page("form.ftlh", "Your next computer", model, Optional.of("form.js"));
        return PageWriter.html(page, Words.of(Locale.UK));
    }
}
