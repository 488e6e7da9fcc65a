package rigbrief.report.page;

/** The proposal: what the client gets, for what, and why. */
public final class ProposalDocument implements Document {
    @Override
    public String word() {
        return "proposal";
    }

    @Override
    public Page page(DocumentSubject subject, Words words) {
        return new ProposalPage(SheetSet.of(subject), words).page();
    }

    @Override
    public String text(DocumentSubject subject, Words words) {
        return new ProposalPage(SheetSet.of(subject), words).text();
    }
}
