package rigbrief.audit;

/**
 * One goal's part in the score.
 *
 * @param goal id of the goal
 * @param title what more of it means
 * @param weight its weight in the brief
 * @param tenThousandths its utility
 * @param because why
 */
public record GoalScore(
        String goal, String title, int weight, int tenThousandths, String because) {}
