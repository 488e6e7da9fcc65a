package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.proposal.Buildable;
import rigbrief.proposal.Clash;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.Proof;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.quantity.Money;
import rigbrief.wording.Counted;
import rigbrief.wording.Phrase;

/** Proposals in plain text, 80 columns wide. */
public final class ProposalsText implements Report<Proposals> {
    private static final ReportInfo INFO =
            ReportInfo.text("proposals-text", "proposals for people");

    /** More points of a front than this tell a reader nothing; the JSON has them all. */
    private static final int MOST_FRONT_POINTS = 12;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(Proposals answer, Style style) {
        TextPage page = new TextPage(style);
        new Writing(page, answer).document();
        return page.toString();
    }

    private static final class Writing {
        private final TextPage page;
        private final Proposals answer;
        private final AssessmentText assessment;

        Writing(TextPage page, Proposals answer) {
            this.page = page;
            this.answer = answer;
            this.assessment = new AssessmentText(page, answer.brief(), answer.catalogue());
        }

        void document() {
            head();
            if (answer.mix().isPresent()) {
                new MixText(page, answer, answer.mix().get()).write();
            } else if (answer.clash().isPresent()) {
                clash(answer.clash().get());
            } else {
                answer.proposals().forEach(this::proposal);
                if (answer.proposals().size() > 1) {
                    page.blank().chapter("SIDE BY SIDE", "");
                    page.table(TierComparison.of(answer));
                }
                front();
            }
            remarks(answer.remarks());
            page.blank();
        }

        private void head() {
            page.paragraph(
                    0,
                    "Brief \"%s\" for %s: %s."
                            .formatted(answer.brief().name(), answer.brief().client(), outcome()));
            page.paragraph(
                    0,
                    "Ceiling %s all in%s. Catalogue \"%s\" of %s: %s, %s."
                            .formatted(
                                    answer.brief().ceiling(),
                                    answer.brief().quantity() > 1
                                            ? " for " + answer.brief().quantity() + " machines"
                                            : "",
                                    answer.catalogue().name(),
                                    answer.catalogue().asOf(),
                                    Counted.of(answer.catalogue().partCount(), "part"),
                                    Counted.of(answer.catalogue().offerCount(), "offer")));
        }

        private String outcome() {
            if (answer.mix().isPresent()) {
                return "an order in two variants";
            }
            if (answer.clash().isEmpty()) {
                return Counted.of(answer.proposals().size(), "build");
            }
            return answer.clash().get().needs().isEmpty()
                    ? "no build found"
                    : "no build meets its musts";
        }

        private void proposal(Proposal proposal) {
            page.blank()
                    .chapter(
                            proposal.tier().word().toUpperCase(java.util.Locale.ROOT),
                            money(proposal.audit().cost().totalMinor()));
            page.paragraph(0, sentence(proposal.tier().meaning()));
            assessment.parts(proposal.audit(), proposal.reasons());
            buildable(proposal);
            assessment.needs(proposal.audit());
            assessment.score(proposal.audit());
            assessment.figures(proposal.audit());
            assessment.findings("Broken rules", proposal.audit().findings(), Level.BREACH);
            assessment.findings("Cautions", proposal.audit().findings(), Level.CAUTION);
            assessment.findings("Notes", proposal.audit().findings(), Level.NOTE);
            page.section("Proof");
            page.paragraph(2, proof(proposal.proof()));
            remarks(proposal.remarks());
        }

        private void buildable(Proposal proposal) {
            if (answer.brief().quantity() > 1) {
                page.paragraph(
                        2,
                        BuildableWords.of(
                                Buildable.of(
                                        proposal.audit().build(),
                                        answer.brief(),
                                        answer.catalogue())));
            }
        }

        /** A balance is a difference of two figures, so its gap is told on another scale. */
        private static String gapOf(Proof proof) {
            return proof.figure().equals("balance")
                    ? "of what lies between the leanest and the fullest are still open"
                    : "from the best that this catalogue allows";
        }

        private static String proof(Proof proof) {
            if (!proof.proven()) {
                return Rounded.gap(1, proof.gapPercent())
                        .map(
                                percent ->
                                        "Not proven best: at most %s %% %s."
                                                .formatted(percent.toPlainString(), gapOf(proof)))
                        .orElse("Not proven best; how far the best may be is not known.");
            }
            return switch (proof.figure()) {
                case "total" -> "Proven: no build in this catalogue meets every must for less.";
                case "score" -> "Proven: no build under the ceiling reaches a higher score.";
                default ->
                        "Proven: no build strikes a better balance of money and score between"
                                + " the leanest and the fullest.";
            };
        }

        private void front() {
            if (answer.front().size() < 2) {
                return;
            }
            page.section("The front so far: none of these is both cheaper and better than another");
            TextTable table = new TextTable().right("total").right("utility").left("change", 54);
            List<String> before = List.of();
            for (FrontPoint point : answer.front().subList(0, shown())) {
                table.row(
                        Money.ofMinor(point.totalMinor(), answer.brief().currency()).grouped(),
                        Rounded.print(4, point.utility(), ""),
                        change(before, point.parts()));
                before = point.parts();
            }
            page.table(table);
            if (answer.front().size() > shown()) {
                page.paragraph(
                        2, "and " + (answer.front().size() - shown()) + " more in the JSON.");
            }
        }

        private int shown() {
            return Math.min(MOST_FRONT_POINTS, answer.front().size());
        }

        private static String change(List<String> before, List<String> parts) {
            if (before.isEmpty()) {
                return "the cheapest";
            }
            List<String> added = new ArrayList<>(parts);
            added.removeAll(before);
            return added.isEmpty() ? "fewer parts" : String.join(", ", added);
        }

        private void clash(Clash clash) {
            new ClashText(page, answer.brief()).write(clash);
        }

        private void remarks(List<Phrase> remarks) {
            if (!remarks.isEmpty()) {
                page.section("Remarks");
            }
            remarks.forEach(remark -> page.hanging("  - ", remark.toString()));
        }

        private static String sentence(String words) {
            return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                    + words.substring(1)
                    + ".";
        }

        private String money(long minor) {
            return Money.ofMinor(minor, answer.brief().currency()).toString();
        }
    }
}
