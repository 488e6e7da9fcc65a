package rigbrief.api;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import rigbrief.brief.Brief;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.SearchLimits;

/** The README's example for Java programs, word for word; {@link RigbriefTest} compares. */
final class Example {
    private Example() {}

    static String cheapest(Path catalogue, Path file, AtomicBoolean calledOff) {
        // example
        try {
            Rigbrief shop = Rigbrief.open(catalogue); // once; then ask from any thread
            Brief brief = shop.brief(file);
            Proposals answer =
                    shop.within(new SearchLimits(1, 1_500, 20_000, Optional.empty())) // fewer steps
                            .calledOffBy(calledOff::get) // ends with the best known by then
                            .propose(brief);
            if (answer.impossible()) {
                return Json.of(answer); // as --format json prints it
            }
            Proposal lean = answer.proposals().get(0);
            return lean.audit().cost().totalMinor() + (lean.proof().proven() ? " proven" : "");
        } catch (BadInput bad) {
            StringBuilder all = new StringBuilder();
            for (Fault fault : bad.faults()) { // file, line, column, found, expected
                all.append(fault.text()).append('\n');
            }
            return all.toString();
        }
        // end of example
    }
}
