/** Rules about what fits together. */
package rigbrief.rule.fit;
