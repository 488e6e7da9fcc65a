package rigbrief.rule;

import rigbrief.quantity.Unit;

/**
 * What a rule says about itself.
 *
 * @param id stable kebab-case id
 * @param title short sentence, true when the rule is met
 * @param unit unit of the excess and of the margin
 * @param source where the limit comes from
 */
public record RuleInfo(String id, String title, Unit unit, Source source) {}
