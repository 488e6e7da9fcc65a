package rigbrief.report;

import java.util.List;

/** The reports, one line each. */
public final class Reports {
    public static final List<Report<?>> ALL =
            List.of(
                    new ProposalsText(),
                    new ProposalsJson(),
                    new AuditText(),
                    new AuditJson(),
                    new ExplanationText(),
                    new ExplanationJson(),
                    new CatalogueCheckText(),
                    new CatalogueCheckJson(),
                    new CatalogueStatsText(),
                    new CatalogueStatsJson(),
                    new RulesText());

    private Reports() {}
}
