package rigbrief.report.page;

import java.util.List;

/**
 * A build as a page shows it; all of it text.
 *
 * @param key word of its tier, or its number among the steps
 * @param name name in the reader's language
 * @param meaning what it stands for
 * @param caption what its table of parts is about
 * @param total everything together
 * @param more against the cheapest build of the page; empty for that one
 * @param needs one entry per need of the page, in its order
 * @param parts its parts
 * @param sums what makes up the total, name and amount, the total last
 * @param figures noise, power, heat
 * @param given what is given up or paid, against another build
 * @param cautions what to mind
 * @param notes what is good to know
 * @param breaches rules that it breaks
 * @param proof how sure it is that nothing better exists
 * @param delivery from how many suppliers, and until when
 */
public record BuildView(
        String key,
        String name,
        String meaning,
        String caption,
        String total,
        String more,
        List<NeedView> needs,
        List<PartLine> parts,
        List<List<String>> sums,
        List<Figure> figures,
        List<String> given,
        List<Remark> cautions,
        List<Remark> notes,
        List<Remark> breaches,
        String proof,
        String delivery) {
    /**
     * A remark of a rule.
     *
     * @param title what the rule is about
     * @param text what there is to say, in the reader's language; may be empty
     */
    public record Remark(String title, String text) {}
}
