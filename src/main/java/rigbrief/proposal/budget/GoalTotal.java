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
 * @param bindingNeeds musts without which it would cost less together with the others; where the
 *     need is a wish there may be more such musts than those that were found
 * @param bindingTogether rules that turn cheaper parts away where every must is met too
 */
public record GoalTotal(
        Need need,
        Least alone,
        Least together,
        List<Turned> binding,
        List<String> bindingNeeds,
        List<Turned> bindingTogether) {
    public GoalTotal {
        binding = List.copyOf(binding);
        bindingNeeds = List.copyOf(bindingNeeds);
        bindingTogether = List.copyOf(bindingTogether);
    }
}
