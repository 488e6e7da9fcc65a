package rigbrief.proposal.budget;

import java.util.List;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.solve.Least;

/**
 * The least total that reaches one need.
 *
 * @param need the need
 * @param alone the least total that reaches it and nothing else
 * @param together the least total that reaches it and every must
 * @param binding rules that turn cheaper parts away where it alone is reached
 * @param bindingTogether the same where every must is met too
 */
public record GoalTotal(
        Need need,
        Least alone,
        Least together,
        List<String> binding,
        List<String> bindingTogether) {
    public GoalTotal {
        binding = List.copyOf(binding);
        bindingTogether = List.copyOf(bindingTogether);
    }
}
