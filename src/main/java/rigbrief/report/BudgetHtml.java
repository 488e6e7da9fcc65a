package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import rigbrief.diagnostic.Quotation;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.CeilingStep;
import rigbrief.proposal.budget.FrontStep;
import rigbrief.proposal.budget.GoalTotal;
import rigbrief.proposal.budget.NeedPrice;
import rigbrief.proposal.budget.Variant;
import rigbrief.proposal.clash.Change;
import rigbrief.proposal.clash.WayOut;
import rigbrief.proposal.front.Knee;
import rigbrief.proposal.need.Need;
import rigbrief.wording.Phrase;

/** What the goals of a brief cost, as one HTML page that needs nothing else. */
public final class BudgetHtml implements Report<Budget> {
    private static final ReportInfo INFO =
            ReportInfo.text("budget-html", "what the goals of a brief cost, as a page");

    private static final String LOOKS =
            """
            body{font:16px/1.5 sans-serif;color:#222b33;background:#fff;max-width:60rem;margin:2rem auto;padding:0 1rem}
            h1{font-size:1.6rem}h2{font-size:1.2rem;margin-top:2rem}
            table{border-collapse:collapse;margin:.5rem 0}
            th,td{text-align:left;vertical-align:top;padding:.25rem .8rem .25rem 0;border-bottom:1px solid #d5d9d6}
            td.n,th.n{text-align:right;font-variant-numeric:tabular-nums}
            figure{margin:1rem 0;overflow-x:auto}svg{max-width:100%;height:auto}
            figcaption,.small{font-size:.9rem;color:#48535c}
            @media print{body{margin:0}}
            """;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(Budget budget, Style style) {
        return new Writing(budget).document();
    }

    private static final class Writing {
        private final Budget budget;
        private final BudgetWords words;
        private final StringBuilder html = new StringBuilder();

        Writing(Budget budget) {
            this.budget = budget;
            this.words = new BudgetWords(budget.brief());
        }

        String document() {
            String title = "Budget for " + budget.brief().client();
            html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                    .append("<meta name=\"viewport\" content=\"width=device-width\">\n<title>")
                    .append(safe(title))
                    .append("</title>\n<style>\n")
                    .append(LOOKS)
                    .append("</style>\n</head>\n<body>\n<main>\n");
            element("h1", title);
            element(
                    "p",
                    "Brief \"%s\", ceiling %s. Catalogue \"%s\" of %s."
                            .formatted(
                                    budget.brief().name(),
                                    budget.brief().ceiling(),
                                    budget.catalogue().name(),
                                    budget.catalogue().asOf()));
            if (budget.partial()) {
                element("p", "Called off before all was answered: this page is partial.");
            }
            if (budget.clash().isPresent()) {
                clash();
            } else {
                totals();
                prices();
                front();
                ceiling();
            }
            return html.append("</main>\n</body>\n</html>\n").toString();
        }

        private void clash() {
            element("h2", "No build meets its musts at any price");
            for (List<Phrase> set : budget.clash().orElseThrow().sets()) {
                element("p", "Not together: " + Phrase.joined("; ", set) + ".");
            }
            budget.clash()
                    .orElseThrow()
                    .explanation()
                    .forEach(line -> element("p", line.toString()));
            List<List<String>> rows = new ArrayList<>();
            for (WayOut way : budget.clash().orElseThrow().waysOut()) {
                rows.add(
                        List.of(
                                joined(way.changes().stream().map(Change::need).toList()),
                                joined(way.changes().stream().map(Change::from).toList()),
                                joined(way.changes().stream().map(Change::to).toList()),
                                words.plain(way.totalMinor())));
            }
            table("Ways out", List.of("let go", "from", "to", "total"), 3, rows);
        }

        private static String joined(List<Phrase> texts) {
            return String.join(" and ", texts.stream().map(Phrase::toString).toList());
        }

        private void totals() {
            element("h2", "Least totals");
            element(
                    "p",
                    "Every must together: "
                            + words.least(budget.musts())
                            + budget.wishesToo()
                                    .map(least -> "; every wish too: " + words.least(least))
                                    .orElse("")
                            + ".");
            List<List<String>> rows = new ArrayList<>();
            for (GoalTotal goal : budget.goals()) {
                rows.add(
                        List.of(
                                goal.need().name(),
                                goal.need().kind() == Need.Kind.WISH ? "wish" : "must",
                                words.least(goal.alone()),
                                words.least(goal.together())));
            }
            table(
                    "The least total that reaches one goal; a star: not proven",
                    List.of("goal", "kind", "alone", "with every must"),
                    2,
                    rows);
        }

