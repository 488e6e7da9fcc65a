/** Shrinking each slot's candidates, naming the cause when none is left. */
package rigbrief.presolve;
