package rigbrief.report;

import java.util.List;

/** The reports, one line each. */
public final class Reports {
    public static final List<Report<?>> ALL =
            List.of(
                    new ProposalsText(),
                    new ProposalsJson(),
                    new BatchText(),
                    new BatchCsv(),
                    new BudgetText(),
                    new BudgetJson(),
                    new BudgetCsv(),
                    new AuditText(),
                    new AuditJson(),
                    new ReplacementText(),
                    new ReplacementJson(),
                    new WatchText(),
                    new WatchJson(),
                    new OrderText(),
                    new OrderJson(),
                    new OrderListText(),
                    new OrderListCsv(),
                    new AssemblyText(),
                    new HandoverText(),
                    new ExplanationText(),
                    new ExplanationJson(),
                    new TuningText(),
                    new TuningJson(),
                    new SheetText(),
                    new SheetCsv(),
                    new SheetJson(),
                    new AcceptanceText(),
                    new AcceptanceJson(),
                    new CalibrationText(),
                    new CalibrationJson(),
                    new ImportText(),
                    new ImportJson(),
                    new CatalogueCheckText(),
                    new CatalogueCheckJson(),
                    new CatalogueStatsText(),
                    new CatalogueStatsJson(),
                    new RulesText());

    private Reports() {}
}
