package rigbrief.goal;

import java.util.List;

/** The soft goals, one line each. */
public final class Goals {
    /** Goals that depend on the build alone. */
    static final List<Goal> OWN =
            List.of(
                    new WorkloadsGoal(),
                    new QuietGoal(),
                    new UpgradeRoomGoal(),
                    new LookGoal(),
                    new EnergyGoal(),
                    new LifetimeGoal(),
                    new SimpleOrderGoal());

    /** All goals; value last, because it is made of the others. */
    public static final List<Goal> ALL =
            java.util.stream.Stream.concat(
                            OWN.stream(), java.util.stream.Stream.of(new ValueGoal()))
                    .toList();

    private Goals() {}
}
