/** Soft goals: one class each, a utility from 0 to 1. */
package rigbrief.goal;
