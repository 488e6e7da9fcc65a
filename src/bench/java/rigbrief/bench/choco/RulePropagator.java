package rigbrief.bench.choco;

import java.util.List;
import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;
import rigbrief.bench.export.Instance;
import rigbrief.part.Slot;
import rigbrief.rule.Rule;

/**
 * A rule without a table: once all slots but one are decided it filters that one, asking the rule
 * itself.
 */
final class RulePropagator extends Propagator<IntVar> {
    private static final long serialVersionUID = 1;

    private final transient Instance instance;
    private final transient Rule rule;
    private final transient List<Slot> slots;
    private final int[] choice = new int[Slot.values().length];

    /**
     * A propagator.
     *
     * @param vars one variable per slot, in the slots' order
     * @param slots the slots to fill before the rule is asked
     */
    RulePropagator(Instance instance, Rule rule, List<Slot> slots, IntVar[] vars) {
        super(vars, PropagatorPriority.VERY_SLOW, false);
        this.instance = instance;
        this.rule = rule;
        this.slots = slots;
    }

    @Override
    public void propagate(int mask) throws ContradictionException {
        int open = -1;
        for (int i = 0; i < vars.length; i++) {
            if (!vars[i].isInstantiated()) {
                if (open >= 0) {
                    return;
                }
                open = i;
            } else {
                choice[slots.get(i).ordinal()] = vars[i].getValue();
            }
        }
        if (open < 0) {
            if (instance.judge().broken(rule, choice, slots)) {
                fails();
            }
        } else {
            filter(open);
        }
    }

    private void filter(int open) throws ContradictionException {
        int slot = slots.get(open).ordinal();
        for (int value = vars[open].getLB();
                value <= vars[open].getUB();
                value = vars[open].nextValue(value)) {
            choice[slot] = value;
            if (instance.judge().broken(rule, choice, slots)) {
                vars[open].removeValue(value, this);
            }
        }
        setPassive();
    }

    @Override
    public ESat isEntailed() {
        for (int i = 0; i < vars.length; i++) {
            if (!vars[i].isInstantiated()) {
                return ESat.UNDEFINED;
            }
            choice[slots.get(i).ordinal()] = vars[i].getValue();
        }
        return ESat.eval(!instance.judge().broken(rule, choice, slots));
    }
}
