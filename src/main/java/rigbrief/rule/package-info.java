/** Hard rules: one class each, no solver types. */
package rigbrief.rule;
