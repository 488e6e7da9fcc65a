package rigbrief.report;

import java.util.List;
import rigbrief.rule.Rule;

/** The rules in plain text: id, title, unit, source. */
public final class RulesText implements Report<List<Rule>> {
    private static final ReportInfo INFO = ReportInfo.text("rules-text", "the rules for people");
    private static final int ID_COLUMNS = 20;
    private static final int TITLE_COLUMNS = 48;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(List<Rule> rules, Style style) {
        TextTable table =
                new TextTable()
                        .left("rule", ID_COLUMNS)
                        .left("met when", TITLE_COLUMNS)
                        .left("unit", ID_COLUMNS);
        for (Rule rule : rules) {
            String symbol = rule.info().unit().symbol();
            table.remarked(
                    rule.info().source().text(),
                    rule.info().id(),
                    rule.info().title(),
                    symbol.isEmpty() ? "-" : symbol);
        }
        return new TextPage(style).table(table).blank().toString();
    }
}
