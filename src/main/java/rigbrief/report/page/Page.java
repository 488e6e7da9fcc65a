package rigbrief.report.page;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A page to be written.
 *
 * @param template name of its template in {@code rigbrief/page}, such as {@code proposal.ftlh}
 * @param title its title
 * @param model what the template shows; texts in it are escaped by the template
 * @param script name of its script in {@code rigbrief/page}; empty where nothing moves
 */
public record Page(
        String template, String title, Map<String, Object> model, Optional<String> script) {
    public Page {
        model = Collections.unmodifiableMap(new LinkedHashMap<>(model));
    }

    /** A page on which nothing moves. */
    public static Page still(String template, String title, Map<String, Object> model) {
        return new Page(template, title, model, Optional.empty());
    }
}
