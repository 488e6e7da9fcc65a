package rigbrief.report.page;

import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.Clash;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.Proposals;
import rigbrief.wording.Phrase;

/**
 * What one proposal document shows.
 *
 * @param brief the brief
 * @param catalogue the catalogue
 * @param sheets the builds, least money first
 * @param front builds to walk through, cheapest first
 * @param clash why there is no build; empty when there is one
 * @param remarks what else to tell
 */
record SheetSet(
        Brief brief,
        Catalogue catalogue,
        List<Sheet> sheets,
        List<FrontPoint> front,
        Optional<Clash> clash,
        List<Phrase> remarks) {
    SheetSet {
        sheets = List.copyOf(sheets);
        front = List.copyOf(front);
        remarks = List.copyOf(remarks);
    }

    static SheetSet of(Proposals answer) {
        return new SheetSet(
                answer.brief(),
                answer.catalogue(),
                answer.proposals().stream().map(Sheet::of).toList(),
                FrontSteps.of(answer),
                answer.clash(),
                answer.remarks());
    }

    static SheetSet of(DocumentSubject subject) {
        Sheet sheet =
                new Sheet(
                        subject.filed().tier().orElse(""),
                        subject.audit(),
                        List.of(),
                        Optional.empty(),
                        List.of());
        return new SheetSet(
                subject.brief(),
                subject.catalogue(),
                List.of(sheet),
                List.of(),
                Optional.empty(),
                List.of());
    }
}
