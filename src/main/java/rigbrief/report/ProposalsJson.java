package rigbrief.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import rigbrief.proposal.Buildable;
import rigbrief.proposal.Clash;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.Proof;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.quantity.Money;

/** Proposals in JSON, after the contract {@code rigbrief/proposals/1}. */
public final class ProposalsJson implements Report<Proposals> {
    private static final String SCHEMA = "rigbrief/proposals/1";
    private static final ReportInfo INFO =
            ReportInfo.json("proposals-json", "proposals for other programs", SCHEMA);

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(Proposals answer, Style style) {
        return JsonPage.object(json -> new Writing(json, answer).document());
    }

    private static final class Writing {
        private final JsonPage json;
        private final Proposals answer;
        private final AssessmentJson assessment;

        Writing(JsonPage json, Proposals answer) {
            this.json = json;
            this.answer = answer;
            this.assessment = new AssessmentJson(json, answer.brief());
        }

        void document() {
            json.field("schema", SCHEMA)
                    .field("brief", answer.brief().name())
                    .field("client", answer.brief().client())
                    .field("currency", answer.brief().currency().getCurrencyCode())
                    .field("machines", answer.brief().quantity())
                    .field("ceiling", answer.brief().ceiling().plain())
                    .field("seed", answer.seed());
            CatalogueJson.write(json, answer.catalogue());
            json.field("result", answer.impossible() ? "impossible" : "proposed")
                    .list("proposals", answer.proposals(), this::proposal)
                    .list("front", answer.front(), this::frontPoint)
                    .texts("remarks", answer.remarks());
            answer.mix()
                    .ifPresentOrElse(
                            mix -> json.object("mix", of -> MixJson.fields(of, mix, answer)),
                            () -> json.nothing("mix"));
            answer.clash()
                    .ifPresentOrElse(
                            clash -> json.object("impossible", of -> clash(clash)),
                            () -> json.nothing("impossible"));
        }

        private void proposal(Proposal proposal) {
            json.field("tier", proposal.tier().word());
            assessment.fields(proposal.audit(), proposal.reasons());
            json.object("proof", of -> proof(proposal));
            BuildableJson.write(
                    json,
                    Buildable.of(proposal.audit().build(), answer.brief(), answer.catalogue()));
            json.texts("remarks", proposal.remarks());
        }

        private void proof(Proposal proposal) {
            Proof proof = proposal.proof();
            figure("best-possible", proof.bestPossible(), proposal);
            json.field("gap-percent", Rounded.gap(2, proof.gapPercent()))
                    .field("proven", proof.proven())
                    .field("figure", proof.figure());
            figure("reached", proof.reached(), proposal);
            json.field("steps", proof.steps());
        }

        /** A total is money; a score is printed as the utility that it makes. */
        private void figure(String name, double figure, Proposal proposal) {
            if (!Double.isFinite(figure)) {
                json.nothing(name);
                return;
            }
            switch (proposal.proof().figure()) {
                case "total" -> json.field(name, money(Math.round(figure)));
                case "score" ->
                        json.field(
                                name,
                                Rounded.to(4, figure / Math.max(1, proposal.audit().mostPoints())));
                default ->
                        json.field(name, new BigDecimal(figure).setScale(0, RoundingMode.HALF_UP));
            }
        }

        private void frontPoint(FrontPoint point) {
            json.field("total", money(point.totalMinor()))
                    .field("utility", rounded(point.utility()))
                    .texts("parts", point.parts());
        }

        private void clash(Clash clash) {
            ClashJson.fields(json, clash, answer.brief());
        }

        private static BigDecimal rounded(double utility) {
            return Rounded.to(4, utility).orElseThrow();
        }

        private String money(long minor) {
            return Money.ofMinor(minor, answer.brief().currency()).plain();
        }
    }
}
