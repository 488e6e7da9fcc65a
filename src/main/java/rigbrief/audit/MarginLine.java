package rigbrief.audit;

import rigbrief.rule.Margin;

/**
 * What one rule measured.
 *
 * @param rule id of the rule
 * @param title its title
 * @param margin what there is against what is needed
 */
public record MarginLine(String rule, String title, Margin margin) {}
