package rigbrief.report.page;

import java.util.List;
import rigbrief.report.AssemblyDocument;
import rigbrief.report.HandoverDocument;
import rigbrief.report.OrderListDocument;

/** The documents, one line each. */
public final class Documents {
    /** In the order in which help lists them. */
    public static final List<Document> ALL =
            List.of(
                    new ProposalDocument(),
                    new OrderListDocument(),
                    new AssemblyDocument(),
                    new HandoverDocument());

    private Documents() {}
}
