package rigbrief.goal;

/**
 * What a goal says about itself.
 *
 * @param id stable kebab-case id, the key of its weight in a brief
 * @param title what more of it means, in a few words
 * @param curve how the utility comes about, in one sentence
 */
public record GoalInfo(String id, String title, String curve) {}