        private void prices() {
            List<List<String>> rows = new ArrayList<>();
            for (NeedPrice price : budget.prices()) {
                rows.add(row(price.need().name(), price.without()));
                price.softer().ifPresent(variant -> rows.add(row("", variant)));
                price.harder().ifPresent(variant -> rows.add(row("", variant)));
            }
            element("h2", "What each must costs");
            table(
                    "By solving again without it, and a step beside it: what the least total and the best utility under the ceiling become",
                    List.of("must", "instead", "least total", "utility"),
                    2,
                    rows);
        }

        private List<String> row(String need, Variant variant) {
            return List.of(
                    need,
                    variant.words(),
                    words.moneyOf(variant, budget),
                    BudgetWords.utilityOf(variant, budget));
        }

        private void front() {
            element("h2", "The front up to " + words.money(budget.upToMinor()));
            if (budget.front().isEmpty()) {
                element("p", "No build that meets every must was found so far down.");
                return;
            }
            if (budget.front().size() > 1) {
                html.append("<figure>\n")
                        .append(BudgetChart.svg(budget))
                        .append("\n<figcaption>")
                        .append(safe(String.join(" ", BudgetChart.legend())))
                        .append(' ')
                        .append(safe("The knee: " + Knee.MEANING + "."))
                        .append("</figcaption>\n</figure>\n");
            }
            List<List<String>> rows = new ArrayList<>();
            FrontStep before = null;
            for (FrontStep step : budget.front()) {
                rows.add(
                        List.of(
                                words.plain(step.totalMinor()) + (step.knee() ? " (knee)" : ""),
                                Rounded.print(4, step.utility(), ""),
                                Rounded.gap(4, step.gap()).map(Object::toString).orElse("?"),
                                BudgetWords.rates(step.rates()),
                                before == null ? "" : words.step(before, step)));
                before = step;
            }
            table(
                    budget.frontProven()
                            ? "Every build of the front, proven"
                            : "The builds found; gap: how much more utility is not ruled out",
                    List.of("total", "utility", "gap", "promises", "what changes"),
                    -1,
                    rows);
        }

        private void ceiling() {
            List<List<String>> rows = new ArrayList<>();
            for (CeilingStep step : budget.ceilingSteps()) {
                boolean less = step.moreMinor() < 0;
                FrontStep from = less ? step.to() : step.from();
                FrontStep to = less ? step.from() : step.to();
                rows.add(
                        List.of(
                                words.more(step.moreMinor()),
                                BudgetWords.utility(step.gained()),
                                from.totalMinor() == to.totalMinor()
                                        ? "nothing"
                                        : (less ? "the last bought " : "the next would buy ")
                                                + words.step(from, to)));
            }
            if (!rows.isEmpty()) {
                element("h2", "The ceiling");
                table("Other ceilings", List.of("ceiling", "utility", "what changes"), -1, rows);
            }
        }

        private void element(String name, String text) {
            html.append('<').append(name).append('>').append(safe(text));
            html.append("</").append(name).append(">\n");
        }

        /** A table; columns from a given one on hold figures. */
        private void table(
                String caption, List<String> heads, int figuresFrom, List<List<String>> rows) {
            if (rows.isEmpty()) {
                return;
            }
            html.append("<table>\n<caption class=\"small\">").append(safe(caption));
            html.append("</caption>\n<thead><tr>");
            for (int i = 0; i < heads.size(); i++) {
                html.append("<th scope=\"col\"").append(figure(i, figuresFrom)).append('>');
                html.append(safe(heads.get(i))).append("</th>");
            }
            html.append("</tr></thead>\n<tbody>\n");
            for (List<String> row : rows) {
                html.append("<tr>");
                for (int i = 0; i < row.size(); i++) {
                    html.append("<td").append(figure(i, figuresFrom)).append('>');
                    html.append(safe(row.get(i))).append("</td>");
                }
                html.append("</tr>\n");
            }
            html.append("</tbody>\n</table>\n");
        }

        private static String figure(int column, int figuresFrom) {
            return figuresFrom >= 0 && column >= figuresFrom ? " class=\"n\"" : "";
        }

        /** Letters alone: nothing in a name acts. */
        private static String safe(String text) {
            return Quotation.visible(text)
                    .replace("&", "&amp;")
                    .replace("<", "&lt;")
                    .replace(">", "&gt;")
                    .replace("\"", "&quot;");
        }
    }
}
